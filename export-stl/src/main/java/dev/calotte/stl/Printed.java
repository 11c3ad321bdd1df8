package dev.calotte.stl;

import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.stl.body.Bodies;
import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/**
 * A body of a plate.
 *
 * @param mesh its shape
 * @param count how many are needed
 */
record Printed(Mesh mesh, int count) {

    /** All bodies of a plate, in its order. */
    static List<Printed> of(PrintPlate plate) {
        List<Callable<List<Mesh>>> work = new ArrayList<>();
        plate.jigs().forEach(jig -> work.add(() -> Bodies.of(jig, plate)));
        List<List<Mesh>> bodies = Crew.everyCore().all(work);
        List<Printed> all = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            for (Mesh mesh : bodies.get(i)) {
                all.add(new Printed(mesh, plate.jigs().get(i).count()));
            }
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
