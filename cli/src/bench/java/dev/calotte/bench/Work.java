package dev.calotte.bench;

import dev.calotte.document.Document;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A piece of work that is measured; gives the bytes it wrote, or the panels it computed. */
interface Work {

    /** How many triangles are drawn. */
    int TRIANGLES = 100_000;

    /** A ball of so many parts an edge has a million facets. */
    int BALL = 500;

    /** Does it once. */
    long run() throws IOException;

    /** A whole icosahedron with all angles and kinds. */
    static Work geometry(int frequency) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000));
        return () -> {
            Parts parts = Parts.of(Dome.of(spec), Joinery.gap(0));
            return parts.hubKinds().isEmpty() ? 0 : parts.dome().panels().size();
        };
    }

    /** The file of a document, as the exporter of a format writes it. */
    static Work file(String format, Document document, Path folder) {
        Path file = folder.resolve("ours." + format);
        Exporter exporter = Exporters.installed().accepting(document).stream()
                .filter(known -> known.format().equals(format))
                .findFirst()
                .orElseThrow();
        return () -> {
            try (OutputStream out = Files.newOutputStream(file)) {
                exporter.write(document, out);
            }
            return Files.size(file);
        };
    }

    /** The bytes of that file and nothing else. */
    static Work raw(Work file, String format, Path folder) throws IOException {
        file.run();
        byte[] bytes = Files.readAllBytes(folder.resolve("ours." + format));
        Path copy = folder.resolve("raw." + format);
        return () -> {
            try (OutputStream out = Files.newOutputStream(copy)) {
                out.write(bytes);
            }
            return bytes.length;
        };
    }

    /** What the measurements of a format write. */
    static Work writer(String format, Path folder) {
        return file(format, format.equals("stl") ? Shapes.ball(BALL) : Shapes.triangles(TRIANGLES), folder);
    }

    /**
     * Work by its name.
     *
     * @param name {@code geometry-128}, {@code dxf}, {@code raw-dxf}, or {@code million-dxf} for a million shapes
     */
    static Work named(String name, Path folder) throws IOException {
        String format = name.substring(name.indexOf('-') + 1);
        if (name.startsWith("geometry-")) {
            return geometry(Integer.parseInt(format));
        }
        if (name.startsWith("million-")) {
            return file(format, format.equals("stl") ? Shapes.ball(BALL) : Shapes.oneTriangle(1_000_000), folder);
        }
        return name.startsWith("raw-") ? raw(writer(format, folder), format, folder) : writer(name, folder);
    }
}
