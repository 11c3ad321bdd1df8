package dev.calotte.contour;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Arcs and circles that lie on each other. */
final class RoundCuts {

    private static final double TURN = 2 * Math.PI;

    private final String mark;
    private final Arc arc;

    private RoundCuts(String mark, Arc arc) {
        this.mark = mark;
        this.arc = arc;
    }

    /** Looks a drawing through, holes that are drilled among what is cut. */
    static Optional<DoubleCuts> in(Drawing drawing) {
        List<RoundCuts> all = new ArrayList<>();
        for (Drawing.Part part : drawing.parts()) {
            for (Shape shape : part.shapes()) {
                if (shape.operation() == Operation.DRILL || CutPaths.isCut(shape.operation())) {
                    gather(part.mark(), shape, all);
                }
            }
        }
        all.sort(Comparator.comparingDouble(round -> round.arc.xMm()));
        return first(drawing.name(), all);
    }

    private static void gather(String mark, Shape shape, List<RoundCuts> all) {
        if (shape instanceof Circle circle) {
            all.add(new RoundCuts(mark, new Arc(circle.xMm(), circle.yMm(), circle.radiusMm(), 0, TURN)));
        } else if (shape instanceof Polyline path) {
            for (int i = 0; i < path.size(); i++) {
                path.arc(i).ifPresent(arc -> all.add(new RoundCuts(mark, arc)));
            }
        }
    }

    private static Optional<DoubleCuts> first(String name, List<RoundCuts> all) {
        DoubleCuts found = null;
        for (int i = 0; i < all.size(); i++) {
            RoundCuts one = all.get(i);
            for (int j = i + 1; j < all.size() && all.get(j).arc.xMm() - one.arc.xMm() <= Side.APART; j++) {
                RoundCuts other = all.get(j);
                if (one.overlaps(other)) {
                    int count = found == null ? 1 : found.count() + 1;
                    found = found == null
                            ? new DoubleCuts(name, count, one.mark, other.mark, one.arc.xMm(), one.arc.yMm())
                            : new DoubleCuts(name, count, found.one(), found.other(), found.xMm(), found.yMm());
                }
            }
        }
        return Optional.ofNullable(found);
    }

    private boolean overlaps(RoundCuts other) {
        Arc second = other.arc;
        return Math.abs(arc.yMm() - second.yMm()) <= Side.APART
                && Math.abs(arc.radiusMm() - second.radiusMm()) <= Side.APART
                && (within(second) || other.within(arc));
    }

    /** Whether an arc begins inside of this one, further from its end than a point is wide. */
    private boolean within(Arc other) {
        double begin = least(other) - least(arc);
        double turned = begin - TURN * Math.floor(begin / TURN);
        double width = Side.APART / arc.radiusMm();
        double wrapped = turned > TURN - width ? 0 : turned;
        return wrapped < Math.abs(arc.sweepRad()) - width;
    }

    /** Where an arc begins when it is followed counter-clockwise. */
    private static double least(Arc arc) {
        return Math.min(arc.startRad(), arc.startRad() + arc.sweepRad());
    }
}
