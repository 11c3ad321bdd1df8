package dev.calotte.check;

import dev.calotte.check.RecordedRiser.Upright;
import dev.calotte.check.RecordedRiser.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The wall under the base ring: an upright under each base hub, a bay under each base strut, both from the hubs' places. */
public final class RiserCheck {

    /** What is alike up to this part of the radius is one kind. */
    private static final double ROUNDING = 2e-9;

    private final RecordedDome dome;
    private final RecordedRiser riser;
    private final List<Integer> ring;
    private final Findings findings;
    private final double withinMm;
    private final Map<String, Integer> counts = new TreeMap<>();

    private RiserCheck(RecordedDome dome, RecordedRiser riser, List<Integer> ring, Findings findings) {
        this.dome = dome;
        this.riser = riser;
        this.ring = ring;
        this.findings = findings;
        this.withinMm = Printed.RECORD_MM + ROUNDING * dome.figures().radius();
    }

    /**
     * Builds the wall anew.
     *
     * @param dome a dome that refers to nothing that is not there
     * @param riser what is said of the wall
     * @param ring the vertices of the base hubs, counter-clockwise seen from above
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, RecordedRiser riser, List<Integer> ring, Findings findings) {
        boolean there =
                ring.stream().allMatch(v -> v >= 0 && v < dome.vertices().size());
        if (there && !ring.isEmpty() && riser.aboveLowest().size() == ring.size()) {
            new RiserCheck(dome, riser, ring, findings).check();
        } else {
            findings.add(Fault.DIFFERENT, "riser", "there is no base ring that it could stand under.");
        }
    }

    private void check() {
        double top = dome.vertices().stream().mapToDouble(Vector3D::getZ).max().orElse(0);
        double whole = top - lowest() + riser.height();
        if (!dome.opened() || riser.totalHeight() < whole) {
            findings.same(
                    "riser.totalHeight", "the height with the wall", riser.totalHeight(), whole, Printed.RECORD_MM);
        }
        for (int i = 0; i < ring.size(); i++) {
            upright(i);
        }
        int bays = bays();
        riser.walls().forEach(this::wall);
        riser.uprights().forEach(upright -> count(upright.mark(), upright.count()));
        if (!dome.opened()) {
            findings.same("riser.baysLeftOut", "the number of bays left out", riser.baysLeftOut(), 0, 0);
        } else if (riser.baysLeftOut() < ring.size() - bays) {
            findings.same(
                    "riser.baysLeftOut", "the number of bays left out", riser.baysLeftOut(), ring.size() - bays, 0);
        }
    }

    /** With openings the lowest base hub may be gone. */
    private double lowest() {
        return at(0).getZ() - riser.aboveLowest().get(0);
    }

    private Vector3D at(int hub) {
        return dome.vertex(ring.get(hub % ring.size()));
    }

    private double length(int hub) {
        return riser.height() + at(hub).getZ() - lowest();
    }

    private void upright(int hub) {
        Optional<Upright> kind = riser.uprights().stream()
                .filter(upright -> same(upright.length(), length(hub)))
                .findFirst();
        kind.ifPresent(upright -> counts.merge(upright.mark(), 1, Integer::sum));
        if (kind.isEmpty()) {
            findings.add(
                    Fault.MISSING,
                    "riser.uprights",
                    "none is " + Findings.text(length(hub)) + " mm long, as below vertex " + ring.get(hub) + ".");
        }
    }

    private boolean same(double seen, double expected) {
        return Math.abs(seen - expected) <= withinMm;
    }

    private int bays() {
        Set<Long> joined = new TreeSet<>();
        dome.struts().forEach(strut -> joined.add(Edges.key(strut.from(), strut.to())));
        int bays = 0;
        for (int i = 0; i < ring.size(); i++) {
            if (joined.contains(Edges.key(ring.get(i), ring.get((i + 1) % ring.size())))) {
                bays++;
                bay(i);
            }
        }
        return bays;
    }

    /** Counter-clockwise from above is from left to right for who stands outside. */
    private void bay(int hub) {
        Vector3D way = at(hub + 1).subtract(at(hub));
        double top = way.getNorm();
        double width = Math.sqrt(way.getX() * way.getX() + way.getY() * way.getY());
        Optional<Wall> kind = riser.walls().stream()
                .filter(wall -> same(wall.width(), width) && same(wall.top(), top))
                .filter(wall -> same(wall.left(), length(hub)) && same(wall.right(), length(hub + 1)))
                .findFirst();
        kind.ifPresent(wall -> counts.merge(wall.mark(), 1, Integer::sum));
        if (kind.isEmpty()) {
            findings.add(
                    Fault.MISSING,
                    "riser.walls",
                    "none is " + Findings.text(width) + " mm wide and " + Findings.text(length(hub)) + " mm high at the"
                            + " left, " + Findings.text(length(hub + 1)) + " mm at the right, as beside vertex "
                            + ring.get(hub) + ".");
        }
    }

    private void wall(Wall wall) {
        String hand = same(wall.left(), wall.right()) ? "none" : wall.left() < wall.right() ? "left" : "right";
        findings.same("riser.walls " + wall.mark(), "the hand", wall.hand(), hand);
        count(wall.mark(), wall.count());
    }

    private void count(String mark, int count) {
        findings.same("riser " + mark, "the count", count, counts.getOrDefault(mark, 0), 0);
    }
}
