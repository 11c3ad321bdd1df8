package dev.calotte.check;

import dev.calotte.check.RecordedDome.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The size of the whole, computed anew from the places of hubs: the ring in which panels end, the floor inside it, and the
 * space between panels and floor. Sizes are those of the dome without openings, so that with one the places do not tell them.
 */
public final class SizeCheck {

    private final RecordedDome dome;
    private final RecordedSize size;
    private final Findings findings;

    private SizeCheck(RecordedDome dome, RecordedSize size, Findings findings) {
        this.dome = dome;
        this.size = size;
        this.findings = findings;
    }

    /**
     * Computes the size anew.
     *
     * @param dome a dome that refers to nothing that is not there
     * @param size what is said of its size
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, RecordedSize size, Findings findings) {
        new SizeCheck(dome, size, findings).check();
    }

    private void check() {
        breakdown();
        if (isThere() && isBorder()) {
            level();
            if (dome.opened()) {
                atLeast();
            } else {
                floor();
                volume();
            }
        }
    }

    private void breakdown() {
        if (size.breakdown().size() == 2) {
            long b = size.breakdown().get(0);
            long c = size.breakdown().get(1);
            findings.same("dome.frequency", "the frequency", size.frequency(), (double) (b + c), 0);
            findings.same(
                    "dome.triangulation",
                    "the number of panels for each face of the solid",
                    (double) size.triangulation(),
                    (double) (b * b + b * c + c * c),
                    0);
        } else {
            findings.add(Fault.DIFFERENT, "dome.breakdown", "it is not two numbers.");
        }
    }

    private boolean isThere() {
        boolean there = new TreeSet<>(size.baseRing()).size() == size.baseRing().size()
                && size.baseRing().stream()
                        .allMatch(v -> v >= 0 && v < dome.vertices().size());
        if (!there) {
            findings.add(Fault.DIFFERENT, "dome.baseRing", "it names a hub twice, or one that is not there.");
        }
        return there;
    }

    /** The ring runs where panels end, with them on its left; with openings there are other borders, and gaps in this one. */
    private boolean isBorder() {
        Map<Integer, Integer> next = border();
        Set<Integer> used = new TreeSet<>();
        dome.panels().forEach(panel -> used.addAll(panel.vertices()));
        List<Integer> ring = size.baseRing();
        for (int i = 0; i < ring.size(); i++) {
            Integer after = next.get(ring.get(i));
            boolean follows = ring.get((i + 1) % ring.size()).equals(after);
            // an opening can take all panels at a hub whose struts stay
            if (dome.opened() ? after == null && used.contains(ring.get(i)) : !follows) {
                findings.add(
                        Fault.DIFFERENT,
                        "dome.baseRing",
                        "vertex " + ring.get(i)
                                + " is no hub of the ring in which panels end, or is not followed by the" + " next.");
                return false;
            }
        }
        if (!dome.opened() && ring.size() != next.size()) {
            findings.add(
                    Fault.MISSING,
                    "dome.baseRing",
                    "it has " + ring.size() + " hubs, and panels end at " + next.size() + ".");
            return false;
        }
        return true;
    }

    private Map<Integer, Integer> border() {
        Edges edges = new Edges(dome.panels());
        Map<Integer, Integer> next = new TreeMap<>();
        for (Panel panel : dome.panels()) {
            for (int k = 0; k < 3; k++) {
                int from = panel.vertices().get(k);
                int to = panel.vertices().get((k + 1) % 3);
                if (edges.panels(from, to).size() == 1) {
                    next.put(from, to);
                }
            }
        }
        return next;
    }

    private List<Vector3D> ring() {
        return size.baseRing().stream().map(dome::vertex).toList();
    }

    private double most(ToDoubleFunction<Vector3D> measure) {
        return ring().stream().mapToDouble(measure).max().orElse(0);
    }

    private static double fromAxis(Vector3D hub) {
        return Math.sqrt(hub.getX() * hub.getX() + hub.getY() * hub.getY());
    }

    private double spread() {
        return most(Vector3D::getZ) + most(hub -> -hub.getZ());
    }

    private void level() {
        if (Double.isFinite(size.levelHeight())) {
            for (int vertex : size.baseRing()) {
                findings.same(
                        "dome.leveling.height",
                        "the height of the base",
                        size.levelHeight(),
                        dome.vertex(vertex).getZ(),
                        Printed.RECORD_MM);
            }
        }
    }

    private void floor() {
        findings.same(
                "dome.floorDiameter",
                "the diameter of the floor",
                size.floorDiameter(),
                2 * most(SizeCheck::fromAxis),
                Printed.RECORD_MM);
        findings.same("dome.baseSpread", "the spread of the base hubs", size.baseSpread(), spread(), Printed.RECORD_MM);
        List<Vector3D> ring = ring();
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vector3D to = ring.get((i + 1) % ring.size());
            twice += ring.get(i).getX() * to.getY() - to.getX() * ring.get(i).getY();
        }
        fine("dome.floorArea", "the area of the floor, in m²,", size.floorArea(), twice / 2e6);
    }

    private void fine(String place, String name, double seen, double expected) {
        findings.same(place, name, seen, expected, Printed.RECORD_FINE * Math.max(1, Math.abs(expected)));
    }

    /** Hubs that an opening took may have stood further out. */
    private void atLeast() {
        less("dome.floorDiameter", "the diameter of the floor", size.floorDiameter(), 2 * most(SizeCheck::fromAxis));
        less("dome.baseSpread", "the spread of the base hubs", size.baseSpread(), spread());
    }

    private void less(String place, String name, double seen, double least) {
        if (!(seen >= least - Printed.RECORD_MM)) {
            findings.same(place, name, seen, least, Printed.RECORD_MM);
        }
    }

    /** Pyramids from a point on the floor to the panels, and to the upright triangles that close the gap below them. */
    private void volume() {
        double floor =
                dome.vertices().stream().mapToDouble(Vector3D::getZ).min().orElse(0);
        Vector3D point = new Vector3D(0, 0, floor);
        double sixfold = 0;
        for (Panel panel : dome.panels()) {
            List<Vector3D> corners = panel.vertices().stream()
                    .map(v -> dome.vertex(v).subtract(point))
                    .toList();
            sixfold += corners.get(0).dotProduct(corners.get(1).crossProduct(corners.get(2)));
        }
        for (List<Vector3D> wall : walls(point)) {
            sixfold += wall.get(0).dotProduct(wall.get(1).crossProduct(wall.get(2)));
        }
        fine("dome.volume", "the volume, in m³,", size.volume(), sixfold / 6e9);
    }

    /** From each side of the ring two triangles down to the floor, seen from outside counter-clockwise. */
    private List<List<Vector3D>> walls(Vector3D point) {
        List<List<Vector3D>> walls = new ArrayList<>();
        List<Vector3D> ring = ring().stream().map(hub -> hub.subtract(point)).toList();
        for (int i = 0; i < ring.size(); i++) {
            Vector3D from = ring.get(i);
            Vector3D to = ring.get((i + 1) % ring.size());
            Vector3D below = new Vector3D(from.getX(), from.getY(), 0);
            walls.add(List.of(below, new Vector3D(to.getX(), to.getY(), 0), to));
            walls.add(List.of(below, to, from));
        }
        return walls;
    }
}
