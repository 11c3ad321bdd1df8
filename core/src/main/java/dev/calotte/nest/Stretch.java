package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.util.FastMath;

/**
 * A stretch of a roll that is laid behind what is there: as it is or turned end for end, pushed until a part meets one
 * that lies, but never further back than the widest part is wide.
 */
final class Stretch {

    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D LEFT = RIGHT.negate();

    private final Kinds kinds;
    private final Field field;
    private final double spacing;
    private final double back;

    Stretch(Kinds kinds, Field field, double spacing) {
        this.kinds = kinds;
        this.field = field;
        this.spacing = spacing;
        this.back = kinds.widest();
    }

    /** The stretch where it ends first; empty if the roll ends before. */
    List<Spot> behind(List<Spot> lying, List<Spot> stretch) {
        double end = end(lying);
        List<ConvexPolygon> near = lying.stream()
                .map(kinds::outline)
                .filter(part -> part.reach(RIGHT) + spacing > end - back)
                .toList();
        List<Spot> asIs = pushed(near, end, stretch);
        List<Spot> turned = pushed(near, end, turned(stretch));
        List<Spot> first = end(turned) < end(asIs) ? turned : asIs;
        return end(first) > field.length() ? List.of() : first;
    }

    private List<Spot> turned(List<Spot> stretch) {
        return stretch.stream()
                .map(spot -> new Spot(
                        spot.kind(),
                        spot.mirrored(),
                        spot.turnRad() + FastMath.PI,
                        -spot.x(),
                        field.width() - spot.y()))
                .toList();
    }

    private List<Spot> pushed(List<ConvexPolygon> near, double end, List<Spot> stretch) {
        List<ConvexPolygon> parts = stretch.stream().map(kinds::outline).toList();
        double begin =
                parts.stream().mapToDouble(part -> -part.reach(LEFT)).min().orElse(0);
        double move = Math.max(0, end - back) - begin;
        for (ConvexPolygon part : parts) {
            // what lies further along is clear wherever the stretch begins
            if (-part.reach(LEFT) - begin < back + spacing) {
                for (ConvexPolygon fast : near) {
                    move = Math.max(move, NoFit.of(fast, part, spacing).clearAlong());
                }
            }
        }
        double by = move;
        return stretch.stream().map(spot -> spot.moved(by, 0)).toList();
    }

    private double end(List<Spot> spots) {
        return spots.stream()
                .mapToDouble(spot -> kinds.outline(spot).reach(RIGHT))
                .max()
                .orElse(0);
    }
}
