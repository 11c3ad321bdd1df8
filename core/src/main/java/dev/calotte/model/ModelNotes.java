package dev.calotte.model;

import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What will be fiddly about a model: short struts, small letters, narrow tabs.
 *
 * <pre>{@code
 * List<String> notes = ModelNotes.of(parts, ModelSpec.of(20, Board.of(600, 300, 3, 0.15)));
 * }</pre>
 */
public final class ModelNotes {

    /** Shorter struts are hard to hold; common practice, no source. */
    private static final double SHORT_MM = 15;

    /** Narrower tabs are hard to glue; common practice, no source. */
    private static final double NARROW_MM = 5;

    private final Parts parts;
    private final ModelSpec spec;
    private final List<String> notes = new ArrayList<>();

    private ModelNotes(Parts parts, ModelSpec spec) {
        this.parts = parts;
        this.spec = spec;
    }

    /**
     * Looks at the parts of a model.
     *
     * @param parts the parts of the dome
     * @param spec what the model is made of
     * @return sentences, possibly none
     * @throws dev.calotte.problem.CalotteException if a slotted kit is asked for whose discs have no room for their slots,
     *     or whose struts have none between two discs
     */
    public static List<String> of(Parts parts, ModelSpec spec) {
        ModelNotes look = new ModelNotes(parts, spec);
        if (spec.kinds().contains(ModelKind.SLOTTED)) {
            look.atKit();
        }
        if (spec.kinds().stream().anyMatch(kind -> kind != ModelKind.SLOTTED)) {
            look.atTabs();
        }
        return List.copyOf(look.notes);
    }

    private void atKit() {
        List<ModelPart> kit = SlottedKit.of(parts, spec);
        List<StrutKind> few = parts.strutKinds().stream()
                .filter(kind -> kind.lengthMm() / spec.scale() < SHORT_MM)
                .toList();
        if (!few.isEmpty()) {
            notes.add("The model's struts shorter than 15 mm are hard to hold ("
                    + few.stream().map(StrutKind::mark).collect(Collectors.joining(", "))
                    + "); a larger scale helps.");
        }
        String small = kit.stream()
                .filter(part -> part.labels().stream().anyMatch(Label::isSmall))
                .map(ModelPart::mark)
                .collect(Collectors.joining(", "));
        if (!small.isEmpty()) {
            notes.add("Letters below 2 mm on parts of the model are hard to read (" + small
                    + "); a larger scale or larger discs help.");
        }
    }

    private void atTabs() {
        Shell shell = new Shell(parts.dome(), spec.scale());
        double inradius = Double.POSITIVE_INFINITY;
        for (int panel = 0; panel < shell.panels().size(); panel++) {
            inradius = Math.min(inradius, shell.inradiusMm(panel));
        }
        double tab = Math.min(spec.card().tabMm(), Tabs.MOST_OF_INRADIUS * inradius);
        if (tab < Math.min(NARROW_MM, spec.card().tabMm())) {
            notes.add("Tabs of the model come out " + NumberText.fixed(tab, 1)
                    + " mm wide, which is hard to glue; a larger scale helps.");
        }
        if (inradius / NetKit.LETTERS_IN_RADIUS < Label.LEAST_MM) {
            notes.add("Letters on the panels of the model come out below 2 mm; a larger scale helps.");
        }
    }
}
