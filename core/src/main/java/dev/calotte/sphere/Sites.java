package dev.calotte.sphere;

/**
 * Numbers the sites of a divided solid without a look-up by coordinates: first the corners, then the points of each
 * edge, then the inner points of each face.
 */
final class Sites {

    private final Solid solid;
    private final Lattice lattice;
    private final int perEdge;
    private final int firstOnEdge;
    private final int firstInFace;

    Sites(Solid solid, Lattice lattice) {
        this.solid = solid;
        this.lattice = lattice;
        this.perEdge = lattice.edgeParts() - 1;
        this.firstOnEdge = solid.cornerCount();
        this.firstInFace = firstOnEdge + solid.edgeCount() * perEdge;
    }

    Solid solid() {
        return solid;
    }

    Lattice lattice() {
        return lattice;
    }

    int count() {
        return firstInFace + solid.faceCount() * lattice.innerCount();
    }

    /** The number of the lattice point (x, y) of a face; the point may poke over one edge into the next face. */
    int number(int face, int x, int y) {
        int a = lattice.weightA(x, y);
        int b = lattice.weightB(x, y);
        int c = lattice.weightC(x, y);
        if (a > 0 && b > 0 && c > 0) {
            return firstInFace + face * lattice.innerCount() + lattice.innerNumberAt(x, y);
        }
        if (c < 0) {
            return across(face, 0, new int[] {a, b, c});
        }
        if (a < 0) {
            return across(face, 1, new int[] {b, c, a});
        }
        if (b < 0) {
            return across(face, 2, new int[] {c, a, b});
        }
        return inside(face, a, b, c);
    }

    /**
     * A point beyond side k: with g the negative weight, it has in the face across the weights of the side's ends plus
     * g and -g at the far corner.
     *
     * @param weights of the side's start, of its end and of the corner opposite (negative)
     */
    private int across(int face, int k, int[] weights) {
        int next = solid.neighbour(face, k);
        int start = solid.place(next, solid.faceCorner(face, k));
        int[] there = new int[3];
        there[start] = weights[0] + weights[2];
        there[(start + 2) % 3] = weights[1] + weights[2];
        there[(start + 1) % 3] = -weights[2];
        return inside(next, there[0], there[1], there[2]);
    }

    /** The number of the point of a closed face with these weights of the face's corners. */
    int inside(int face, int a, int b, int c) {
        if (c == 0) {
            return onSide(face, 0, a, b);
        }
        if (a == 0) {
            return onSide(face, 1, b, c);
        }
        if (b == 0) {
            return onSide(face, 2, c, a);
        }
        return firstInFace + face * lattice.innerCount() + lattice.innerNumber(b, c);
    }

    private int onSide(int face, int k, int weightStart, int weightEnd) {
        if (weightEnd == 0) {
            return solid.faceCorner(face, k);
        }
        if (weightStart == 0) {
            return solid.faceCorner(face, (k + 1) % 3);
        }
        int edge = solid.edge(face, k);
        boolean forward = solid.edgeEnd(edge, 0) == solid.faceCorner(face, k);
        int step = (int) ((long) (forward ? weightEnd : weightStart) * lattice.edgeParts() / lattice.total());
        return firstOnEdge + edge * perEdge + step - 1;
    }

    /** All points, placed face by face: x, y and z of each. */
    double[] place(Placement placement) {
        double[] xyz = new double[3 * count()];
        for (int f = 0; f < solid.faceCount(); f++) {
            double[] placed = placement.place(
                    solid.corner(solid.faceCorner(f, 0)),
                    solid.corner(solid.faceCorner(f, 1)),
                    solid.corner(solid.faceCorner(f, 2)));
            for (int p = 0; p < lattice.pointCount(); p++) {
                System.arraycopy(placed, 3 * p, xyz, 3 * number(f, lattice.x(p), lattice.y(p)), 3);
            }
        }
        return xyz;
    }

    /** The site with a number. */
    Site site(int number) {
        if (number < firstOnEdge) {
            return new Site.Corner(number);
        }
        if (number < firstInFace) {
            int edge = (number - firstOnEdge) / perEdge;
            int step = (number - firstOnEdge) % perEdge + 1;
            return new Site.OnEdge(solid.edgeEnd(edge, 0), solid.edgeEnd(edge, 1), step, lattice.edgeParts());
        }
        return inFace((number - firstInFace) / lattice.innerCount(), (number - firstInFace) % lattice.innerCount());
    }

    private Site inFace(int face, int inner) {
        int point = lattice.innerPoint(inner);
        int b = lattice.weightB(lattice.x(point), lattice.y(point));
        int c = lattice.weightC(lattice.x(point), lattice.y(point));
        return new Site.InFace(face, lattice.total() - b - c, b, c);
    }
}
