package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.testing.Cases;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DxfOutlinesTest {

    /** Coordinates are rounded to six decimals; arcs of lines come back through their centre, radius and angles. */
    private static final double PRINTED = 3e-6;

    @ParameterizedTest
    @EnumSource(Dialect.class)
    void whatIsWrittenReadsBack(Dialect dialect) {
        Cases.each(60, (random, size) -> {
            List<DxfOutlines.Outline> written = new ArrayList<>();
            Drawing drawing = random(random, size);
            for (Drawing.Part part : drawing.parts()) {
                part.shapes()
                        .forEach(shape -> written.add(
                                new DxfOutlines.Outline(shape.operation().name(), shape)));
            }
            assertSame(written(drawing, dialect), written);
        });
    }

    private static List<DxfOutlines.Outline> written(Drawing drawing, Dialect dialect) {
        try {
            return read(Samples.bytes(drawing, dialect)).all();
        } catch (IOException wrong) {
            throw new AssertionError(wrong);
        }
    }

    private static void assertSame(List<DxfOutlines.Outline> read, List<DxfOutlines.Outline> written) {
        assertThat(read).hasSameSizeAs(written);
        for (DxfOutlines.Outline outline : written) {
            assertThat(read)
                    .anyMatch(other -> other.layer().equals(outline.layer()) && same(outline.shape(), other.shape()));
        }
    }

    private static boolean same(Shape one, Shape other) {
        if (one instanceof Circle circle) {
            return other instanceof Circle read
                    && near(circle.xMm(), read.xMm())
                    && near(circle.yMm(), read.yMm())
                    && near(circle.radiusMm(), read.radiusMm());
        }
        return other instanceof Polyline read && same((Polyline) one, read);
    }

    private static boolean same(Polyline one, Polyline other) {
        boolean same = one.size() == other.size() && one.isClosed() == other.isClosed();
        for (int i = 0; same && i < one.size(); i++) {
            same = near(one.x(i), other.x(i))
                    && near(one.y(i), other.y(i))
                    && Math.abs(one.bulge(i) - other.bulge(i)) < 1e-6;
        }
        return same;
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < PRINTED;
    }

    /** Shapes in cells of their own, so that none lies on another. */
    private static Drawing random(Random random, int size) {
        List<Drawing.Part> parts = new ArrayList<>();
        for (int i = 0; i < 1 + size / 6; i++) {
            double x = 100.0 * i + 50;
            Operation operation = List.of(Operation.values()).get(random.nextInt(Operation.values().length));
            Shape shape = random.nextInt(4) == 0
                    ? new Circle(operation, x, random.nextDouble(), 0.1 + 40 * random.nextDouble())
                    : path(random, operation, x);
            parts.add(new Drawing.Part("P" + i, "", List.of(shape)));
        }
        return new Drawing("panels/P1", "random", 100, 100, parts);
    }

    private static Polyline path(Random random, Operation operation, double x) {
        int corners = 3 + random.nextInt(6);
        double[] xy = new double[2 * corners];
        double[] bulges = new double[corners];
        for (int i = 0; i < corners; i++) {
            double angle = (i + 0.6 * random.nextDouble()) * 2 * Math.PI / corners;
            double radius = 10 + 20 * random.nextDouble();
            xy[2 * i] = x + radius * StrictMath.cos(angle);
            xy[2 * i + 1] = radius * StrictMath.sin(angle);
            bulges[i] = random.nextInt(3) == 0 ? random.nextDouble() - 0.5 : 0;
        }
        if (random.nextBoolean()) {
            return Polyline.closed(operation, xy, bulges);
        }
        bulges[corners - 1] = 0;
        return Polyline.open(operation, xy, bulges);
    }

    @ParameterizedTest
    @CsvSource({
        "'', 1",
        "'9,$INSUNITS,70,1', 25.4",
        "'9,$INSUNITS,70,2', 304.8",
        "'9,$INSUNITS,70,4', 1",
        "'9,$INSUNITS,70,5', 10",
        "'9,$INSUNITS,70,6', 1000",
        "'9,$MEASUREMENT,70,0', 25.4",
        "'9,$MEASUREMENT,70,1', 1",
        "'9,$MEASUREMENT,70,0,9,$INSUNITS,70,4', 1",
        "'9,$INSUNITS,70,0,9,$MEASUREMENT,70,0', 25.4"
    })
    void unitsAreThoseOfTheHeader(String variables, double millimetres) throws IOException {
        String header = "0,SECTION,2,HEADER," + (variables.isEmpty() ? "" : variables + ",") + "0,ENDSEC,";
        Circle circle = (Circle) read(bytes(header + entities("0,CIRCLE,8,X,10,1,20,2,40,3")))
                .all()
                .get(0)
                .shape();
        assertThat(circle.xMm()).isCloseTo(millimetres, within(1e-12));
        assertThat(circle.radiusMm()).isCloseTo(3 * millimetres, within(1e-12));
    }

    @Test
    void linesAreJoinedInAnyOrderAndDirection() throws IOException {
        DxfOutlines outlines = read(bytes(entities(
                "0,LINE,8,A,10,0,20,0,11,10,21,0",
                "0,LINE,8,B,10,5,20,5,11,6,21,6",
                "0,LINE,8,A,10,0,20,10,11,10,21,10",
                "0,LINE,8,A,10,0,20,10,11,0.0004,21,0",
                "0,LINE,8,A,10,10,20,0,11,10,21,10")));
        assertThat(outlines.all()).hasSize(2);
        assertThat(outlines.all().get(0).isClosed()).isTrue();
        assertThat(((Polyline) outlines.all().get(0).shape()).size()).isEqualTo(4);
        assertThat(outlines.all().get(1).isClosed()).isFalse();
        assertThat(outlines.all().get(1).layer()).isEqualTo("B");
    }

    @Test
    void linesThatDoNotMeetStayOpen() throws IOException {
        DxfOutlines outlines =
                read(bytes(entities("0,LINE,8,A,10,0,20,0,11,10,21,0", "0,LINE,8,A,10,10,20,0.01,11,10,21,10")));
        assertThat(outlines.all()).hasSize(2).noneMatch(DxfOutlines.Outline::isClosed);
    }

    @Test
    void twoHalfArcsAreAnOutline() throws IOException {
        Polyline disc = (Polyline) read(bytes(entities("0,LWPOLYLINE,8,A,90,2,70,1,10,-5,20,0,42,1,10,5,20,0,42,1")))
                .all()
                .get(0)
                .shape();
        assertThat(disc.size()).isEqualTo(4);
        for (int i = 0; i < 4; i++) {
            assertThat(StrictMath.hypot(disc.x(i), disc.y(i))).isCloseTo(5, within(1e-12));
            assertThat(disc.arc(i).orElseThrow().radiusMm()).isCloseTo(5, within(1e-12));
        }
    }

    @Test
    void firstCornerMayBeRepeatedAtTheEnd() throws IOException {
        Polyline path =
                (Polyline) read(bytes(entities("0,LWPOLYLINE,8,A,70,1,10,0,20,0,10,5,20,0,10,5,20,5,10,0,20,0")))
                        .all()
                        .get(0)
                        .shape();
        assertThat(path.size()).isEqualTo(3);
    }

    @Test
    void layersNamedAfterAnOperationAreWorkedSo() throws IOException {
        DxfOutlines outlines = read(bytes(
                entities("0,CIRCLE,8,DRILL,10,1,20,2,40,3", "0,CIRCLE,8,rim,10,1,20,2,40,30", "0,TEXT,8,a,1,hello")));
        assertThat(outlines.all())
                .extracting(outline -> outline.shape().operation())
                .containsExactly(Operation.DRILL, Operation.CUT_OUTER);
    }

    @Test
    void paperSpaceIsPassedOver() throws IOException {
        assertThat(read(bytes(entities("0,CIRCLE,67,1,8,A,10,1,20,2,40,3"))).all())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,SPLINE,8,A | line 6: SPLINE: this cannot be read",
                "0,INSERT,2,B | line 6: INSERT: this cannot be read",
                "0,CIRCLE,8,A,10,1,20,2,40,0 | line 6: CIRCLE: its radius is not above 0",
                "0,CIRCLE,8,A,10,1,20,2 | line 6: CIRCLE: code 40 is missing",
                "0,CIRCLE,8,A,10,one,20,2,40,1 | line 10: the value of code 10 is no number",
                "0,CIRCLE,8,A,10,NaN,20,2,40,1 | line 10: the value of code 10 is no number",
                "0,CIRCLE,8,A,10,1e300,20,2,40,1 | line 10: the value of code 10 is no number, or too large",
                "0,CIRCLE,8,A,10,1,20,2,40,1,230,-1.0 | line 6: CIRCLE: it does not lie in the plane",
                "0,LWPOLYLINE,90,3,10,1,20,2,10,2,20,2 | line 6: LWPOLYLINE: it says that it has 3 corners, and has 2",
                "0,LWPOLYLINE,70,1,10,1,20,2,10,2,20,2 | line 6: LWPOLYLINE: it has 2 corners, and needs 3",
                "0,LWPOLYLINE,20,1 | line 8: code 20 comes before the first corner",
                "0,POLYLINE,70,8 | line 6: POLYLINE: only plain polylines",
                "0,POLYLINE,70,1 | line 10: the last POLYLINE has no SEQEND",
                "0,POLYLINE,70,1,0,CIRCLE,8,A | line 10: CIRCLE: the POLYLINE before has no SEQEND",
                "x,POLYLINE | line 5: a group code should stand here",
            })
    void whatIsWrongIsSaidWithItsLine(String entity, String reason) {
        assertThatExceptionOfType(DxfFormatException.class)
                .isThrownBy(() -> read(bytes(entities(entity))))
                .withMessageContaining(reason);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "hello",
                "0,SECTION",
                "0,SECTION,2,ENTITIES,0,EOF",
                "0,EOF",
                "0,SECTION,2,HEADER,9,$INSUNITS,70,3,0,ENDSEC,0,EOF",
                "0,SECTION,2,HEADER,9,$INSUNITS,70,mm,0,ENDSEC,0,EOF",
                "AutoCAD Binary DXF,0"
            })
    void whatIsNoFileOfOutlinesIsRefused(String text) {
        assertThatExceptionOfType(DxfFormatException.class)
                .isThrownBy(() -> read(bytes(text)))
                .withMessageStartingWith("line ");
    }

    /** Bytes changed, left out and put in at random; a file is read or refused, and nothing else happens. */
    @ParameterizedTest
    @EnumSource(Dialect.class)
    void noDamageIsWorseThanARefusal(Dialect dialect) {
        Cases.each(300, (random, size) -> {
            try {
                byte[] bytes = Samples.bytes(Samples.rounded(), dialect);
                for (int change = 0; change < 1 + size % 7; change++) {
                    bytes = damaged(bytes, random);
                }
                assertThat(read(bytes).all()).isNotNull();
            } catch (DxfFormatException refused) {
                assertThat(refused.line()).isPositive();
            } catch (IOException other) {
                throw new AssertionError(other);
            }
        });
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        int place = random.nextInt(bytes.length);
        switch (random.nextInt(4)) {
            case 0 -> bytes[place] = (byte) random.nextInt(256);
            case 1 -> {
                return Arrays.copyOf(bytes, place + 1);
            }
            case 2 -> {
                byte[] less = new byte[bytes.length - 1];
                System.arraycopy(bytes, 0, less, 0, place);
                System.arraycopy(bytes, place + 1, less, place, less.length - place);
                return less.length == 0 ? bytes : less;
            }
            default -> {
                int from = random.nextInt(bytes.length);
                int length = Math.min(40, bytes.length - Math.max(from, place));
                System.arraycopy(bytes.clone(), from, bytes, place, length);
            }
        }
        return bytes;
    }

    /** A star of lines would be joined in any of a thousand million ways. */
    @Test
    void tangledLinesEndInBoundedTime() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < 20_000; i++) {
            lines.append("0,LINE,8,A,10,0,20,0,11,")
                    .append(i + 1)
                    .append(",21,")
                    .append(1 + i % 7)
                    .append(',');
        }
        assertThat(read(bytes("0,SECTION,2,ENTITIES," + lines + "0,ENDSEC,0,EOF,"))
                        .all())
                .hasSize(10_000);
    }

    private static String entities(String... entities) {
        return "0,SECTION,2,ENTITIES," + String.join(",", entities) + ",0,ENDSEC,0,EOF,";
    }

    private static byte[] bytes(String tags) {
        return tags.replace(',', '\n').getBytes(StandardCharsets.US_ASCII);
    }

    private static DxfOutlines read(byte[] bytes) throws IOException {
        return DxfOutlines.read(new ByteArrayInputStream(bytes));
    }
}
