package dev.calotte.stl;

import dev.calotte.document.Mesh;
import dev.calotte.geometry.TriangleNet;
import dev.calotte.units.NumberText;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.function.ToDoubleFunction;

/** A mesh in single precision: one vertex a place, no facet without area. */
final class Surface {

    private static final int DECIMALS = 3;

    private final Places places;
    private final int[] corners;

    private Surface(Places places, int[] corners) {
        this.places = places;
        this.corners = corners;
    }

    static Surface of(Mesh mesh) {
        Places places = Places.of(mesh);
        int[] kept = new int[3 * mesh.triangleCount()];
        int count = 0;
        for (int triangle = 0; triangle < mesh.triangleCount(); triangle++) {
            int a = places.of(mesh.corner(triangle, 0));
            int b = places.of(mesh.corner(triangle, 1));
            int c = places.of(mesh.corner(triangle, 2));
            if (places.facet(a, b, c).hasArea()) {
                kept[count++] = a;
                kept[count++] = b;
                kept[count++] = c;
            }
        }
        return new Surface(places, Arrays.copyOf(kept, count));
    }

    int size() {
        return corners.length / 3;
    }

    Facet facet(int index) {
        return places.facet(corners[3 * index], corners[3 * index + 1], corners[3 * index + 2]);
    }

    /** How far it reaches along x, y and z, as files say it: {@code 220x180.5x12}, in millimetres. */
    String extent() {
        return along(Place::x) + "x" + along(Place::y) + "x" + along(Place::z);
    }

    private String along(ToDoubleFunction<Place> axis) {
        DoubleSummaryStatistics range =
                Arrays.stream(corners).mapToObj(places::at).mapToDouble(axis).summaryStatistics();
        return NumberText.trimmed(range.getMax() - range.getMin(), DECIMALS);
    }

    /** Throws an IllegalArgumentException unless the surface is closed and its normals point outwards. */
    void prove() {
        if (corners.length == 0) {
            throw new IllegalArgumentException("no facet has an area");
        }
        int[] used = new int[corners.length];
        TriangleNet net = new TriangleNet(renumber(used), used);
        for (int half = 0; half < used.length; half++) {
            if (net.twin(half) < 0) {
                throw new IllegalArgumentException("the surface is open at " + facet(half / 3));
            }
        }
        if (volume() <= 0) {
            throw new IllegalArgumentException("the surface is inside out");
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

    private double volume() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            sum += facet(i).volumeToOrigin();
        }
        return sum;
    }
}
