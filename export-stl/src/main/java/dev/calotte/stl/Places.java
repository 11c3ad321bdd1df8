package dev.calotte.stl;

import dev.calotte.document.Mesh;
import java.util.Arrays;

/** The vertices of a mesh in single precision, those at one place joined. */
final class Places {

    private static final int NONE = -1;

    private final float[] xyz;
    private final int[] first;
    private boolean joined;

    private Places(int count) {
        this.xyz = new float[3 * count];
        this.first = new int[count];
    }

    static Places of(Mesh mesh) {
        Places places = new Places(mesh.vertexCount());
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            for (int axis = 0; axis < 3; axis++) {
                places.xyz[3 * vertex + axis] = Place.single(mesh.at(vertex, axis));
            }
        }
        places.join();
        return places;
    }

    /** Finds the first vertex of each place: each stands in a table at the slot of its bits or the next free one. */
    private void join() {
        int[] slots = new int[Math.max(16, 4 * Integer.highestOneBit(first.length))];
        Arrays.fill(slots, NONE);
        for (int vertex = 0; vertex < first.length; vertex++) {
            int slot = hash(vertex) & (slots.length - 1);
            while (slots[slot] != NONE && !same(slots[slot], vertex)) {
                slot = (slot + 1) & (slots.length - 1);
            }
            if (slots[slot] == NONE) {
                slots[slot] = vertex;
            } else {
                joined = true;
            }
            first[vertex] = slots[slot];
        }
    }

    private int hash(int vertex) {
        int hash = Float.floatToRawIntBits(xyz[3 * vertex]);
        hash = 31 * hash + Float.floatToRawIntBits(xyz[3 * vertex + 1]);
        hash = (31 * hash + Float.floatToRawIntBits(xyz[3 * vertex + 2])) * 0x9E37_79B9;
        return hash ^ (hash >>> 15);
    }

    private boolean same(int one, int other) {
        return xyz[3 * one] == xyz[3 * other]
                && xyz[3 * one + 1] == xyz[3 * other + 1]
                && xyz[3 * one + 2] == xyz[3 * other + 2];
    }

    int count() {
        return first.length;
    }

    /** Whether several vertices are at one place. */
    boolean anyJoined() {
        return joined;
    }

    /** The first vertex that has the place of a vertex. */
    int of(int vertex) {
        return first[vertex];
    }

    float at(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }

    Place at(int vertex) {
        return new Place(xyz[3 * vertex], xyz[3 * vertex + 1], xyz[3 * vertex + 2]);
    }

    Facet facet(int a, int b, int c) {
        return new Facet(at(a), at(b), at(c));
    }
}
