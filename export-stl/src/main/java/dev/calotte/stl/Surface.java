package dev.calotte.stl;

import dev.calotte.document.Mesh;
import dev.calotte.geometry.TriangleNet;
import dev.calotte.units.NumberText;

/** A mesh in single precision: one vertex a place, no facet without area. */
final class Surface {

    private static final int DECIMALS = 3;

    private final Mesh mesh;
    private final Places places;
    /** Whether vertices were joined or facets left out; the mesh itself is closed. */
    private final boolean changed;
    /** Those of the facets that are left; none if these are the mesh's own. */
    private final int[] corners;

    private final int size;
    private final double sixfoldVolume;

    private Surface(Mesh mesh, Places places) {
        this.mesh = mesh;
        this.places = places;
        int count = 0;
        double sum = 0;
        Cross cross = new Cross();
        for (int triangle = 0; triangle < mesh.triangleCount(); triangle++) {
            int first = vertex(triangle, 0);
            places.cross(first, vertex(triangle, 1), vertex(triangle, 2), cross);
            if (cross.hasLength()) {
                sum += sixfoldVolumeToOrigin(first, cross);
                count++;
            }
        }
        this.size = count;
        this.changed = places.anyJoined() || count < mesh.triangleCount();
        this.corners = changed ? kept() : new int[0];
        this.sixfoldVolume = sum;
    }

    private int[] kept() {
        int[] kept = new int[3 * size];
        int count = 0;
        Cross cross = new Cross();
        for (int triangle = 0; triangle < mesh.triangleCount(); triangle++) {
            places.cross(vertex(triangle, 0), vertex(triangle, 1), vertex(triangle, 2), cross);
            for (int k = 0; k < 3 && cross.hasLength(); k++) {
                kept[count++] = vertex(triangle, k);
            }
        }
        return kept;
    }

    private int vertex(int triangle, int k) {
        return places.of(mesh.corner(triangle, k));
    }

    /** Of the tetrahedron that a facet with this corner makes with the origin. */
    private double sixfoldVolumeToOrigin(int corner, Cross cross) {
        return cross.dot(places.at(corner, 0), places.at(corner, 1), places.at(corner, 2));
    }

    static Surface of(Mesh mesh) {
        return new Surface(mesh, Places.of(mesh));
    }

    int size() {
        return size;
    }

    Facet facet(int index) {
        return new Facet(places.at(corner(index, 0)), places.at(corner(index, 1)), places.at(corner(index, 2)));
    }

    /** The unit normal of a facet by the right-hand rule. */
    Place normal(int index, Cross cross) {
        places.cross(corner(index, 0), corner(index, 1), corner(index, 2), cross);
        return cross.unit();
    }

    /** Where a corner of a facet is. */
    float at(int index, int k, int axis) {
        return places.at(corner(index, k), axis);
    }

    private int corner(int index, int k) {
        return changed ? corners[3 * index + k] : mesh.corner(index, k);
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
        if (size == 0) {
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
