package dev.calotte.drawing;

import dev.calotte.document.Arc;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.drawing.PlateShape.Corner;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.PlateArms.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * An outline opened by slots that run from within across it. What lies between the two walls of a slot gives way to the
 * walls and the slot's end; everything else keeps its corners and arcs, which are parted where a wall meets them.
 */
final class SlottedRim {

    private static final double SAME_MM = 1e-9;

    private final List<Corner> rim;
    private final PlateArms arms;
    private final Polyline path;

    SlottedRim(List<Corner> rim, PlateArms arms) {
        this.rim = rim;
        this.arms = arms;
        this.path = PlateShape.path(Operation.CUT_OUTER, rim, Pose.shifted(Vector2D.ZERO));
    }

    /**
     * Where a wall meets the outline.
     *
     * @param side of the outline
     * @param share of the side that lies before it
     * @param out how far from the centre along the slot
     */
    private record Hit(int side, double share, double out) {

        double along() {
            return side + share;
        }
    }

    /** A slot, and where its clockwise wall and the other meet the outline. */
    private record Opening(Slot slot, Hit right, Hit left) {}

    List<Corner> corners() {
        double half = arms.plate().slotMm() / 2;
        List<Opening> openings = arms.slots().stream()
                .map(slot -> new Opening(slot, hit(slot, -half), hit(slot, half)))
                .sorted(Comparator.comparingDouble(opening -> opening.right.along()))
                .toList();
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            PlateShape.inside(arms, opening.slot, opening.right.out).forEach(corners::add);
            addRim(opening.left, openings.get((i + 1) % openings.size()).right, corners);
        }
        return corners;
    }

    /** The outline from one place to another, without the latter. */
    private void addRim(Hit from, Hit to, List<Corner> corners) {
        boolean around = to.along() <= from.along();
        int sides = to.side - from.side + (around ? rim.size() : 0);
        for (int step = 0; step <= sides; step++) {
            int side = (from.side + step) % rim.size();
            double begin = step == 0 ? from.share : 0;
            double end = step == sides ? to.share : 1;
            Vector2D at = at(side, begin);
            if (at(side, end).distance(at) > SAME_MM) {
                corners.add(new Corner(at, part(rim.get(side).bulge(), end - begin)));
            }
        }
    }

    private static double part(double bulge, double share) {
        return bulge == 0 ? 0 : StrictMath.tan(share * StrictMath.atan(bulge));
    }

    private Vector2D at(int side, double share) {
        Vector2D from = rim.get(side).at();
        Vector2D to = rim.get((side + 1) % rim.size()).at();
        if (share == 0) {
            return from;
        }
        Optional<Arc> arc = path.arc(side);
        if (arc.isEmpty()) {
            return new Vector2D(1 - share, from, share, to);
        }
        double angle = arc.get().startRad() + share * arc.get().sweepRad();
        return new Vector2D(arc.get().x(angle), arc.get().y(angle));
    }

    /** The first place where a line along a slot, so far to the left of its middle, meets the outline. */
    private Hit hit(Slot slot, double left) {
        Stream.Builder<Hit> hits = Stream.builder();
        for (int side = 0; side < rim.size(); side++) {
            int number = side;
            path.arc(side)
                    .ifPresentOrElse(arc -> meet(slot, left, number, arc, hits), () -> meet(slot, left, number, hits));
        }
        return hits.build()
                .filter(hit -> hit.out > slot.fromMm())
                .min(Comparator.comparingDouble(Hit::out))
                .orElseThrow();
    }

    private void meet(Slot slot, double left, int side, Stream.Builder<Hit> hits) {
        Vector2D from = turned(slot, rim.get(side).at());
        Vector2D to = turned(slot, rim.get((side + 1) % rim.size()).at());
        double share = (left - from.getY()) / (to.getY() - from.getY());
        if (share >= 0 && share <= 1) {
            hits.add(new Hit(side, share, from.getX() + share * (to.getX() - from.getX())));
        }
    }

    private static void meet(Slot slot, double left, int side, Arc arc, Stream.Builder<Hit> hits) {
        Vector2D centre = turned(slot, new Vector2D(arc.xMm(), arc.yMm()));
        double aside = left - centre.getY();
        double square = arc.radiusMm() * arc.radiusMm() - aside * aside;
        for (int sign = -1; square >= 0 && sign <= 1; sign += 2) {
            double ahead = sign * Math.sqrt(square);
            double angle = StrictMath.atan2(aside, ahead) + slot.angleRad();
            if (arc.passes(angle)) {
                double turn = 2 * Math.PI;
                double turned = Math.signum(arc.sweepRad()) * (angle - arc.startRad());
                double share = (turned - turn * Math.floor(turned / turn)) / Math.abs(arc.sweepRad());
                hits.add(new Hit(side, share, centre.getX() + ahead));
            }
        }
    }

    /** A place as seen along a slot: how far out, and how far to the left. */
    private static Vector2D turned(Slot slot, Vector2D at) {
        double cos = StrictMath.cos(slot.angleRad());
        double sin = StrictMath.sin(slot.angleRad());
        return new Vector2D(at.getX() * cos + at.getY() * sin, at.getY() * cos - at.getX() * sin);
    }
}
