package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import dev.calotte.document.Shape;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.PlateArms;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The plate of each kind of hub at full size, flat, seen from outside: the disc, a hole for each strut, bend lines across
 * the arms, slots between them, and a tick on the rim at the arm of the kind's first strut, which points along x. Beside
 * it stands a reference of 100 mm to measure by.
 */
public final class HubPlates {

    private static final double MARGIN = 10;
    private static final double TICK = 5;

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
        slots().forEach(shapes::add);
        shapes.add(new Circle(Operation.CUT_OUTER, x, y, radius));
        return new Drawing(
                "hubs/" + kind.mark(),
                "Hub plate " + kind.mark() + ", cut " + kind.count() + ", seen from outside",
                Math.max(diameter, Reference.LENGTH) + 2 * MARGIN,
                3 * MARGIN + diameter,
                List.of(new Part(kind.mark(), description(kind), shapes), Reference.at(MARGIN)));
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
                .map(arm -> new Circle(
                        Operation.DRILL,
                        across(arm.angleRad(), distance, 0),
                        upwards(arm.angleRad(), distance, 0),
                        arms.plate().holeMm() / 2));
    }

    private Stream<Shape> bends() {
        return arms.bendMm().stream()
                .boxed()
                .flatMap(bend -> arms.arms().stream()
                        .map(arm -> path(
                                Operation.SCORE,
                                arm.angleRad(),
                                bend,
                                -halfLength(bend, arm.rightRad()),
                                bend,
                                halfLength(bend, arm.leftRad()))));
    }

    /** To the neighbour's bend line, or to the rim if they do not meet on the disc. */
    private double halfLength(double bend, double halfGapRad) {
        double toRim = Math.sqrt(radius * radius - bend * bend);
        return halfGapRad < Math.PI / 2 ? Math.min(bend * StrictMath.tan(halfGapRad), toRim) : toRim;
    }

    private Stream<Shape> slots() {
        double half = arms.plate().slotMm() / 2;
        return arms.slots().stream()
                .map(slot -> path(
                        Operation.CUT_INNER,
                        slot.angleRad(),
                        slot.fromMm(),
                        half,
                        radius,
                        half,
                        radius,
                        -half,
                        slot.fromMm(),
                        -half));
    }

    /** A path given by how far its corners lie out along a direction and to the left of it; closed unless it is a line. */
    private Path path(Operation operation, double angle, double... outAndLeft) {
        double[] xy = new double[outAndLeft.length];
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = across(angle, outAndLeft[i], outAndLeft[i + 1]);
            xy[i + 1] = upwards(angle, outAndLeft[i], outAndLeft[i + 1]);
        }
        return xy.length == 4 ? Path.open(operation, xy) : Path.closed(operation, xy);
    }

    private double across(double angle, double out, double left) {
        return x + out * StrictMath.cos(angle) - left * StrictMath.sin(angle);
    }

    private double upwards(double angle, double out, double left) {
        return y + out * StrictMath.sin(angle) + left * StrictMath.cos(angle);
    }
}
