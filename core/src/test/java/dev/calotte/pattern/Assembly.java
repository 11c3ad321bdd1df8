package dev.calotte.pattern;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Patterns put back in their places on the dome. */
record Assembly(Patterns patterns) {

    static final double R = 2400;

    static Parts parts(Solid solid, Breakdown breakdown, Keep keep) {
        return Parts.of(Dome.of(DomeSpec.of(solid, breakdown, Size.radius(R)).withKeep(keep)), Joinery.gap(40));
    }

    static Parts fiveNinths() {
        return parts(Solid.ICOSAHEDRON, Breakdown.of(3), new Keep.Rows(5, 9));
    }

    static Parts random(Random random) {
        List<Breakdown> breakdowns =
                List.of(Breakdown.of(2), Breakdown.of(3), Breakdown.of(4), new Breakdown(1, 1), new Breakdown(2, 1));
        Breakdown breakdown = breakdowns.get(random.nextInt(breakdowns.size()));
        Solid solid = random.nextBoolean() ? Solid.ICOSAHEDRON : Solid.OCTAHEDRON;
        DomeSpec spec = DomeSpec.of(solid, breakdown, Size.radius(R))
                .withUp(List.of(Up.values()).get(random.nextInt(3)))
                .withSpacing(breakdown.classNumber() == 1 && random.nextBoolean() ? Spacing.ARC : Spacing.CHORD)
                .withKeep(random.nextBoolean() ? new Keep.Whole() : new Keep.AboveHeight(0));
        return Parts.of(Dome.of(spec), Joinery.nodeToNode());
    }

    /** A point of a panel's pattern in space, as high over the plane of the hub centres as the cover's plane. */
    Vector3D place(Panel panel, Vector2D point) {
        Vector3D[] hubs = hubs(panel);
        Vector3D x = hubs[1].subtract(hubs[0]).normalize();
        Vector3D out = x.crossProduct(hubs[2].subtract(hubs[0])).normalize();
        Vector3D y = out.crossProduct(x);
        double plane = patterns.cover().sheeting().planeMm();
        return new Vector3D(1, hubs[0], point.getX(), x, point.getY(), y).add(plane, out);
    }

    /** The hubs of a panel in the order of its pattern's corners. */
    Vector3D[] hubs(Panel panel) {
        Vector3D[] hubs = new Vector3D[3];
        for (int k = 0; k < 3; k++) {
            int hub = panel.hubs().get((patterns.firstHub(panel) + k) % 3);
            hubs[k] = patterns.parts().dome().hubs().get(hub).position();
        }
        return hubs;
    }

    /** The strut below a side of a panel's pattern. */
    int strut(Panel panel, int side) {
        return panel.struts().get((patterns.firstHub(panel) + side) % 3);
    }

    /** The side of a panel's pattern that lies on a strut. */
    int side(Panel panel, int strut) {
        return Math.floorMod(panel.struts().indexOf(strut) - patterns.firstHub(panel), 3);
    }

    List<Panel> at(int strut) {
        return patterns.parts().dome().panels().stream()
                .filter(panel -> panel.struts().contains(strut))
                .toList();
    }

    /** A point on a side of the net shape, counted from the foot of the side's first hub centre. */
    static Vector2D onNet(Pattern pattern, int side, double along) {
        Side s = pattern.sides().get(side);
        return hubCorner(pattern, side)
                .add(along, direction(pattern, side))
                .add(s.growthMm(), pattern.whole().net().outward(side));
    }

    static Vector2D direction(Pattern pattern, int side) {
        Vector2D outward = pattern.whole().net().outward(side);
        return new Vector2D(-outward.getY(), outward.getX());
    }

    private static Vector2D hubCorner(Pattern pattern, int side) {
        Vector2D corner = Vector2D.ZERO;
        for (int k = 0; k < side; k++) {
            corner = corner.add(pattern.sides().get(k).lengthMm(), direction(pattern, k));
        }
        return corner;
    }
}
