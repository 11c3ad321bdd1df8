package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plants a fault in what is printed, or in one of two formats of a drawing, of a dome that is not its own mirror image. */
class CheckSolidsTest {

    private static final String BRIEF = """
            dome: { breakdown: [2, 1], keep: { above: 900 mm } }
            size: { radius: 1.5 m }
            frame:
              hub-gap: 60 mm
              hub-plate: { diameter: 160 mm, hole: 8 mm, hole-circle: 130 mm }
            jigs: { strut: round 12 mm, bed: [300 mm, 300 mm, 250 mm], sockets: { strut: round 6 mm, scale: 1:10 } }
            model: { scale: 1:20, sheet: [600 mm, 300 mm], thickness: 3 mm, kind: [net] }
            files: [tables, dxf, svg, stl]
            """;

    private static final String PLATE = "stl/plate.3mf";
    private static final String MODEL = "3D/3dmodel.model";

    @TempDir
    private static Path made;

    @TempDir
    private Path folder;

    @BeforeAll
    static void make() throws IOException {
        Planted.make(made, BRIEF);
    }

    @BeforeEach
    void copy() throws IOException {
        new Planted(folder).copy(made);
    }

    private void change(String name, UnaryOperator<String> change) throws IOException {
        new Planted(folder).change(name, change);
    }

    private String found() throws IOException {
        return new Planted(folder).found();
    }

    /** Closed and turned outwards as before: x is counted from the other side, and facets run the other way. */
    private void mirror(String name) throws IOException {
        ByteBuffer stl =
                ByteBuffer.wrap(Files.readAllBytes(folder.resolve(name))).order(ByteOrder.LITTLE_ENDIAN);
        float most = 0;
        for (int i = 0; i < 3 * stl.getInt(80); i++) {
            most = Math.max(most, stl.getFloat(x(i)));
        }
        for (int i = 0; i < 3 * stl.getInt(80); i++) {
            stl.putFloat(x(i), most - stl.getFloat(x(i)));
        }
        byte[] corner = new byte[12];
        byte[] other = new byte[12];
        for (int i = 0; i < stl.getInt(80); i++) {
            stl.get(x(3 * i), corner).get(x(3 * i + 1), other);
            stl.put(x(3 * i), other).put(x(3 * i + 1), corner);
        }
        Files.write(folder.resolve(name), stl.array());
    }

    private static int x(int corner) {
        return 84 + 50 * (corner / 3) + 12 + 12 * (corner % 3);
    }

