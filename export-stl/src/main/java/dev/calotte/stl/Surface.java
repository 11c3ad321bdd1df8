package dev.calotte.stl;

import dev.calotte.document.Mesh;
import dev.calotte.geometry.TriangleNet;
import dev.calotte.units.NumberText;
import java.util.Arrays;

/** A mesh in single precision: one vertex a place, no facet without area. */
final class Surface {

    private static final int DECIMALS = 3;

    private final Places places;
    private final int[] corners;
    /** Whether vertices were joined or facets left out; the mesh itself is closed. */
    private final boolean changed;

    private final double sixfoldVolume;

    private Surface(Mesh mesh, Places places) {
        this.places = places;
        int[] kept = new int[3 * mesh.triangleCount()];
        int count = 0;
        double sum = 0;
        for (int triangle = 0; triangle < mesh.triangleCount(); triangle++) {
            kept[count] = places.of(mesh.corner(triangle, 0));
            kept[count + 1] = places.of(mesh.corner(triangle, 1));
            kept[count + 2] = places.of(mesh.corner(triangle, 2));
            Facet facet = places.facet(kept[count], kept[count + 1], kept[count + 2]);
            if (facet.hasArea()) {
                sum += facet.sixfoldVolumeToOrigin();
                count += 3;
            }
        }
        this.corners = count < kept.length ? Arrays.copyOf(kept, count) : kept;
        this.changed = places.anyJoined() || count < kept.length;
        this.sixfoldVolume = sum;
    }

    static Surface of(Mesh mesh) {
        return new Surface(mesh, Places.of(mesh));
    }

    int size() {
        return corners.length / 3;
    }

    Facet facet(int index) {
        return places.facet(corners[3 * index], corners[3 * index + 1], corners[3 * index + 2]);
    }

    /** How far it reaches along x, y and z, as files say it: {@code 220x180.5x12}, in millimetres. */
    String extent() {
        return along(0) + "x" + along(1) + "x" + along(2);
    }

    private String along(int axis) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int count = changed ? corners.length : places.count();
        for (int i = 0; i < count; i++) {
            double value = places.at(changed ? corners[i] : i, axis);
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return NumberText.trimmed(most - least, DECIMALS);
    }

    /** Throws an IllegalArgumentException unless the surface is closed and its normals point outwards. */
    void prove() {
        if (corners.length == 0) {
            throw new IllegalArgumentException("no facet has an area");
        }
        if (changed) {
            proveClosed();
        }
        if (sixfoldVolume <= 0) {
            throw new IllegalArgumentException("the surface is inside out");
        }
    }

    private void proveClosed() {
        int[] used = new int[corners.length];
        TriangleNet net = new TriangleNet(renumber(used), used);
        for (int half = 0; half < used.length; half++) {
            if (net.twin(half) < 0) {
                throw new IllegalArgumentException("the surface is open at " + facet(half / 3));
            }
        }
    }

    /** Numbers the vertices in the order of their use, so that none is unused; gives how many there are. */
    private int renumber(int[] used) {
        int[] numbers = new int[places.count()];
        int count = 0;
        for (int i = 0; i < corners.length; i++) {
            if (numbers[corners[i]] == 0) {
                numbers[corners[i]] = ++count;
            }
            used[i] = numbers[corners[i]] - 1;
        }
        return count;
    }
}
