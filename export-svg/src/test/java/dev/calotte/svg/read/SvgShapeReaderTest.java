package dev.calotte.svg.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.export.Reading;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of others, and those that are refused. */
class SvgShapeReaderTest {

    private static final String ROOT = "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm'"
            + " viewBox='0 0 200 100' xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape'>";

    private static Reading reading(String text) throws IOException {
        return new SvgShapeReader().reading(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Shape> read(String inside) throws IOException {
        return reading(ROOT + inside + "</svg>").shapes();
    }

    private static double[] corners(Shape shape) {
        Polyline path = (Polyline) shape;
        double[] xy = new double[2 * path.size()];
        for (int i = 0; i < path.size(); i++) {
            xy[2 * i] = path.x(i);
            xy[2 * i + 1] = path.y(i);
        }
        return xy;
    }

    /** By hand, y turned up from the lower border at 100. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    <path d='M10 10 L20 10 H30 V40 Z'/>             | true  | 10 90 20 90 30 90 30 60
                    <path d='m10,10l10,0h10v30z'/>                  | true  | 10 90 20 90 30 90 30 60
                    <path d='M10 10 20 10 30 40'/>                  | false | 10 90 20 90 30 60
                    <path d='m10 10 10 0 10 30 -20-30'/>            | true  | 10 90 20 90 30 60
                    <path d='M1e1+10L.2e2,1E1l1e+1-5'/>             | false | 10 90 20 90 30 95
                    <line x1='1' y1='2' x2='3' y2='4.5'/>           | false | 1 98 3 95.5
                    <line x2='3'/>                                  | false | 0 100 3 100
                    <polyline points='0 0,10 0 10,20'/>             | false | 0 100 10 100 10 80
                    <polyline points='0 0,10 0 10,20 0 0'/>         | true  | 0 100 10 100 10 80
                    <polygon points='0,0 10,0 10,20'/>              | true  | 0 100 10 100 10 80
                    <rect x='5' y='10' width='20' height='30'/>     | true  | 5 60 25 60 25 90 5 90
                    """)
    void linesAreRead(String element, boolean closed, String corners) throws IOException {
        Shape shape = read(element).get(0);
        String[] numbers = corners.split(" ", -1);
        double[] expected = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            expected[i] = Double.parseDouble(numbers[i]);
        }
        assertThat(((Polyline) shape).isClosed()).isEqualTo(closed);
        assertThat(corners(shape)).containsExactly(expected, within(1e-12));
    }

    @Test
    void aPathMayHoldSeveralLines() throws IOException {
        List<Shape> shapes = read("<path d='M0 0H10V10ZM20 20h5v5zl1 1'/>");
        assertThat(shapes).hasSize(3);
        assertThat(corners(shapes.get(1))).containsExactly(20, 80, 25, 80, 25, 75);
        assertThat(corners(shapes.get(2))).containsExactly(20, 80, 21, 79);
    }

    /** A quarter from (10, 0) on the page to (0, 10), sweep 1 clockwise on the page: about its corner, radius 10. */
    @Test
    void arcsKeepTheirSense() throws IOException {
        Polyline path = (Polyline) read("<path d='M110 50A10 10 0 01100 60A10,10,0,0,1,90,50L100 40Z'/>")
                .get(0);
        // two quarters of one circle are half of it
        assertThat(path.size()).isEqualTo(3);
        assertThat(path.bulge(0)).isCloseTo(-1, within(1e-9));
        Polyline large =
                (Polyline) read("<path d='M110 50A10 10 0 1 0 100 60'/>").get(0);
        assertThat(large.bulge(0)).isCloseTo(Math.tan(3 * Math.PI / 8), within(1e-9));
        assertThat(large.arc(0).orElseThrow().xMm()).isCloseTo(100, within(1e-9));
        assertThat(large.arc(0).orElseThrow().yMm()).isCloseTo(50, within(1e-9));
    }

    /** SVG 1.1, section F.6.6: a radius of nothing is a straight line, one that is too small grows. */
    @Test
    void radiiThatCannotBeAreMended() throws IOException {
        assertThat(((Polyline) read("<path d='M0 0A0 0 0 0 0 10 0'/>").get(0)).bulge(0))
                .isZero();
        assertThat(((Polyline) read("<path d='M0 0A1 1 0 0 0 10 0'/>").get(0)).bulge(0))
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void circlesAreCircles() throws IOException {
        assertThat(read("<circle cx='20' cy='30' r='4'/><path d='M24 30A4 4 0 0 0 16 30A4 4 0 0 0 24 30Z'/>"))
                .containsExactly(
                        new Circle(Operation.CUT_OUTER, 20, 70, 4), new Circle(Operation.CUT_OUTER, 20, 70, 4));
    }

    @Test
    void unitsAreThoseOfThePage() throws IOException {
        Reading reading = reading("<svg xmlns='http://www.w3.org/2000/svg' width='200.0mm' height=' 100mm '"
                + " viewBox='-5,10,400,200'><circle cx='5' cy='20' r='8'/></svg>");
        assertThat(reading.shapes()).containsExactly(new Circle(Operation.CUT_OUTER, 5, 95, 4));
    }

    @Test
    void operationsAndMarksComeFromTheGroupsRoundALine() throws IOException {
        Reading reading = reading(ROOT + "<title>A board</title><desc>x</desc><defs><pattern id='p'/></defs>"
                + "<g inkscape:label='SCORE' style='display:inline'><g><title>P1</title><line x2='3'/></g></g>"
                + "<g id='DRILL'><circle r='2'><title>a hole</title></circle></g>"
                + "<inkscape:grid><line x2='9'/></inkscape:grid><g id='other'><line x2='4'/></g></svg>");
        assertThat(reading.title()).contains("A board");
        assertThat(reading.lines())
                .extracting(line -> line.shape().operation())
                .containsExactly(Operation.SCORE, Operation.DRILL, Operation.CUT_OUTER);
        assertThat(reading.lines())
                .extracting(Reading.Line::mark)
                .containsExactly(Optional.of("P1"), Optional.empty(), Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    <path d='M0 0C1 1 2 2 3 3'/>                  | line 1: the command C of a path cannot be read
                    <path d='M0 0A1 2 0 0 0 3 3'/>                | an arc of an ellipse cannot be read
                    <path d='L0 0'/>                              | a path does not begin with M
                    <path d='M0 0L5'/>                            | a number should stand at place 7 of a list of numbers, not the end
                    <path d='M0 0A5 5 0 2 0 3 3'/>                | 0 or 1 should stand at place 12
                    <path d='M0 0L5,,5 5'/>                       | a number should stand at place 8
                    <path d='5'/>                                 | a command should stand at place 1
                    <path d='M0 0L1 1Z5 5'/>                      | a command should stand at place 10
                    <path d='M0 0L1e999999999 1'/>                | a number is too long or too large
                    <path d='M0 0L1 1Z'/>                         | it has 2 corners, and needs 3
                    <path d='M0 0A5 5 0 1 0 0 0L1 1'/>            | an arc ends where it begins
                    <circle cx='1' cy='1'/>                       | the radius of a circle is not above 0
                    <rect width='5'/>                             | a side of a rect is not above 0
                    <rect width='5' height='5' rx='1'/>           | round corners
                    <ellipse rx='5' ry='4'/>                      | the element ellipse cannot be read as a line
                    <text>P1</text>                               | the element text cannot be read
                    <use href='#a'/>                              | the element use cannot be read
                    <style>path { display: none }</style>         | the element style cannot be read
                    <svg width='1mm'/>                            | the element svg cannot be read
                    <line x2='3'><animate/></line>                | the element animate inside a line is not followed
                    <g transform='scale(2)'><line x2='3'/></g>    | the attribute transform is not followed
                    <line x2='3' clip-path='url(#a)'/>            | the attribute clip-path is not followed
                    <g display='none'><line x2='3'/></g>          | hides or moves lines
                    <line x2='3' style='a:b; visibility : hidden'/> | hides or moves lines
                    <title><b/></title>                           | a title holds text alone
                    <line x2='&b;'/>                              | this is no XML that could be read
                    <g>&b;</g>                                    | line 1:
                    """)
    void whatIsNotUnderstoodIsRefused(String inside, String why) {
        assertThatThrownBy(() -> read(inside))
                .isInstanceOf(SvgFormatException.class)
                .hasMessageContaining(why);
    }

    @Test
    void otherRootsAreRefused() {
        assertThatThrownBy(() -> reading("<svg/>"))
                .isInstanceOf(SvgFormatException.class)
                .hasMessageStartingWith("line 1: the file does not begin with an element svg");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "width='200' height='100mm' viewBox='0 0 200 100'",
                "width='200mm' height='100px' viewBox='0 0 200 100'",
                "width='0mm' height='100mm' viewBox='0 0 200 100'",
                "width='1e308mm' height='100mm' viewBox='0 0 200 100'",
                "width='200mm' height='100mm'",
                "width='200mm' height='100mm' viewBox='0 0 0 100'",
                "width='200mm' height='100mm' viewBox='0 0 200 101'",
                "width='200mm' height='100mm' viewBox='0 0 200'"
            })
    void pagesWithoutAUnitAreRefused(String attributes) {
        assertThatThrownBy(() -> reading("<svg xmlns='http://www.w3.org/2000/svg' " + attributes + "/>"))
                .isInstanceOf(SvgFormatException.class);
    }

    /** What a document type defines is not followed, so that a kilobyte cannot become gigabytes, nor a file be fetched. */
    @Test
    void documentTypesAreNotFollowed() throws IOException {
        String type = "<!DOCTYPE svg [<!ENTITY a 'M0 0'><!ENTITY b SYSTEM 'file:///etc/hostname'>]>";
        assertThat(reading(type + ROOT + "<line x2='3'/></svg>").shapes()).hasSize(1);
        assertThatThrownBy(() -> reading(type + ROOT + "<title>&a;</title></svg>"))
                .isInstanceOf(SvgFormatException.class);
        assertThatThrownBy(() -> reading(type + ROOT + "<title>&b;</title></svg>"))
                .isInstanceOf(SvgFormatException.class);
        assertThatThrownBy(() -> reading(type + ROOT + "<path d='&a;L5 5'/></svg>"))
                .isInstanceOf(SvgFormatException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0\nSECTION", "<svg", "<a></b>", "<?xml version='1.0' encoding='nonsense'?><svg/>"})
    void whatIsNoXmlIsRefused(String text) {
        assertThatThrownBy(() -> reading(text)).isInstanceOf(IOException.class).hasMessageNotContaining("null");
    }

    @Test
    void depthIsBounded() throws IOException {
        assertThat(read("<g>".repeat(62) + "<line x2='3'/>" + "</g>".repeat(62)))
                .hasSize(1);
        assertThatThrownBy(() -> read("<g>".repeat(100_000))).hasMessageContaining("more than 64 elements inside");
    }

    @Test
    void cornersAreBounded() {
        assertThatThrownBy(() -> read("<path d='M0 0" + "h1v1".repeat(100_001) + "'/>"))
                .hasMessageContaining("more than 200000 corners");
    }

    /** A stream without end. */
    @Test
    void lengthIsBounded() {
        InputStream begin = new ByteArrayInputStream((ROOT + "<desc>").getBytes(StandardCharsets.US_ASCII));
        InputStream spaces = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }

            @Override
            public int read(byte[] buffer, int offset, int length) {
                Arrays.fill(buffer, offset, offset + length, (byte) ' ');
                return length;
            }
        };
        InputStream endless = new SequenceInputStream(begin, spaces);
        assertThatThrownBy(() -> new SvgShapeReader().reading(endless)).hasMessage("the file is larger than 32 MiB");
    }

    /** Files of others may be in another encoding, which their first line says, or their first bytes. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "ISO-8859-1", "UTF-16", "UTF-16LE", "US-ASCII"})
    void encodingsThatAreSaidAreRead(String encoding) throws IOException {
        String text = "<?xml version=\"1.0\" encoding='" + encoding + "'?>\n<svg xmlns=\"http://www.w3.org/2000/svg\""
                + " width=\"10mm\" height=\"10mm\" viewBox=\"0 0 10 10\"><title>M"
                + (encoding.equals("US-ASCII") ? "u" : "\u00fc") + "</title></svg>";
        Reading reading = new SvgShapeReader().reading(new ByteArrayInputStream(text.getBytes(encoding)));
        assertThat(reading.shapes()).isEmpty();
    }

    @Test
    void aMarkOfTheOrderOfBytesIsPassedOver() throws IOException {
        assertThat(reading("\ufeff<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\""
                                + " viewBox=\"0 0 10 10\"/>")
                        .shapes())
                .isEmpty();
    }

    /** The parser of the JDK would print a line of its own beside what is thrown. */
    @Test
    void whatIsNotInUtf8IsRefusedInSilence() {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            byte[] broken = "<svg xmlns=\"http://www.w3.org/2000/svg\">\n<title>\u00fc</title></svg>"
                    .getBytes(StandardCharsets.ISO_8859_1);
            assertThatThrownBy(() -> new SvgShapeReader().reading(new ByteArrayInputStream(broken)))
                    .isInstanceOf(SvgFormatException.class)
                    .hasMessageContaining("not in UTF-8");
        } finally {
            System.setErr(before);
        }
        assertThat(said.toString(StandardCharsets.UTF_8)).isEmpty();
    }
}
