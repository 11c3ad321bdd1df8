package example;

import dev.calotte.dome.*;
import dev.calotte.export.Exporters;
import dev.calotte.parts.*;
import dev.calotte.solid.FrameWires;
import dev.calotte.sphere.*;
import java.io.IOException;
import java.nio.file.Path;

/** What the README shows first. */
final class FirstDome {

    private FirstDome() {}

    public static void main(String[] args) throws IOException {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), new Size(Size.Measure.FLOOR_DIAMETER, 6400))
                .withKeep(new Keep.Rows(5, 9));
        Parts parts = Parts.of(Dome.of(spec), Joinery.gap(45));
        for (StrutKind kind : parts.strutKinds()) {
            System.out.printf("%d x %s, cut to %.1f mm%n", kind.count(), kind.mark(), kind.cutLengthMm());
        }
        Exporters.installed().write(FrameWires.of("Orchard house", parts), Path.of("frame.dxf"));
    }
}
