package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Where a site lies, worked out from its whole numbers alone. */
final class Places {

    private Places() {}

    static Vector3D point(double[] xyz, int vertex) {
        return new Vector3D(xyz[3 * vertex], xyz[3 * vertex + 1], xyz[3 * vertex + 2]);
    }

    /** The weighted sum of the corners, brought to length 1. */
    static Vector3D chord(Solid solid, Site site) {
        if (site instanceof Site.Corner at) {
            return solid.corner(at.corner());
        }
        if (site instanceof Site.OnEdge on) {
            return new Vector3D(on.parts() - on.step(), solid.corner(on.from()), on.step(), solid.corner(on.to()))
                    .normalize();
        }
        Site.InFace in = (Site.InFace) site;
        return sum(solid, in, in.a(), in.b(), in.c());
    }

    private static Vector3D sum(Solid solid, Site.InFace in, double a, double b, double c) {
        return new Vector3D(
                        a, solid.corner(solid.faceCorner(in.face(), 0)),
                        b, solid.corner(solid.faceCorner(in.face(), 1)),
                        c, solid.corner(solid.faceCorner(in.face(), 2)))
                .normalize();
    }

    /** The point that turns the corner {@code from} towards {@code to} by its part of the arc. */
    static Vector3D onArc(Solid solid, Site.OnEdge site) {
        Vector3D from = solid.corner(site.from());
        Vector3D to = solid.corner(site.to());
        double turn = solid.centralAngleRad() * site.step() / site.parts();
        Vector3D across = to.subtract(from.scalarMultiply(from.dotProduct(to))).normalize();
        return new Vector3D(StrictMath.cos(turn), from, StrictMath.sin(turn), across);
    }

    /** The furthest that an inner point of class I lies from the centre of its window on the flat face, projected. */
    static double furthestFromFlatWindow(SphereMesh mesh) {
        double[] xyz = mesh.coordinates(Up.VERTEX);
        double furthest = 0;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (mesh.site(v) instanceof Site.InFace site) {
                furthest = Math.max(furthest, Vector3D.distance(point(xyz, v), flatWindow(mesh.solid(), site)));
            }
        }
        return furthest;
    }

    private static Vector3D flatWindow(Solid solid, Site.InFace site) {
        int n = (int) Math.round(Math.sqrt(site.a() + site.b() + site.c()));
        double a = part(solid, site.a() / n, n);
        double b = part(solid, site.b() / n, n);
        double c = part(solid, site.c() / n, n);
        double rest = (1 - a - b - c) / 3;
        return sum(solid, site, a + rest, b + rest, c + rest);
    }

    /** How far along the straight edge the point lies that divides its arc at m/n. */
    private static double part(Solid solid, int m, int n) {
        double near = StrictMath.sin(m * solid.centralAngleRad() / n);
        double far = StrictMath.sin((n - m) * solid.centralAngleRad() / n);
        return near / (near + far);
    }
}
