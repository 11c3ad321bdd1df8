package dev.calotte.check;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Compares the plate of a kind of hubs with the angles between its struts: a hole for each, the first along x from the
 * hub's axis, and the rim of a disc round that axis. The axis itself is not drawn; it is where most holes agree on it.
 */
public final class PlateCheck {

    /** No hub has so many struts and no plate so many holes; a damaged file may have any number. */
    private static final int MOST = 100;

    private final RecordedPlate plate;
    private final List<Vector2D> places;
    private final SeenDrawing seen;
    private final double withinMm;
    private final Findings findings;

    private PlateCheck(RecordedPlate plate, List<Shape> shapes, double withinMm, Findings findings) {
        this.plate = plate;
        this.places = places(plate);
        this.seen = new SeenDrawing(shapes);
        // the axis is known from one hole, the place of another is off again
        this.withinMm = 4 * withinMm;
        this.findings = findings;
    }

    /**
     * Compares a plate.
     *
     * @param plate what should be shown, as the tool is led
     * @param shapes what is shown
     * @param withinMm how exact the file is
     * @param findings takes what is wrong
     */
    public static void of(RecordedPlate plate, List<Shape> shapes, double withinMm, Findings findings) {
        new PlateCheck(plate, shapes, withinMm, findings).check();
    }

    /** Where the holes should be, from the axis. */
    private static List<Vector2D> places(RecordedPlate plate) {
        List<Vector2D> places = new ArrayList<>();
        double out = plate.holeCircleMm() / 2;
        double degrees = 0;
        for (int strut = 0; strut < plate.kind().struts().size(); strut++) {
            double rad = StrictMath.toRadians(degrees);
            places.add(new Vector2D(out * StrictMath.cos(rad), out * StrictMath.sin(rad)));
            degrees += strut < plate.kind().gaps().size() ? plate.kind().gaps().get(strut) : 0;
        }
        return places;
    }

    private void check() {
        if (places.size() > MOST) {
            findings.add(Fault.DIFFERENT, plate.kind().mark(), "no plate has holes for " + places.size() + " struts.");
            return;
        }
        List<Circle> drilled = new ArrayList<>(seen.drilled());
        Vector2D axis = axis(drilled.subList(0, Math.min(MOST, drilled.size())));
        for (int strut = 0; strut < places.size(); strut++) {
            Vector2D place = axis.add(places.get(strut));
            if (!drilled.removeIf(hole -> isAt(place, hole))) {
                findings.add(
                        Fault.MISSING,
                        plate.kind().mark(),
                        "no hole of " + Findings.text(plate.holeMm()) + " mm is drilled for strut " + (strut + 1) + ", "
                                + plate.kind().struts().get(strut) + ".");
            }
        }
        if (plate.diameterMm().isPresent()) {
            drilled.forEach(hole -> findings.add(
                    Fault.FOREIGN,
                    "x " + Findings.text(hole.xMm()) + ", y " + Findings.text(hole.yMm()),
                    "a hole is drilled that the plate has not."));
            rim(axis, plate.diameterMm().getAsDouble() / 2);
        }
    }

    /** The place round which most holes are where they should be. */
    private Vector2D axis(List<Circle> drilled) {
        Vector2D best = Vector2D.ZERO;
        long most = -1;
        for (Circle hole : drilled) {
            for (Vector2D place : places) {
                Vector2D axis = new Vector2D(hole.xMm(), hole.yMm()).subtract(place);
                long agreeing = places.stream()
                        .filter(other -> drilled.stream().anyMatch(h -> isAt(axis.add(other), h)))
                        .count();
                if (agreeing > most) {
                    most = agreeing;
                    best = axis;
                }
            }
        }
        return best;
    }

    private boolean isAt(Vector2D place, Circle hole) {
        return Math.abs(hole.xMm() - place.getX()) <= withinMm
                && Math.abs(hole.yMm() - place.getY()) <= withinMm
                && Math.abs(2 * hole.radiusMm() - plate.holeMm()) <= withinMm;
    }

    private void rim(Vector2D axis, double radius) {
        double reach = seen.cuts().stream()
                .filter(cut -> cut.operation() == Operation.CUT_OUTER)
                .mapToDouble(cut -> reach(cut, axis))
                .max()
                .orElse(0);
        findings.same(plate.kind().mark(), "from its axis the rim", reach, radius, withinMm);
    }

    /** How far the corners of a line, or all of a circle, reach from a place. */
    private static double reach(Shape cut, Vector2D from) {
        if (cut instanceof Circle circle) {
            return new Vector2D(circle.xMm(), circle.yMm()).distance(from) + circle.radiusMm();
        }
        Ring corners = Ring.of((Polyline) cut);
        return IntStream.range(0, corners.size())
                .mapToDouble(i -> corners.corner(i).distance(from))
                .max()
                .orElse(0);
    }
}
