package dev.calotte.drawing;

import dev.calotte.drawing.BuildingSteps.Step;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.List;
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

    /** The two as lines of a drawing. */
    List<String> lines() {
        return List.of(
                "Struts: " + (step.struts().isEmpty() ? "none" : struts()),
                "Panels: " + (step.panels().isEmpty() ? "none" : panels()));
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
