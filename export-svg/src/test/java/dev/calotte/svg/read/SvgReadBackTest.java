package dev.calotte.svg.read;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.export.Finish;
import dev.calotte.export.Reading;
import dev.calotte.export.ShapeReader;
import dev.calotte.svg.SvgWriter;
import dev.calotte.testing.Cases;
import dev.calotte.testing.SameShapes;
import dev.calotte.testing.Services;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is read back. */
class SvgReadBackTest {

    /** The last digit of a file, in the height of the page too. */
    private static final double ROUNDING_MM = 1.1e-4;

    private static final List<Operation> OPERATIONS = List.of(Operation.values());

    private final Locale locale = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
    }

    private static Reading readBack(Drawing drawing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgWriter.of(Finish.PLAIN).write(drawing, out);
        return new SvgShapeReader().reading(new ByteArrayInputStream(out.toByteArray()));
    }

    private static Drawing drawing(List<Part> parts) {
        return new Drawing("panels/P1", "Panel \u00d8 8 & <more>", 2440, 1220.5, parts);
    }

    @Test
    void isFoundByTheEndingOfItsFilesAndDeclaredTwice() throws IOException {
        assertThat(ShapeReader.installed("svg").orElseThrow()).isInstanceOf(SvgShapeReader.class);
        Services services = new Services(SvgShapeReader.class);
        assertThat(services.inServiceFile(ShapeReader.class))
                .isEqualTo(services.inDescriptor(ShapeReader.class))
                .containsExactly(SvgShapeReader.class.getName());
    }

    /** Turkish has letters of its own for i, German a comma in numbers, Arabic digits of its own. */
    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "en-US"})
    void everyLineComesBackInEveryLocale(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        Cases.each(60, SvgReadBackTest::checkRandom);
    }

    private static void checkRandom(Random random, int size) {
        List<Part> parts = new ArrayList<>();
        for (int part = 0; part <= size % 4; part++) {
            List<Shape> shapes = new ArrayList<>();
            for (int shape = 0; shape < 1 + size % 7; shape++) {
                shapes.add(shape(random, 10 + 2000 * random.nextDouble(), 10 + 1000 * random.nextDouble()));
            }
            parts.add(new Part("P" + part + "-1.0" + part, "a piece", shapes));
        }
        Drawing drawing = drawing(parts);
        try {
            Reading read = readBack(drawing);
            SameShapes.assertSame(read.shapes(), SameShapes.inOrder(drawing), ROUNDING_MM);
            assertThat(read.title()).contains(drawing.title());
            for (Part part : parts) {
                List<Shape> own = read.lines().stream()
                        .filter(line -> line.mark().equals(Optional.of(part.mark())))
                        .map(Reading.Line::shape)
                        .toList();
                SameShapes.assertSame(own, SameShapes.inOrder(drawing(List.of(part))), ROUNDING_MM);
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Polygons round a middle, some of their sides bent by up to two thirds of a turn. */
    private static Shape shape(Random random, double x, double y) {
        Operation operation = OPERATIONS.get(random.nextInt(OPERATIONS.size()));
        double size = 5 + 100 * random.nextDouble();
        if (random.nextInt(4) == 0) {
            return new Circle(operation, x, y, size);
        }
        int corners = 3 + random.nextInt(6);
        double[] xy = new double[2 * corners];
        double[] bulges = new double[corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners;
            xy[2 * i] = x + size * Math.cos(angle);
            xy[2 * i + 1] = y + size * Math.sin(angle);
            bulges[i] = i % 2 == 1 ? 1.7 * (2 * random.nextDouble() - 1) : 0;
        }
        if (random.nextBoolean()) {
            return Polyline.closed(operation, xy, bulges);
        }
        bulges[corners - 1] = 0;
        return Polyline.open(operation, xy, bulges);
    }
}
