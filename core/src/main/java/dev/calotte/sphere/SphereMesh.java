package dev.calotte.sphere;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.math.BigInteger;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A unit sphere of triangles. Vertices are numbered by their {@link Site}: corners of the solid, then the points of its
 * edges, then those inside its faces. Triangles are listed counter-clockwise seen from outside.
 *
 * <pre>{@code
 * SphereMesh mesh = SphereMesh.of(Solid.ICOSAHEDRON, Breakdown.of(3), Spacing.CHORD);
 * int[] triangles = mesh.triangles();
 * }</pre>
 */
public final class SphereMesh {

    /** The most triangles a mesh may have: beyond it, the indices of half-edges would no longer be whole ints. */
    public static final long MOST_TRIANGLES = 100_000_000;

    private final Solid solid;
    private final Sites sites;
    private final double[] xyz;
    private final int[] triangles;

    private SphereMesh(Solid solid, Sites sites, double[] xyz, int[] triangles) {
        this.solid = solid;
        this.sites = sites;
        this.xyz = xyz;
        this.triangles = triangles;
    }

    /**
     * Divides a solid and places its points on the unit sphere; {@link Spacing#FITTED} is to reach what is usual.
     *
     * @param solid the solid
     * @param breakdown how its faces are divided
     * @param spacing how the points are spaced
     * @return the mesh
     * @throws CalotteException as from {@link #of(Solid, Breakdown, Spacing, Fitting)} with {@link Fitting#DEFAULT}
     */
    public static SphereMesh of(Solid solid, Breakdown breakdown, Spacing spacing) {
        return of(solid, breakdown, spacing, Fitting.DEFAULT);
    }

    /**
     * Divides a solid and places its points on the unit sphere.
     *
     * @param solid the solid
     * @param breakdown how its faces are divided
     * @param spacing how the points are spaced
     * @param fitting what {@link Spacing#FITTED} is to reach; the other spacings do not use it
     * @return the mesh
     * @throws CalotteException if the spacing does not know the breakdown, if the mesh would have more than
     *     {@link #MOST_TRIANGLES} triangles or more than can be fitted, or if the strut ratio cannot be kept to
     */
    public static SphereMesh of(Solid solid, Breakdown breakdown, Spacing spacing, Fitting fitting) {
        checkSize(solid, breakdown);
        checkSpacing(breakdown, spacing);
        if (spacing == Spacing.FITTED) {
            Fitted.check(breakdown, fitting.goal());
        }
        Breakdown straight = breakdown.b() == 0 ? Breakdown.of(breakdown.c()) : breakdown;
        Lattice lattice = new Lattice(straight);
        Sites sites = new Sites(solid, lattice);
        double[] xyz = spacing == Spacing.FITTED
                ? Fitted.place(sites, straight, fitting)
                : sites.place(Placement.of(spacing, solid, lattice));
        return new SphereMesh(solid, sites, xyz, triangles(solid, lattice, sites, breakdown));
    }

    private static void checkSize(Solid solid, Breakdown breakdown) {
        BigInteger b = BigInteger.valueOf(breakdown.b());
        BigInteger c = BigInteger.valueOf(breakdown.c());
        BigInteger count =
                b.multiply(b).add(b.multiply(c)).add(c.multiply(c)).multiply(BigInteger.valueOf(solid.faceCount()));
        if (count.compareTo(BigInteger.valueOf(MOST_TRIANGLES)) > 0) {
            throw new CalotteException(
                    Code.TOO_LARGE,
                    "dome.breakdown",
                    breakdown + " makes " + count + " panels; at most " + MOST_TRIANGLES + " are computed.",
                    "Take a lower breakdown.");
        }
    }

    private static void checkSpacing(Breakdown breakdown, Spacing spacing) {
        boolean everyClass = spacing == Spacing.CHORD || spacing == Spacing.FITTED;
        if (!everyClass && breakdown.classNumber() != 1) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "dome.spacing",
                    "the breakdown " + breakdown + " is of class " + "I".repeat(breakdown.classNumber()) + ", and "
                            + spacing.name().toLowerCase(java.util.Locale.ROOT) + " exists for class I only.",
                    "Use spacing: chord, or a breakdown [n, 0].");
        }
        int n = breakdown.frequency();
        if (spacing == Spacing.MIDARC && Integer.bitCount(n) != 1) {
            int below = Integer.highestOneBit(n);
            throw new CalotteException(
                    Code.CONFLICT,
                    "dome.spacing",
                    "midarc halves again and again, and the breakdown " + n + " is not a power of 2.",
                    "Use a breakdown of " + below + " or " + 2 * below + ", or spacing: chord or arc.");
        }
    }

    private static int[] triangles(Solid solid, Lattice lattice, Sites sites, Breakdown breakdown) {
        int[] pattern = lattice.triangles();
        int[] sides = new int[pattern.length / 6];
        for (int t = 0; t < pattern.length; t += 6) {
            sides[t / 6] = lattice.owningSide(
                    pattern[t], pattern[t + 1], pattern[t + 2], pattern[t + 3], pattern[t + 4], pattern[t + 5]);
        }
        int[] triangles = new int[Math.toIntExact(3L * solid.faceCount() * breakdown.triangulationNumber())];
        int count = 0;
        for (int f = 0; f < solid.faceCount(); f++) {
            for (int t = 0; t < pattern.length; t += 6) {
                int side = sides[t / 6];
                if (side < 0 || f < solid.neighbour(f, side)) {
                    for (int k = 0; k < 6; k += 2) {
                        triangles[count++] = sites.number(f, pattern[t + k], pattern[t + k + 1]);
                    }
                }
            }
        }
        if (count != triangles.length) {
            throw new AssertionError(count / 3 + " triangles instead of " + triangles.length / 3);
        }
        return triangles;
    }

    /**
     * The solid that was divided.
     *
     * @return the solid
     */
    public Solid solid() {
        return solid;
    }

    /**
     * How many vertices there are.
     *
     * @return the number of vertices
     */
    public int vertexCount() {
        return sites.count();
    }

    /**
     * How many triangles there are.
     *
     * @return the number of triangles
     */
    public int triangleCount() {
        return triangles.length / 3;
    }

    /**
     * Where a vertex lies on the solid.
     *
     * @param vertex the number of a vertex
     * @return its identity
     */
    public Site site(int vertex) {
        return sites.site(vertex);
    }

    /**
     * Where the vertices lie, the sphere turned so that a part of the solid is the crown.
     *
     * @param up what points to +z; the start ray is the x axis
     * @return x, y and z of each vertex, of length 1; a new array
     */
    public double[] coordinates(Up up) {
        if (up == Up.VERTEX) {
            return xyz.clone();
        }
        Vector3D[] frame = up.frame(solid);
        double[] turned = new double[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            Vector3D point = new Vector3D(xyz[i], xyz[i + 1], xyz[i + 2]);
            for (int k = 0; k < 3; k++) {
                turned[i + k] = frame[k].dotProduct(point);
            }
        }
        return turned;
    }

    /**
     * The triangles.
     *
     * @return three vertex numbers each, counter-clockwise seen from outside; a new array
     */
    public int[] triangles() {
        return triangles.clone();
    }
}
