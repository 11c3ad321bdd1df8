package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.export.Facets;
import dev.calotte.export.SolidReader;
import dev.calotte.export.SolidReader.Body;
import dev.calotte.testing.Services;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written as 3MF is read back, and what cannot be read is refused. */
class PlateReadBackTest {

    private static final String MODEL = """
            <?xml version="1.0" encoding="UTF-8"?>
            <model unit="millimeter" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02" xmlns:o="urn:o">
            <metadata name="Title">Two &amp; one</metadata><o:object id="9"/>
            <resources><object id="1" name="a"><mesh>
            <vertices><vertex x="0" y="0" z="0"/><vertex x="10" y="0" z="0"/><vertex x="0" y="2e1" z="0"/></vertices>
            <triangles><triangle v1="0" v2="1" v3="2"/><triangle v1="0" v2="1" v3="1"/></triangles>
            </mesh></object></resources>
            <build><item objectid="1"/><item objectid="1" transform="1 0 0 0 1 0 0 0 1 5 6 7"/></build>
            </model>
            """;

    private static byte[] zip(String name, byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("_rels/.rels"));
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
        }
        return out.toByteArray();
    }

    private static byte[] zip(String model) throws IOException {
        return zip("3D/3dmodel.model", model.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Body> read(byte[] bytes) throws IOException {
        return new PlateSolidReader().bodies(new ByteArrayInputStream(bytes));
    }

    @Test
    void isFoundByTheEndingOfItsFilesAndDeclaredTwice() throws IOException {
        assertThat(SolidReader.installed("3mf").orElseThrow()).isInstanceOf(PlateSolidReader.class);
        Services services = new Services(PlateSolidReader.class);
        assertThat(services.inServiceFile(SolidReader.class))
                .isEqualTo(services.inDescriptor(SolidReader.class))
                .contains(PlateSolidReader.class.getName());
    }

    @Test
    void bodiesComeBackWithNamesAndCounts() throws IOException {
        List<Printed> printed =
                List.of(new Printed(Samples.tetrahedron(1.0 / 3), 2), new Printed(Samples.hippedRoof(12.3), 1));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PlateFile("Jigs", printed).write(out);
        List<Body> bodies = read(out.toByteArray());
        assertThat(bodies).extracting(Body::name).containsExactly("H1", "H1");
        assertThat(bodies).extracting(Body::count).containsExactly(2, 1);
        for (int body = 0; body < 2; body++) {
            Facets facets = bodies.get(body).facets();
            assertThat(facets.size()).isEqualTo(printed.get(body).mesh().triangleCount());
            for (int i = 0; i < 9 * facets.size(); i++) {
                int vertex = printed.get(body).mesh().corner(i / 9, i / 3 % 3);
                assertThat((double) facets.at(i / 9, i / 3 % 3, i % 3))
                        .isCloseTo(printed.get(body).mesh().at(vertex, i % 3), within(2e-6));
            }
        }
    }

    @Test
    void allBodiesAreOneSurfaceForWhoWantsThat() throws IOException {
        Facets facets = new PlateSolidReader().read(new ByteArrayInputStream(zip(MODEL)));
        assertThat(facets.title()).isEqualTo("Two & one");
        assertThat(facets.size()).isEqualTo(1);
        assertThat(facets.at(0, 2, 1)).isEqualTo(20);
        assertThat(read(zip(MODEL))).extracting(Body::count).containsExactly(2);
    }

    @ParameterizedTest
    @CsvSource({"inch, 254", "micron, 0.01", "meter, 10000"})
    void otherUnitsBecomeMillimetres(String unit, float x) throws IOException {
        assertThat(read(zip(MODEL.replace("millimeter", unit))).get(0).facets().at(0, 1, 0))
                .isEqualTo(x);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit=\"millimeter\" | unit=\"ell\" | line 2 of its model: its unit is none that the format knows",
                "v3=\"2\" | v3=\"3\" | line 6 of its model: the attribute v3 of triangle is no number below 3",
                "v3=\"2\" | v3=\"-1\" | the attribute v3 of triangle is no number below 3",
                "y=\"2e1\" | y=\"1e39\" | the attribute y of vertex is no number that single precision can hold",
                "y=\"2e1\" | y=\"NaN\" | the attribute y of vertex is no number that single precision can hold",
                "y=\"2e1\" | y=\"1e\" | the attribute y of vertex is no number that single precision can hold",
                "1 0 0 0 1 0 | 0 1 0 -1 0 0 | an item that is turned, mirrored or scaled is not followed",
                "<o:object id=\"9\"/> | <triangle v1=\"0\"/> | triangle stands outside of an object",
                "<vertices> | <component/><vertices> | an object that is put together from others is not followed",
                "<model  | <!DOCTYPE model><model  | it has a document type or an entity of its own",
                "</build> | <o:build> | this is no XML that could be read",
                "<model  | <o:model xmlns:o=\"urn:o\"/><model  | this is no XML that could be read"
            })
    void aModelThatIsNoneIsRefusedWithItsLine(String text, String other, String why) throws IOException {
        String model = MODEL.replace(text, other);
        assertThat(model).isNotEqualTo(MODEL);
        assertThatThrownBy(() -> read(zip(model)))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(why);
    }

    @Test
    void anotherRootOrNoObjectIsRefused() {
        assertThatThrownBy(() -> read(zip("<model/>"))).hasMessageContaining("it does not begin with a model");
        assertThatThrownBy(() -> read(zip(MODEL.replaceAll("(?s)<object.*</object>", ""))))
                .hasMessageContaining("it has no objects");
        assertThatThrownBy(() -> read(zip("3D/other.model", new byte[0])))
                .hasMessage("there is no part 3D/3dmodel.model in it");
        assertThatThrownBy(() -> read(new byte[100])).hasMessage("there is no part 3D/3dmodel.model in it");
    }

    /** A million times the same letter, in the model or beside it. */
    @Test
    void whatUnpacksOutOfAllProportionIsRefused() {
        byte[] bomb = new byte[1 << 22];
        assertThatThrownBy(() -> read(zip("3D/other.model", bomb))).hasMessageContaining("more than 60 times its size");
        String blank = MODEL.replace("<resources>", " ".repeat(1 << 22) + "<resources>");
        assertThatThrownBy(() -> read(zip(blank))).hasMessageContaining("more than 60 times its size");
    }

    @Test
    void aModelBehindTooManyOtherPartsIsNotLookedFor() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int i = 0; i < 1000; i++) {
                zip.putNextEntry(new ZipEntry("part" + i));
            }
            zip.putNextEntry(new ZipEntry("3D/3dmodel.model"));
            zip.write(MODEL.getBytes(StandardCharsets.UTF_8));
        }
        assertThatThrownBy(() -> read(bytes.toByteArray())).hasMessageContaining("there is no part");
    }

    @Test
    void aPackageThatEndsEarlyIsRefused() throws IOException {
        byte[] whole = zip(MODEL);
        List<Integer> read = new ArrayList<>();
        for (int length = 0; length < whole.length - 200; length += 7) {
            byte[] part = Arrays.copyOf(whole, length);
            try {
                read(part);
                read.add(length);
            } catch (IOException refused) {
                assertThat(refused).message().isNotBlank();
            }
        }
        assertThat(read).isEmpty();
    }
}
