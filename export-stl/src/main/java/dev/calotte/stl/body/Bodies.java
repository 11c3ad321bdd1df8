package dev.calotte.stl.body;

import dev.calotte.document.Document;
import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import java.util.ArrayList;
import java.util.List;

/** The bodies of what documents describe. */
public final class Bodies {

    private Bodies() {}

    /**
     * Finds the shape of a jig.
     *
     * @param jig something to print
     * @param plate the plate that it belongs to
     * @return its pieces, called {@code jigs/MARK}, {@code jigs/MARK-2} and so on, each a closed surface in one piece
     *     that stands on z = 0
     */
    public static List<Mesh> of(Jig jig, PrintPlate plate) {
        List<Relief> pieces = pieces(jig, plate);
        List<Mesh> meshes = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            String name = "jigs/" + jig.mark() + (i == 0 ? "" : "-" + (i + 1));
            String title = pieces.size() == 1 ? jig.title() : jig.title() + ", piece " + (i + 1);
            meshes.add(pieces.get(i).mesh(name, title));
        }
        return List.copyOf(meshes);
    }

    /**
     * Finds the shape of a solid.
     *
     * @param solid rods, or a solid that is cut into pieces
     * @return its pieces, called {@code NAME}, {@code NAME-2} and so on
     */
    public static List<Mesh> of(Document solid) {
        return Pieces.of(solid);
    }

    private static List<Relief> pieces(Jig jig, PrintPlate plate) {
        BlockShape blocks = new BlockShape(plate);
        if (jig instanceof Jig.Cradle cradle) {
            return new CradleShape(cradle, plate).pieces();
        }
        if (jig instanceof Jig.Socket socket) {
            return new SocketShape(socket, plate).halves();
        }
        if (jig instanceof Jig.Gauge gauge) {
            return List.of(new GaugeShape(gauge).relief());
        }
        if (jig instanceof Jig.Mitre mitre) {
            return List.of(blocks.mitre(mitre));
        }
        if (jig instanceof Jig.Drill drill) {
            return List.of(blocks.drill(drill));
        }
        return List.of(blocks.fit((Jig.Fit) jig));
    }
}
