package dev.calotte.sphere;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The vertices of a divided solid gathered by its symmetry: the rotations, and for class I and II the mirrorings too.
 * All vertices of an orbit are images of its representative, the one with the lowest number. What leaves the
 * representative where it is, in whole numbers, says how far it is free: on the sphere, on one mirror's great circle, or
 * not at all.
 */
final class VertexOrbits {

    private final Motion[] motions;
    private final int[][] images;
    private final int[] orbitOf;
    private final int[] motionOf;
    private final List<Integer> representatives = new ArrayList<>();
    private final List<Freedom> freedoms = new ArrayList<>();

    VertexOrbits(Sites sites, boolean mirrored) {
        this.motions = motions(sites.solid(), mirrored);
        this.images = new int[motions.length][sites.count()];
        this.orbitOf = new int[sites.count()];
        this.motionOf = new int[sites.count()];
        for (int f = 0; f < sites.solid().faceCount(); f++) {
            for (int p = 0; p < sites.lattice().pointCount(); p++) {
                map(sites, f, p);
            }
        }
        Arrays.fill(orbitOf, -1);
        for (int v = 0; v < orbitOf.length; v++) {
            if (orbitOf[v] < 0) {
                gather(v);
            }
        }
    }

    /** The first of them leaves everything as it is. */
    private static Motion[] motions(Solid solid, boolean mirrored) {
        List<Motion> found = new ArrayList<>();
        for (int hand = 0; hand < (mirrored ? 2 : 1); hand++) {
            for (int f = 0; f < solid.faceCount(); f++) {
                for (int k = 0; k < 3; k++) {
                    found.add(new Motion(solid, f, k, hand == 1));
                }
            }
        }
        return found.toArray(new Motion[0]);
    }

    private void map(Sites sites, int face, int point) {
        Lattice lattice = sites.lattice();
        int x = lattice.x(point);
        int y = lattice.y(point);
        int[] weights = {lattice.weightA(x, y), lattice.weightB(x, y), lattice.weightC(x, y)};
        int vertex = sites.inside(face, weights[0], weights[1], weights[2]);
        int[] there = new int[3];
        for (int g = 0; g < motions.length; g++) {
            for (int k = 0; k < 3; k++) {
                there[motions[g].place(face, k)] = weights[k];
            }
            images[g][vertex] = sites.inside(motions[g].face(face), there[0], there[1], there[2]);
        }
    }

    private void gather(int vertex) {
        int orbit = representatives.size();
        List<Motion> stays = new ArrayList<>();
        for (int g = 0; g < motions.length; g++) {
            int image = images[g][vertex];
            if (image == vertex) {
                stays.add(motions[g]);
            }
            if (orbitOf[image] < 0) {
                orbitOf[image] = orbit;
                motionOf[image] = g;
            }
        }
        representatives.add(vertex);
        freedoms.add(Freedom.of(stays));
    }

    /** How many orbits there are. */
    int count() {
        return representatives.size();
    }

    /** The vertex that stands for an orbit. */
    int representative(int orbit) {
        return representatives.get(orbit);
    }

    /** How far the representative of an orbit may move. */
    Freedom freedom(int orbit) {
        return freedoms.get(orbit);
    }

    /** The orbit of a vertex. */
    int of(int vertex) {
        return orbitOf[vertex];
    }

    /** The motion that brings the representative to a vertex. */
    Motion motion(int vertex) {
        return motions[motionOf[vertex]];
    }

    /** How many motions there are. */
    int motionCount() {
        return motions.length;
    }

    /** Where a motion brings a vertex. */
    int image(int motion, int vertex) {
        return images[motion][vertex];
    }

    /** All vertices, from where the representatives are: x, y and z of each. */
    double[] spread(Vector3D[] representative) {
        double[] xyz = new double[3 * orbitOf.length];
        for (int v = 0; v < orbitOf.length; v++) {
            Vector3D point = motion(v).apply(representative[orbitOf[v]]);
            xyz[3 * v] = point.getX();
            xyz[3 * v + 1] = point.getY();
            xyz[3 * v + 2] = point.getZ();
        }
        return xyz;
    }
}