    private void changePlate(UnaryOperator<String> change) throws IOException {
        ByteArrayOutputStream changed = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(changed);
                ZipInputStream in =
                        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(folder.resolve(PLATE))))) {
            for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                String after = part.getName().equals(MODEL) ? change.apply(text) : text;
                assertThat(after.equals(text)).isNotEqualTo(part.getName().equals(MODEL));
                out.putNextEntry(new ZipEntry(part.getName()));
                out.write(after.getBytes(StandardCharsets.UTF_8));
            }
        }
        Files.write(folder.resolve(PLATE), changed.toByteArray());
    }

    private static String times(String xml, String axis, double scale) {
        return Pattern.compile("(?<= " + axis + "=\")[0-9.]+")
                .matcher(xml)
                .replaceAll(x -> String.format(Locale.ROOT, "%.6f", scale * Double.parseDouble(x.group())));
    }

    /** Without the plate, so that nothing but the record can tell. */
    @ParameterizedTest
    @ValueSource(strings = {"stl/jigs/H2R.stl", "stl/jigs/socket-H2R.stl", "stl/jigs/socket-H2R-2.stl"})
    void aMirroredJigIsFoundByTheAnglesOfItsHub(String name) throws IOException {
        Files.delete(folder.resolve(PLATE));
        mirror(name);
        assertThat(found())
                .contains(name + ", H2R: its seats for ")
                .contains("clockwise round the hub, as in a mirror");
    }

    @Test
    void aMirroredModelIsFound() throws IOException {
        mirror("stl/model.stl");
        assertThat(found()).contains("stl/model.stl: its panels stand as in a mirror of the dome");
    }

    @Test
    void aMirroredGaugeIsFoundByThePlate() throws IOException {
        mirror("stl/jigs/fit.stl");
        assertThat(found()).contains(PLATE + ", fit: of its ").contains(" are not in stl/jigs/fit.stl");
    }

    @Test
    void anotherUnitOfThePlateIsFound() throws IOException {
        changePlate(xml -> xml.replace("unit=\"millimeter\"", "unit=\"inch\""));
        assertThat(found())
                .containsPattern(PLATE + ", H1L: it is 25\\.[34][0-9]* times as large as in stl/jigs/H1L.stl");
    }

    @Test
    void aPlateThatIsWiderIsFound() throws IOException {
        changePlate(xml -> times(xml, "x", 1.01));
        assertThat(found()).contains(PLATE + ", H1L: of its ").contains(PLATE + ", fit: of its ");
    }

    @Test
    void aMovedVertexOfThePlateIsFound() throws IOException {
        changePlate(xml -> xml.replaceFirst("<vertex x=\"[0-9.]+\"", "<vertex x=\"3.01\""));
        assertThat(found()).contains(PLATE + ", H1L: of its ").doesNotContain("fit");
    }

    @Test
    void aFlippedTriangleOfThePlateIsFound() throws IOException {
        changePlate(xml -> xml.replaceFirst("v1=\"(\\d+)\" v2=\"(\\d+)\"", "v1=\"$2\" v2=\"$1\""));
        assertThat(found()).contains(PLATE + ", H1L facet ").contains("turned inside out");
    }

    @Test
    void bodiesThatAreMissingForeignOrTooFewAreFound() throws IOException {
        changePlate(
                xml -> xml.replaceFirst("name=\"H1L\"", "name=\"H9\"").replaceFirst("<item[^>]*/>\n(?=</build>)", ""));
        assertThat(found())
                .contains(PLATE + ", H9: no other file holds a body of this name")
                .contains(PLATE + ", H1L: the body of stl/jigs/H1L.stl is not in it.")
                .containsPattern(PLATE + ", socket-[^:]+: it is laid on the plate \\d+ times, \\d+ are needed.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<model  | <!DOCTYPE model><model  | document type",
                "</build> | <build> | no XML",
                "transform=\"1 0  | transform=\"-1 0  | turned, mirrored or scaled",
                "v1=\"0\" | v1=\"99999999\" | is no number below"
            })
    void aPlateThatCannotBeReadIsFound(String text, String other, String why) throws IOException {
        changePlate(xml -> xml.replaceFirst(Pattern.quote(text), other));
        assertThat(found()).contains(PLATE + ": line ").contains(why);
    }

    /** A letter of which a stroke is gone, a tick of a rule, a fold: the other format has it still. */
    @ParameterizedTest
    @CsvSource({"hubs/H1L, ENGRAVE", "hubs/H1L, SCORE", "panels/P1, REF", "panels/P1, ENGRAVE", "model/net-01, SCORE"})
    void aLineThatOnlyOneFormatHasIsFound(String drawing, String layer) throws IOException {
        Pattern line = Pattern.compile("(?s)<path id=\"[^\"]+\\." + layer + "\\.2\"[^>]*/>");
        change("svg/" + drawing + ".svg", svg -> line.matcher(svg).replaceFirst(""));
        assertThat(found()).contains("svg/" + drawing + ".svg, ");
    }

    @Test
    void aDrawingThatLiesElsewhereAltogetherIsFoundInEitherFormat() throws IOException {
        change("dxf/panels/P1.dxf", dxf -> {
            int entities = dxf.indexOf("ENTITIES");
            return dxf.substring(0, entities)
                    + Pattern.compile("(?m)^( *1[01]\\r\\n)(-?[0-9.]+)")
                            .matcher(dxf.substring(entities))
                            .replaceAll(x -> x.group(1)
                                    + String.format(Locale.ROOT, "%.6f", 7 + Double.parseDouble(x.group(2))));
        });
        change("svg/hubs/H1L.svg", svg -> svg.replaceFirst("viewBox=\"0 0 ", "viewBox=\"7 0 "));
        assertThat(found())
                .contains("dxf/panels/P1.dxf: its reference of 100 mm begins at x 17, y 10, not at x 10, y 10")
                .contains("svg/hubs/H1L.svg: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"templates/H1L", "hubs/H1L", "panels/P1", "model/net-01"})
    void aPageThatIsPrintedLargerIsFound(String drawing) throws IOException {
        change(
                "svg/" + drawing + ".svg",
                svg -> Pattern.compile("(?<=(?:width|height)=\")[0-9.]+(?=mm)")
                        .matcher(svg)
                        .replaceAll(
                                side -> String.format(Locale.ROOT, "%.4f", 1.01 * Double.parseDouble(side.group()))));
        assertThat(found())
                .contains("svg/" + drawing + ".svg: its page is ")
                .contains("not printed or cut at full size");
    }
}
