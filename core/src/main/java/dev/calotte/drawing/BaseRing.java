package dev.calotte.drawing;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The hubs of the base ring with their marks on the open side of it. */
final class BaseRing {

    private static final double DOT = 0.9;
    private static final double CLEAR = 1;
    private static final double STEP = 0.5;
    private static final int MOST_STEPS = 20;

    private final Spread spread;
    private final PieceMarks marks;
    private final List<Hub> hubs;

    BaseRing(Spread spread, PieceMarks marks) {
        Dome dome = spread.dome();
        this.spread = spread;
        this.marks = marks;
        this.hubs = spread.side() == Spread.Side.UPPER
                ? List.of()
                : dome.baseRing().stream().map(dome.hubs()::get).toList();
    }

    Roundel.Beside beside() {
        double widest = hubs.stream()
                .mapToDouble(hub -> Letters.widthMm(marks.of(hub), Letters.SMALL))
                .max()
                .orElse(0);
        boolean outside = spread.side() == Spread.Side.ALL;
        return outside
                ? new Roundel.Beside(DOT + CLEAR + widest, DOT + CLEAR + 2 * Letters.SMALL)
                : new Roundel.Beside(1, 1);
    }

    void add(Paper paper, OnPaper place) {
        double out = spread.side() == Spread.Side.LOWER ? -1 : 1;
        List<Vector2D> ring =
                place.of(hubs.stream().map(hub -> spread.hub(hub.index())).toList());
        for (Hub hub : hubs) {
            Vector2D at = spread.hub(hub.index());
            add(paper, marks.of(hub), place.of(at), at.normalize().scalarMultiply(out), ring);
        }
    }

    /** As near to the hub as its mark keeps clear of the ring, which turns inwards at some hubs. */
    private static void add(Paper paper, String mark, Vector2D at, Vector2D out, List<Vector2D> ring) {
        paper.add(new Disc(at.getX(), at.getY(), DOT, 0, Weight.FINE, mark));
        Box box = Letters.capitals(mark, Letters.SMALL);
        double reach = Math.abs(out.getX()) * box.width() / 2 + Math.abs(out.getY()) * box.height() / 2;
        Vector2D spot = at.add(DOT + CLEAR + reach, out);
        for (int step = 0; step < MOST_STEPS && touches(box, spot, ring); step++) {
            spot = spot.add(STEP, out);
        }
        paper.add(Letters.middle(mark, spot.getX(), spot.getY(), Letters.SMALL));
    }

    private static boolean touches(Box capitals, Vector2D middle, List<Vector2D> ring) {
        Box box = Box.around(middle.getX(), middle.getY(), capitals.width(), capitals.height())
                .grownBy(CLEAR / 2);
        return IntStream.range(0, ring.size())
                .anyMatch(side -> box.meets(ring.get(side), ring.get((side + 1) % ring.size())));
    }
}
