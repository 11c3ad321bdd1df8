package dev.calotte.stl;

import dev.calotte.export.Facets;
import java.io.IOException;

/** An object of a model part as it is read. */
final class PlateObject {

    private final int id;
    private final String name;
    private final Numbers places = new Numbers();
    private final Numbers corners = new Numbers();
    private int vertices;

    PlateObject(int id, String name) {
        this.id = id;
        this.name = name;
    }

    int id() {
        return id;
    }

    String name() {
        return name;
    }

    Facets facets() {
        return new Facets(name, corners.all());
    }

    /** The vertex that has just begun, its unit in millimetres. */
    void vertex(PlateXml xml, double unitMm) throws IOException {
        places.add(xml.number("x", unitMm));
        places.add(xml.number("y", unitMm));
        places.add(xml.number("z", unitMm));
        vertices++;
    }

    /** The triangle that has just begun. */
    void triangle(PlateXml xml) throws IOException {
        int a = xml.whole("v1", vertices);
        int b = xml.whole("v2", vertices);
        int c = xml.whole("v3", vertices);
        if (!same(a, b) && !same(b, c) && !same(c, a)) {
            add(a);
            add(b);
            add(c);
        }
    }

    private boolean same(int one, int other) {
        boolean same = true;
        for (int axis = 0; axis < 3; axis++) {
            same &= places.at(3 * one + axis) == places.at(3 * other + axis);
        }
        return same;
    }

    private void add(int vertex) {
        for (int axis = 0; axis < 3; axis++) {
            corners.add(places.at(3 * vertex + axis));
        }
    }
}
