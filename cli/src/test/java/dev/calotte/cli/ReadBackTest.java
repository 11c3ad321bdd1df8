package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Operation;
import dev.calotte.document.Shape;
import dev.calotte.document.Wireframe;
import dev.calotte.drawing.StrokeReader;
import dev.calotte.drawing.StrokeText;
import dev.calotte.export.Reading;
import dev.calotte.export.ShapeReader;
import dev.calotte.export.SolidReader;
import dev.calotte.export.WireReader;
import dev.calotte.testing.SameShapes;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file that a machine follows is read back by the readers of the command itself. */
class ReadBackTest {

    /** The last digit of SVG, in the height of the page too. */
    private static final double ROUNDING_MM = 1.6e-4;

    @TempDir
    private Path folder;

    static List<Path> examples() throws IOException {
        return Runs.examples();
    }

    private static ByteArrayInputStream bytes(String contents) {
        return new ByteArrayInputStream(contents.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static Reading shapes(String format, String contents) throws IOException {
        return ShapeReader.installed(format).orElseThrow().reading(bytes(contents));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyFileOfAnExampleIsReadBack(Path brief) throws IOException {
        Runs.run("make", brief.toString(), "--out", folder.resolve("out").toString());
        Map<String, String> files = Runs.contents(folder.resolve("out"));
        int drawings = 0;
        for (String name : files.keySet()) {
            if (name.equals("dxf/frame-3d.dxf")) {
                List<Wireframe.Layer> layers =
                        WireReader.installed("dxf").orElseThrow().read(bytes(files.get(name)));
                assertThat(layers)
                        .extracting(layer -> layer.name().replaceAll("-.*", "") + " " + layer.sort())
                        .contains("HUBS POINTS", "STRUTS LINES", "PANELS FACES");
            } else if (name.startsWith("dxf/")) {
                drawings++;
                drawing(name, shapes("dxf", files.get(name)), shapes("svg", files.get(name.replace("dxf", "svg"))));
            } else if (name.endsWith(".stl")) {
                assertThat(SolidReader.installed("stl")
                                .orElseThrow()
                                .read(bytes(files.get(name)))
                                .size())
                        .as(name)
                        .isGreaterThan(3);
            }
        }
        assertThat(drawings).isGreaterThan(10);
    }

    /** Both formats say the same; each piece that is cut bears its own mark, or as much of it as is said. */
    private static void drawing(String name, Reading dxf, Reading svg) {
        SameShapes.assertSame(svg.shapes(), dxf.shapes(), ROUNDING_MM);
        assertThat(svg.title()).as(name).isEqualTo(dxf.title());
        Map<String, List<Shape>> pieces = new TreeMap<>();
        for (Reading.Line line : svg.lines()) {
            pieces.computeIfAbsent(line.mark().orElseThrow(), mark -> new ArrayList<>())
                    .add(line.shape());
        }
        if (name.matches("dxf/(panels|sheets|hubs)/.*")) {
            pieces.forEach((mark, piece) -> marked(name, mark, piece));
        }
        assertThat(texts(svg)).as(name).isEqualTo(texts(dxf));
        if (name.startsWith("dxf/model/")) {
            assertThat(written(texts(dxf))).as(name).isEqualTo(engraved(dxf));
        }
    }

    private static List<String> texts(Reading reading) {
        return StrokeReader.texts(reading.shapes()).stream().map(Label::text).toList();
    }

    /** On models nothing but texts is engraved; this many sides they have, written again. */
    private static int written(List<String> texts) {
        return texts.stream()
                .flatMap(text -> StrokeText.of(text, 1).left(0, 0, 0).stream())
                .mapToInt(stroke -> stroke.size() - 1)
                .sum();
    }

    private static int engraved(Reading reading) {
        return reading.shapes().stream()
                .filter(shape -> shape.operation() == Operation.ENGRAVE)
                .map(dev.calotte.document.Polyline.class::cast)
                .mapToInt(path -> path.size() - (path.isClosed() ? 0 : 1))
                .sum();
    }

    private static void marked(String name, String mark, List<Shape> piece) {
        boolean engraved = piece.stream().anyMatch(shape -> shape.operation() == Operation.ENGRAVE);
        boolean cut = piece.stream().anyMatch(shape -> shape.operation() == Operation.CUT_OUTER);
        if (engraved && cut) {
            assertThat(StrokeReader.texts(piece))
                    .as(name + " " + mark)
                    .extracting(Label::text)
                    .contains(mark);
        }
    }
}
