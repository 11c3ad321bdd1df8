package dev.calotte.stl;

import dev.calotte.document.Mesh;
import java.util.HashMap;
import java.util.Map;

/** The vertices of a mesh in single precision, those at one place joined. */
final class Places {

    private final Place[] places;
    private final int[] first;

    private Places(Place[] places, int[] first) {
        this.places = places;
        this.first = first;
    }

    static Places of(Mesh mesh) {
        Place[] places = new Place[mesh.vertexCount()];
        int[] first = new int[places.length];
        Map<Place, Integer> known = new HashMap<>();
        for (int vertex = 0; vertex < places.length; vertex++) {
            places[vertex] = Place.of(mesh.at(vertex, 0), mesh.at(vertex, 1), mesh.at(vertex, 2));
            Integer before = known.putIfAbsent(places[vertex], vertex);
            first[vertex] = before == null ? vertex : before;
        }
        return new Places(places, first);
    }

    int count() {
        return places.length;
    }

    /** The first vertex that has the place of a vertex. */
    int of(int vertex) {
        return first[vertex];
    }

    Place at(int vertex) {
        return places[vertex];
    }

    Facet facet(int a, int b, int c) {
        return new Facet(places[a], places[b], places[c]);
    }
}
