package dev.calotte.stl;

import dev.calotte.document.Mesh;
import java.util.Arrays;
import java.util.BitSet;

/** The vertices of a mesh in single precision, those at one place joined. */
final class Places {

    private static final int NONE = -1;

    private final float[] xyz;
    /** The first vertex of each place; empty if each vertex has a place of its own. */
    private final int[] first;

    Places(float... xyz) {
        this.xyz = xyz;
        this.first = join();
    }

    static Places of(Mesh mesh) {
        float[] xyz = new float[3 * mesh.vertexCount()];
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            for (int axis = 0; axis < 3; axis++) {
                xyz[3 * vertex + axis] = Place.single(mesh.at(vertex, axis));
            }
        }
        return new Places(xyz);
    }

    /** Finds the first vertex of each place: each stands in a table at the slot of its bits or the next free one. */
    private int[] join() {
        BitSet doubtful = doubtful();
        int[] slots = new int[Math.max(16, 4 * Integer.highestOneBit(doubtful.cardinality()))];
        Arrays.fill(slots, NONE);
        int[] firsts = new int[0];
        for (int vertex = doubtful.nextSetBit(0); vertex >= 0; vertex = doubtful.nextSetBit(vertex + 1)) {
            int slot = hash(vertex) & (slots.length - 1);
            while (slots[slot] != NONE && !same(slots[slot], vertex)) {
                slot = (slot + 1) & (slots.length - 1);
            }
            if (slots[slot] == NONE) {
                slots[slot] = vertex;
            } else {
                firsts = firsts.length == 0 ? eachItsOwn() : firsts;
                firsts[vertex] = slots[slot];
            }
        }
        return firsts;
    }

    /** The vertices whose bits give a number that others' give, too: all that are at one place, and as a rule few others. */
    private BitSet doubtful() {
        int numbers = (int) Math.min(1 << 30, 16L * Integer.highestOneBit(count()));
        // two bits a number: whether it was given once, and again
        long[] given = new long[numbers / 32 + 1];
        for (int vertex = 0; vertex < count(); vertex++) {
            int bit = 2 * (hash(vertex) & (numbers - 1));
            long once = (given[bit >>> 6] >>> bit) & 1;
            given[bit >>> 6] |= (1 + once) << bit;
        }
        BitSet doubtful = new BitSet();
        for (int vertex = 0; vertex < count(); vertex++) {
            int bit = 2 * (hash(vertex) & (numbers - 1));
            if (((given[bit >>> 6] >>> bit) & 2) != 0) {
                doubtful.set(vertex);
            }
        }
        return doubtful;
    }

    private int[] eachItsOwn() {
        int[] own = new int[count()];
        Arrays.setAll(own, vertex -> vertex);
        return own;
    }

    /** The upper half of a sum of products with odd numbers, which hangs on all bits of the coordinates. */
    private int hash(int vertex) {
        long sum = Float.floatToRawIntBits(xyz[3 * vertex]) * 0x9E37_79B9_7F4A_7C15L
                + Float.floatToRawIntBits(xyz[3 * vertex + 1]) * 0xC2B2_AE3D_27D4_EB4FL
                + Float.floatToRawIntBits(xyz[3 * vertex + 2]) * 0x1656_67B1_9E37_79F9L;
        return (int) (sum >>> 32);
    }

    private boolean same(int one, int other) {
        return xyz[3 * one] == xyz[3 * other]
                && xyz[3 * one + 1] == xyz[3 * other + 1]
                && xyz[3 * one + 2] == xyz[3 * other + 2];
    }

    int count() {
        return xyz.length / 3;
    }

    /** Whether several vertices are at one place. */
    boolean anyJoined() {
        return first.length > 0;
    }

    /** The first vertex that has the place of a vertex. */
    int of(int vertex) {
        return anyJoined() ? first[vertex] : vertex;
    }

    float at(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }

    Place at(int vertex) {
        return new Place(xyz[3 * vertex], xyz[3 * vertex + 1], xyz[3 * vertex + 2]);
    }

    /** Works out the cross product of a facet. */
    void cross(int a, int b, int c, Cross cross) {
        cross.of(xyz, a, b, c);
    }
}
