package dev.calotte.output;

import dev.calotte.document.Document;
import dev.calotte.drawing.DomePicture;
import dev.calotte.drawing.HubPlates;
import dev.calotte.drawing.PanelPatterns;
import dev.calotte.parts.Parts;
import dev.calotte.solid.DomeModel;
import dev.calotte.solid.FrameWires;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** The documents of a dome. */
public final class Documents {

    /** A dome of more panels than this has no picture: no mark would be legible. */
    public static final int MOST_PANELS_IN_A_PICTURE = 5000;

    private Documents() {}

    /**
     * Makes every document of a dome: the frame in space, a pattern for each kind of panel and of hub
     * plate, the view and the model.
     *
     * @param title what to call the dome
     * @param parts the parts of the dome
     * @param units how lengths are written for people
     * @param modelScale how many times smaller the model is, above 0
     * @return the documents, each with its own name
     */
    public static List<Document> of(String title, Parts parts, UnitSystem units, double modelScale) {
        List<Document> documents = new ArrayList<>();
        documents.add(FrameWires.of(title, parts));
        documents.addAll(PanelPatterns.of(parts, units));
        documents.addAll(HubPlates.of(parts));
        if (parts.dome().panels().size() <= MOST_PANELS_IN_A_PICTURE) {
            documents.add(DomePicture.of(title, parts));
        }
        documents.add(DomeModel.of(title, parts.dome(), modelScale));
        return documents;
    }
}
