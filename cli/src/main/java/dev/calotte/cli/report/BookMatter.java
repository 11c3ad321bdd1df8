package dev.calotte.cli.report;

import dev.calotte.book.Matter;
import dev.calotte.cli.CoverDesign;
import dev.calotte.cli.Design;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** What the build book of a design is made from. */
public final class BookMatter {

    private BookMatter() {}

    /**
     * Gathers it.
     *
     * @param design what was computed
     * @param source the text of the brief
     * @param program the program and its version
     * @return the matter of its book
     */
    public static Matter of(Design design, String source, String program) {
        return new Matter(
                design.subject(),
                design.needs(),
                design.bill(),
                design.project().assembly().patches(design.parts()),
                design.cautions(),
                design.notes(),
                stockNotes(design),
                design.project().extras().jigs().isPresent(),
                source,
                program);
    }

    /** What the page says of the stock, as sentences. */
    private static List<String> stockNotes(Design design) {
        UnitSystem units = design.project().units();
        List<String> notes = new ArrayList<>();
        design.bars().ifPresent(plan -> notes.add(PlanLines.ofBars(plan, units)));
        design.barCurve().flatMap(curve -> StepLines.ofBars(curve, units)).ifPresent(notes::add);
        for (CoverDesign cover : design.covers()) {
            String name = "Cover " + cover.fit().patterns().cover().name() + ": ";
            cover.plan().ifPresent(plan -> notes.add(name + PlanLines.ofCover(plan, units)));
            cover.saving().ifPresent(saving -> notes.add(name + StepLines.ofSeams(saving, units)));
            cover.curve().flatMap(curve -> StepLines.ofCover(curve, units)).ifPresent(line -> notes.add(name + line));
        }
        return notes;
    }
}
