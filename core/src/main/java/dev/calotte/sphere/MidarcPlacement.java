package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** {@link Spacing#MIDARC}: midpoints of arcs, again and again; the frequency is a power of 2. */
record MidarcPlacement(Lattice lattice) implements Placement {

    @Override
    public double[] place(Vector3D a, Vector3D b, Vector3D c) {
        int n = lattice.edgeParts();
        Vector3D[][] grid = new Vector3D[n + 1][n + 1];
        grid[0][0] = a;
        grid[n][0] = b;
        grid[0][n] = c;
        for (int step = n; step > 1; step /= 2) {
            halve(grid, n, step);
        }
        double[] xyz = new double[3 * lattice.pointCount()];
        for (int p = 0; p < lattice.pointCount(); p++) {
            Vector3D point = grid[lattice.x(p)][lattice.y(p)];
            xyz[3 * p] = point.getX();
            xyz[3 * p + 1] = point.getY();
            xyz[3 * p + 2] = point.getZ();
        }
        return xyz;
    }

    /** Puts a point in the middle of every side of length {@code step} that runs along x, along y or across. */
    private static void halve(Vector3D[][] grid, int n, int step) {
        int half = step / 2;
        for (int x = 0; x < n; x += step) {
            for (int y = 0; x + y < n; y += step) {
                grid[x + half][y] = middle(grid[x][y], grid[x + step][y]);
                grid[x][y + half] = middle(grid[x][y], grid[x][y + step]);
                grid[x + half][y + half] = middle(grid[x + step][y], grid[x][y + step]);
            }
        }
    }

    private static Vector3D middle(Vector3D p, Vector3D q) {
        return p.add(q).normalize();
    }
}
