package dev.calotte.stl;

import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.stl.body.Bodies;
import java.util.ArrayList;
import java.util.List;

/**
 * A body of a plate.
 *
 * @param mesh its shape
 * @param count how many are needed
 */
record Printed(Mesh mesh, int count) {

    /** All bodies of a plate, in its order. */
    static List<Printed> of(PrintPlate plate) {
        List<Printed> all = new ArrayList<>();
        for (Jig jig : plate.jigs()) {
            Bodies.of(jig, plate).forEach(mesh -> all.add(new Printed(mesh, jig.count())));
        }
        return List.copyOf(all);
    }

    /** Its name without folders. */
    String mark() {
        return mesh.name().substring(mesh.name().lastIndexOf('/') + 1);
    }

    double sizeMm(int axis) {
        double most = 0;
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            most = Math.max(most, mesh.at(vertex, axis));
        }
        return most;
    }
}
