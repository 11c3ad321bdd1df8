package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels.Face;
import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import dev.calotte.document.Shape;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.PlateArms;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The plate of each kind of hub at full size, flat, seen from outside: the disc with slots between its arms as one
 * outline, a hole for each strut, bend lines across the arms, the marks of the hub and of the strut at each arm, and a tick
 * on the rim at the arm of the kind's first strut, which points along x. Beside it stands a reference of 100 mm to measure
 * by.
 */
public final class HubPlates {

    private static final double MARGIN = 10;
    private static final double TICK = 5;
    private static final double MARK = 7;
    private static final double ARM_MARK = 5;
    private static final double LINE = 1.6;
    private static final int CHORDS = 96;

    private final PlateArms arms;
    private final double radius;
    private final double x;
    private final double y;

    private HubPlates(PlateArms arms) {
        this.arms = arms;
        this.radius = arms.plate().diameterMm() / 2;
        this.x = MARGIN + radius;
        this.y = 2 * MARGIN + radius;
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
        double diameter = arms.plate().diameterMm();
        List<Shape> shapes = new ArrayList<>();
        shapes.add(tick());
        bends().forEach(shapes::add);
        holes().forEach(shapes::add);
        PlateOutline outline = new PlateOutline(arms, Pose.shifted(new Vector2D(x, y)));
        shapes.add(outline.shape());
        Part bare = new Part(kind.mark(), description(kind), shapes);
        return new Drawing(
                "hubs/" + kind.mark(),
                "Hub plate " + kind.mark() + ", cut " + kind.count() + ", seen from outside",
                Math.max(diameter, Reference.LENGTH) + 2 * MARGIN,
                3 * MARGIN + diameter,
                List.of(Lettering.on(bare, List.of(disc()), outline.slots(), labels(kind)), Reference.at(MARGIN)));
    }

    /** The disc without what is outside of its chords. */
    private ConvexPolygon disc() {
        return ConvexPolygon.round(IntStream.range(0, CHORDS)
                .mapToObj(chord -> at(2 * Math.PI * chord / CHORDS, radius, 0))
                .toList());
    }

    /** The kind in the middle, and on each arm, its feet to the rim, the strut that belongs there. */
    private List<Label> labels(HubKind kind) {
        List<Label> labels = new ArrayList<>();
        List<String> lines = List.of(kind.mark(), "cut " + kind.count(), Face.OUT.name());
        for (int line = 0; line < lines.size(); line++) {
            labels.add(new Label(lines.get(line), x, y + (1 - line) * LINE * MARK, 0, MARK));
        }
        for (int arm = 0; arm < arms.arms().size(); arm++) {
            double angle = arms.arms().get(arm).angleRad();
            Vector2D at = at(angle, radius - LINE * ARM_MARK, 0);
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
    private Path tick() {
        double length = Math.min(TICK, arms.plate().holeMm());
        return Path.open(Operation.ENGRAVE, x + radius - length, y, x + radius, y);
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
                                at(arm.angleRad(), bend, -halfLength(bend, arm.rightRad())),
                                at(arm.angleRad(), bend, halfLength(bend, arm.leftRad())))));
    }

    private static Shape bend(Vector2D from, Vector2D to) {
        return Path.open(Operation.SCORE, from.getX(), from.getY(), to.getX(), to.getY());
    }

    /** To the neighbour's bend line, or to the rim if they do not meet on the disc. */
    private double halfLength(double bend, double halfGapRad) {
        double toRim = Math.sqrt(radius * radius - bend * bend);
        return halfGapRad < Math.PI / 2 ? Math.min(bend * StrictMath.tan(halfGapRad), toRim) : toRim;
    }

    /** A place by how far out it lies along a direction and how far to the left of it. */
    private Vector2D at(double angle, double out, double left) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return new Vector2D(x + out * cos - left * sin, y + out * sin + left * cos);
    }
}
