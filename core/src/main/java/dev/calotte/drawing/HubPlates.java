package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels.Face;
import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.PlateArms;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The plate of each kind of hub at full size, flat, seen from outside: the disc, or someone's own shape, with slots between
 * its arms as one outline, a hole for each strut, bend lines across the arms, the marks of the hub and of the strut at each arm, and a tick
 * on the rim at the arm of the kind's first strut, which points along x. Beside it stands a reference of 100 mm to measure
 * by.
 *
 * <pre>{@code
 * Joinery plated = Joinery.gap(45).withHubPlate(HubPlate.of(160, 8, 120));
 * List<Drawing> plates = HubPlates.of(Parts.of(dome, plated));
 * }</pre>
 */
public final class HubPlates {

    private static final double MARGIN = 10;
    private static final double TICK = 5;
    private static final double MARK = 7;
    private static final double ARM_MARK = 5;
    private static final double LINE = 1.6;

    private final PlateArms arms;
    private final PlateShape plate;
    private final Pose pose;

    private HubPlates(PlateArms arms) {
        this.arms = arms;
        this.plate = PlateShape.of(arms);
        this.pose = Pose.shifted(new Vector2D(
                MARGIN - plate.box().left(), 2 * MARGIN - plate.box().low()));
    }

    /**
     * Draws the plates.
     *
     * @param parts the parts of the dome
     * @return a document {@code hubs/MARK} for each kind of hub, in the order of the kinds; none if there are no plates
     */
    public static List<Drawing> of(Parts parts) {
        return parts.hubKinds().stream()
                .flatMap(kind -> parts.plateArms(kind).stream().map(arms -> new HubPlates(arms).drawing(kind)))
                .toList();
    }

    private Drawing drawing(HubKind kind) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(tick());
        bends().forEach(shapes::add);
        holes().forEach(shapes::add);
        shapes.addAll(plate.holes(pose));
        shapes.add(plate.outline(pose));
        Part bare = new Part(kind.mark(), description(kind), shapes);
        return new Drawing(
                "hubs/" + kind.mark(),
                "Hub plate " + kind.mark() + ", cut " + kind.count() + ", seen from outside",
                Math.max(plate.box().width(), Reference.LENGTH) + 2 * MARGIN,
                3 * MARGIN + plate.box().height(),
                List.of(Lettering.on(bare, room(), labels(kind)), Reference.at(MARGIN)));
    }

    private Lettering.Room room() {
        return new Lettering.Room(
                List.of(plate.hull(pose)), plate.walls(pose), place -> plate.holds(place.subtract(pose.shift())));
    }

    /** The kind in the middle, and on each arm, its feet to the rim, the strut that belongs there. */
    private List<Label> labels(HubKind kind) {
        List<Label> labels = new ArrayList<>();
        List<String> lines = List.of(kind.mark(), "cut " + kind.count(), Face.OUT.name());
        for (int line = 0; line < lines.size(); line++) {
            Vector2D at = pose.shift().add((1 - line) * LINE * MARK, new Vector2D(0, 1));
            labels.add(new Label(lines.get(line), at.getX(), at.getY(), 0, MARK));
        }
        for (int arm = 0; arm < arms.arms().size(); arm++) {
            double angle = arms.arms().get(arm).angleRad();
            Vector2D at = at(angle, plate.toRim(Vector2D.ZERO, angle) - LINE * ARM_MARK, 0);
            labels.add(new Label(kind.strutMarks().get(arm), at.getX(), at.getY(), angle + Math.PI / 2, ARM_MARK));
        }
        return labels;
    }

    private String description(HubKind kind) {
        String bends =
                arms.arms().stream().map(arm -> Angle.text(arm.bendRad(), 1)).collect(Collectors.joining(" "));
        return kind.count() + " pieces, struts counter-clockwise from the tick " + String.join(" ", kind.strutMarks())
                + (arms.bendMm().isPresent() ? ", arms bent inwards by " + bends : ", flat");
    }

    /** No longer than what is left between hole and rim. */
    private Polyline tick() {
        double rim = plate.toRim(Vector2D.ZERO, 0);
        Vector2D from = at(0, rim - Math.min(TICK, arms.plate().holeMm()), 0);
        Vector2D to = at(0, rim, 0);
        return Polyline.open(Operation.ENGRAVE, from.getX(), from.getY(), to.getX(), to.getY());
    }

    private Stream<Shape> holes() {
        double distance = arms.plate().holeCircleMm() / 2;
        return arms.arms().stream()
                .map(arm -> at(arm.angleRad(), distance, 0))
                .map(at -> new Circle(
                        Operation.DRILL, at.getX(), at.getY(), arms.plate().holeMm() / 2));
    }

    private Stream<Shape> bends() {
        return arms.bendMm().stream()
                .boxed()
                .flatMap(bend -> arms.arms().stream()
                        .map(arm -> bend(
                                at(arm.angleRad(), bend, -halfLength(arm.angleRad(), bend, -arm.rightRad())),
                                at(arm.angleRad(), bend, halfLength(arm.angleRad(), bend, arm.leftRad())))));
    }

    private static Shape bend(Vector2D from, Vector2D to) {
        return Polyline.open(Operation.SCORE, from.getX(), from.getY(), to.getX(), to.getY());
    }

    /** To the neighbour's bend line, or to the rim if they do not meet on the disc. */
    private double halfLength(double angle, double bend, double halfGapRad) {
        Vector2D foot = at(angle, bend, 0).subtract(pose.shift());
        double half = Math.abs(halfGapRad);
        double toRim = plate.toRim(foot, angle + Math.signum(halfGapRad) * Math.PI / 2);
        return half < Math.PI / 2 ? Math.min(bend * StrictMath.tan(half), toRim) : toRim;
    }

    /** A place by how far out it lies along a direction and how far to the left of it. */
    private Vector2D at(double angle, double out, double left) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return pose.at(new Vector2D(out * cos - left * sin, out * sin + left * cos));
    }
}
