package dev.calotte.output;

import dev.calotte.book.BuildBook;
import dev.calotte.choose.CoverFit;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Picture;
import dev.calotte.drawing.CoverPatterns;
import dev.calotte.drawing.CoverSheets;
import dev.calotte.drawing.DomeDrawings;
import dev.calotte.drawing.DomePicture;
import dev.calotte.drawing.HubPlates;
import dev.calotte.drawing.Kerf;
import dev.calotte.drawing.KerfCoupon;
import dev.calotte.drawing.PanelPatterns;
import dev.calotte.model.ModelDrawings;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.solid.FrameWires;
import dev.calotte.solid.Jigs;
import dev.calotte.solid.PrintModels;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * The documents of a dome.
 *
 * <pre>{@code
 * Contents alone = Contents.of(new Subject("Shelter", parts, UnitSystem.METRIC, 0));
 * Contents contents = alone.withCovers(List.of(fit), List.of(plan));
 * for (Document document : Documents.of(contents)) {
 *     for (Exporter exporter : Exporters.installed().accepting(document)) {
 *         List<Rendition> files = exporter.renditions(document, Finish.PLAIN);
 *     }
 * }
 * }</pre>
 */
public final class Documents {

    /** A dome of more panels than this has no pictures, as no mark would be legible, and no book to build it by. */
    public static final int MOST_PANELS_IN_A_PICTURE = 5000;

    private Documents() {}

    /**
     * Makes every document of a dome: the frame in space, a pattern for each piece of every cover, or without covers for
     * each kind of panel, the hub plates, the view, the drawings, the book if it is wanted, those of a
     * model if there are to be any, the solid model, and the jigs. Where the cut has a width, the lines of what is cut at full size are moved for it, and there is a coupon
     * to try it by.
     *
     * @param contents what they are about
     * @return the documents, each with its own name
     */
    public static List<Document> of(Contents contents) {
        String title = contents.subject().title();
        Parts parts = contents.subject().parts();
        List<Document> documents = new ArrayList<>();
        documents.add(FrameWires.of(title, parts));
        List<Drawing> cut = cut(contents);
        documents.addAll(
                contents.kerfMm() > 0
                        ? cut.stream().map(new Kerf(contents.kerfMm())::of).toList()
                        : cut);
        if (parts.dome().panels().size() <= MOST_PANELS_IN_A_PICTURE) {
            documents.add(DomePicture.of(title, parts, contents.subject().units()));
        }
        List<Picture> drawings = drawings(contents);
        documents.addAll(drawings);
        contents.book().ifPresent(matter -> documents.add(BuildBook.of(matter, drawings)));
        Extras extras = contents.extras();
        extras.model().ifPresent(model -> documents.addAll(ModelDrawings.of(parts, model)));
        extras.print().ifPresent(print -> documents.add(PrintModels.of(title, parts.dome(), print)));
        List<Patterns> covers =
                contents.covers().stream().map(CoverFit::patterns).toList();
        extras.jigs().ifPresent(jigs -> documents.add(Jigs.of(title, parts, covers, jigs)));
        return documents;
    }

    private static List<Picture> drawings(Contents contents) {
        return contents.subject().parts().dome().panels().size() <= MOST_PANELS_IN_A_PICTURE
                ? DomeDrawings.of(contents.subject())
                : List.of();
    }

    /** What is cut, at its finished size. */
    private static List<Drawing> cut(Contents contents) {
        Parts parts = contents.subject().parts();
        UnitSystem units = contents.subject().units();
        List<Drawing> drawings = new ArrayList<>();
        if (contents.covers().isEmpty()) {
            drawings.addAll(PanelPatterns.of(parts, units));
        }
        contents.covers().forEach(cover -> drawings.addAll(CoverPatterns.of(cover, units)));
        contents.plans().forEach(plan -> drawings.addAll(CoverSheets.of(plan, units)));
        drawings.addAll(HubPlates.of(parts));
        if (contents.kerfMm() > 0) {
            drawings.add(KerfCoupon.drawing());
        }
        return drawings;
    }
}
