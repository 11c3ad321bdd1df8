package dev.calotte.drawing;

import dev.calotte.drawing.BuildingSteps.Step;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is to be done in a step, with counts.
 *
 * @param parts the parts of the dome
 * @param step the step
 */
public record StepWords(Parts parts, Step step) {

    /**
     * The struts that are new.
     *
     * @return for example {@code 15 of S2, 10 of S3}; empty if there are none
     */
    public String struts() {
        return parts.strutKinds().stream()
                .map(kind -> count(kind) == 0 ? "" : count(kind) + " of " + kind.mark())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private long count(StrutKind kind) {
        return step.struts().stream()
                .filter(strut -> parts.kindOf(strut).mark().equals(kind.mark()))
                .count();
    }

    /**
     * The panels that are new.
     *
     * @return for example {@code P1 x 5, P3 x 10}; empty if there are none
     */
    public String panels() {
        return parts.panelKinds().stream()
                .map(kind -> count(kind) == 0 ? "" : kind.mark() + " x " + count(kind))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private long count(PanelKind kind) {
        return step.panels().stream()
                .filter(panel -> parts.kindOf(panel).mark().equals(kind.mark()))
                .count();
    }

    /**
     * What is done before anything is added, where the dome is raised from its crown.
     *
     * @param units how lengths are written
     * @return a sentence; nothing where it is raised from the base
     */
    public Optional<String> lift(UnitSystem units) {
        if (step.liftMm().isEmpty()) {
            return Optional.empty();
        }
        double mm = step.liftMm().getAsDouble();
        return Optional.of(
                mm > 0
                        ? "Lift what is there by at least " + units.length(mm)
                                + ", hold it by the mast and by props, and" + " add this row below it."
                        : "Put this together on the ground, under the mast.");
    }

    /** All as lines of a drawing. */
    List<String> lines(UnitSystem units) {
        List<String> lines = new ArrayList<>(lift(units).stream().toList());
        lines.add("Struts: " + (step.struts().isEmpty() ? "none" : struts()));
        lines.add("Panels: " + (step.panels().isEmpty() ? "none" : panels()));
        return lines;
    }

    /**
     * All of it in one line.
     *
     * @return for example {@code Row 3: 15 of S2, 10 of S3; panels P1 x 5, P3 x 10}
     */
    public String title() {
        String panels = step.panels().isEmpty() ? "" : "panels " + panels();
        String between = step.struts().isEmpty() || panels.isEmpty() ? "" : "; ";
        return "Row " + step.row() + ": " + struts() + between + panels;
    }
}
