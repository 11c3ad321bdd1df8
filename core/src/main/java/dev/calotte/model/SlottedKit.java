package dev.calotte.model;

import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The parts of a slotted kit: a disc for each hub and a strip for each strut. What is engraved lies outside: the marks,
 * and on discs where struts of several kinds meet and there is room, inside each slot, the number of the strut that hooks in there.
 */
final class SlottedKit {

    /** Between letters, and between letters and an edge. */
    private static final double EDGE = 0.4;

    /** Between floors so far from the axis the numbers of struts have room. */
    private static final double ROOMY_MM = 5;

    /** Between slots so far apart a mark can stand. */
    private static final double ROOMY_RAD = 2.4;

    private final ModelSpec spec;
    private final Joint joint;

    private SlottedKit(Parts parts, ModelSpec spec) {
        this.spec = spec;
        this.joint = Joint.of(parts, spec);
    }

    static List<ModelPart> of(Parts parts, ModelSpec spec) {
        SlottedKit kit = new SlottedKit(parts, spec);
        List<ModelPart> made = new ArrayList<>();
        parts.hubKinds().forEach(kind -> made.add(kit.disc(kind)));
        parts.strutKinds().forEach(kind -> made.add(kit.strip(kind)));
        return List.copyOf(made);
    }

    private ModelPart disc(HubKind kind) {
        Disc disc = new Disc(kind, joint);
        List<Label> labels = new ArrayList<>();
        double free = joint.floorMm() - EDGE;
        if (kind.struts().stream().distinct().count() > 1 && joint.floorMm() >= ROOMY_MM) {
            for (int slot = 0; slot < kind.struts().size(); slot++) {
                labels.add(inside(disc, slot));
            }
            free -= Label.LEAST_MM + EDGE;
        }
        labels.add(mark(disc, free));
        return new ModelPart(
                kind.mark(),
                kind.count() + " discs, struts counter-clockwise " + String.join(" ", kind.strutMarks()),
                disc.outline(),
                List.of(),
                labels,
                kind.count());
    }

    /** At the axis, or where a base hub has room on its open side. */
    private Label mark(Disc disc, double free) {
        int last = disc.slotsRad().size() - 1;
        double open = disc.gapsRad().get(last);
        if (open < ROOMY_RAD) {
            return Label.within(disc.kind().mark(), Vector2D.ZERO, free);
        }
        double half = joint.rimMm() / 2;
        return Label.within(disc.kind().mark(), Disc.at(disc.slotsRad().get(last) + open / 2, half, 0), half - EDGE);
    }

    /** The number of a strut, inside the floor of its slot and read from there. */
    private Label inside(Disc disc, int slot) {
        double turn = disc.slotsRad().get(slot);
        return new Label(
                Integer.toString(disc.kind().struts().get(slot)),
                Disc.at(turn, joint.floorMm() - EDGE - Label.LEAST_MM / 2, 0),
                turn - StrictMath.PI / 2,
                Label.LEAST_MM);
    }

    private ModelPart strip(StrutKind kind) {
        Strip strip = Strip.of(kind, spec.scale(), joint);
        double free = strip.lengthMm() - 2 * joint.rimMm();
        return new ModelPart(
                kind.mark(),
                kind.count() + " struts, " + NumberText.fixed(strip.lengthMm(), 2) + " mm between the hubs' points",
                strip.outline(),
                List.of(),
                List.of(Label.fitted(
                        kind.mark(), new Vector2D(0, strip.upMm()), 0, new Vector2D(free, joint.stripMm() * 0.8))),
                kind.count());
    }
}
