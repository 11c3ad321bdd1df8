package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.sphere.Site;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Groups panels by the turns of the solid about the vertical axis: sector k holds what lies between the bearings k and
 * k + 1. With a corner up and panels that lie each on one face of the solid, whole faces go to the sector of their
 * middle, so that sectors end at edges of the solid as far as they can; else every panel goes by its own middle. A panel
 * on the axis is a sector of its own.
 */
final class FoldSectors {

    private static final double ON_THE_AXIS = 1e-6;
    private static final double ROUNDING = 1e-9;

    private final Dome dome;
    private final Dome whole;
    private final Solid solid;
    private final int turns;

    FoldSectors(Dome dome) {
        this.dome = dome;
        this.whole = dome.whole();
        this.solid = dome.spec().solid();
        this.turns = turns(solid, dome.spec().up());
    }

    /** How many turns about the vertical axis map the solid on itself. */
    private static int turns(Solid solid, Up up) {
        return switch (up) {
            case EDGE -> 2;
            case FACE -> 3;
            case VERTEX ->
                switch (solid) {
                    case TETRAHEDRON -> 3;
                    case OCTAHEDRON -> 4;
                    case ICOSAHEDRON -> 5;
                };
        };
    }

    /** For each panel its sector from 0, or one number more on the axis. */
    int[] sectors() {
        List<Panel> panels = whole.panels();
        int[] faces = panels.stream().mapToInt(this::face).toArray();
        Vector3D[] middles = panels.stream().map(this::middle).toArray(Vector3D[]::new);
        if (whole.spec().up() == Up.VERTEX && IntStream.of(faces).allMatch(face -> face >= 0)) {
            Map<Integer, Vector3D> sums = new TreeMap<>();
            panels.forEach(panel -> sums.merge(faces[panel.index()], middles[panel.index()], Vector3D::add));
            panels.forEach(panel -> middles[panel.index()] = sums.get(faces[panel.index()]));
        }
        return IntStream.range(0, dome.panels().size())
                .map(panel -> sector(middles[dome.wholePanel(panel)]))
                .toArray();
    }

    private Vector3D middle(Panel panel) {
        return panel.hubs().stream()
                .map(hub -> whole.hubs().get(hub).position())
                .reduce(Vector3D.ZERO, Vector3D::add);
    }

    private int sector(Vector3D middle) {
        if (StrictMath.hypot(middle.getX(), middle.getY()) < ON_THE_AXIS * middle.getNorm()) {
            return turns;
        }
        double bearing = StrictMath.atan2(middle.getY(), middle.getX()) / (2 * Math.PI) * turns;
        return Math.floorMod((int) Math.floor(bearing + ROUNDING), turns);
    }

    /** The face of the solid that a panel lies on, or -1 if it lies on several. */
    private int face(Panel panel) {
        List<Site> sites =
                panel.hubs().stream().map(hub -> whole.hubs().get(hub).site()).toList();
        return IntStream.range(0, solid.faceCount())
                .filter(face -> sites.stream().allMatch(site -> touches(site, face)))
                .findFirst()
                .orElse(-1);
    }

    private boolean touches(Site site, int face) {
        if (site instanceof Site.Corner corner) {
            return has(face, corner.corner());
        }
        if (site instanceof Site.OnEdge edge) {
            return has(face, edge.from()) && has(face, edge.to());
        }
        return site instanceof Site.InFace in && in.face() == face;
    }

    private boolean has(int face, int corner) {
        return IntStream.range(0, 3).anyMatch(k -> solid.faceCorner(face, k) == corner);
    }
}
