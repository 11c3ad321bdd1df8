package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.document.Mesh;
import dev.calotte.export.Facets;
import dev.calotte.export.Finish;
import dev.calotte.export.SolidReader;
import dev.calotte.testing.Services;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is read back, and what cannot be read is refused. */
class StlReadBackTest {

    private final Locale locale = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
    }

    private static Facets read(byte[] bytes) throws IOException {
        return new StlSolidReader().read(new ByteArrayInputStream(bytes));
    }

    private static Facets read(String text) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void isFoundByTheEndingOfItsFilesAndDeclaredTwice() throws IOException {
        assertThat(SolidReader.installed("stl").orElseThrow()).isInstanceOf(StlSolidReader.class);
        Services services = new Services(StlSolidReader.class);
        assertThat(services.inServiceFile(SolidReader.class))
                .isEqualTo(services.inDescriptor(SolidReader.class))
                .containsExactly(StlSolidReader.class.getName(), PlateSolidReader.class.getName());
    }

    /** The surface that the writer makes of a mesh, number by number, from both dialects. */
    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "en-US"})
    void facetsComeBack(String tag) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(tag));
        for (Mesh mesh : List.of(Samples.tetrahedron(1.0 / 3), Samples.hippedRoof(12.3), Samples.hippedRoof(1e-9))) {
            Surface surface = Surface.of(mesh);
            for (byte[] bytes : bothDialects(mesh)) {
                Facets read = read(bytes);
                assertThat(read.size()).isEqualTo(surface.size());
                assertThat(read.title()).contains("jigs/H1");
                for (int i = 0; i < read.size(); i++) {
                    assertThat(place(read, i, 0)).isEqualTo(surface.facet(i).a());
                    assertThat(place(read, i, 1)).isEqualTo(surface.facet(i).b());
                    assertThat(place(read, i, 2)).isEqualTo(surface.facet(i).c());
                }
            }
        }
    }

    private static Place place(Facets facets, int facet, int corner) {
        return new Place(facets.at(facet, corner, 0), facets.at(facet, corner, 1), facets.at(facet, corner, 2));
    }

    private static List<byte[]> bothDialects(Mesh mesh) throws IOException {
        StlExporter exporter = new StlExporter();
        List<byte[]> all = new ArrayList<>();
        for (var file : exporter.renditions(mesh, Finish.PLAIN.withDialects("stl", List.of("binary", "ascii")))) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            file.content().writeTo(out);
            all.add(out.toByteArray());
        }
        assertThat(all).hasSize(2);
        return all;
    }

    private static byte[] binary(String header, int announced, int length) {
        ByteBuffer file = ByteBuffer.allocate(84 + length).order(ByteOrder.LITTLE_ENDIAN);
        file.put(Arrays.copyOf(header.getBytes(StandardCharsets.US_ASCII), 80)).putInt(announced);
        return file.array();
    }

    @Test
    void binaryFilesThatDoNotHoldWhatTheyAnnounceAreRefused() {
        assertThatThrownBy(() -> read(binary("", -1, 50))).hasMessageContaining("announces 4294967295 facets");
        assertThatThrownBy(() -> read(binary("", 1_999_999, 50))).hasMessageContaining("ends in facet 2");
        assertThatThrownBy(() -> read(binary("", 2, 99))).hasMessageContaining("ends in facet 2");
        assertThatThrownBy(() -> read(binary("", 1, 51))).hasMessageContaining("goes on after them");
        assertThatThrownBy(() -> read(new byte[83])).hasMessageContaining("ends after 83 bytes");
        byte[] noNumber = binary("", 1, 50);
        ByteBuffer.wrap(noNumber).order(ByteOrder.LITTLE_ENDIAN).putFloat(84 + 12 + 16, Float.NaN);
        assertThatThrownBy(() -> read(noNumber)).hasMessage("facet 1: a coordinate is no number");
    }

    /** There are programs that begin binary files with the word of the other variant. */
    @Test
    void aBinaryFileThatBeginsWithSolidIsRead() throws IOException {
        Facets read = read(binary("solid part", 2, 100));
        assertThat(read.size()).isEqualTo(2);
        assertThat(read.title()).isEqualTo("solid part");
    }

    private static final String FACET = """
            facet normal 0 0 nan
            outer loop
            vertex 0 0 0
            vertex 1.5e1 0 0
            vertex 0 2 0
            endloop
            endfacet
            """;

    @Test
    void textIsReadInWhateverLines() throws IOException {
        Facets read = read("solid a  lid \r\n" + FACET.replace('\n', ' ') + FACET + "endsolid a lid");
        assertThat(read.title()).isEqualTo("a  lid");
        assertThat(read.size()).isEqualTo(2);
        assertThat(read.at(1, 1, 0)).isEqualTo(15);
    }

    @Test
    void textThatIsNoSolidIsRefusedWithItsLine() {
        assertThatThrownBy(() -> read("solid\n" + FACET))
                .hasMessage("line 9: \"facet\" or \"endsolid\" should stand here");
        assertThatThrownBy(() -> read("solid\n" + FACET.replace("1.5e1", "1e999") + "endsolid"))
                .hasMessage("line 5: a number should stand here, which single precision can hold");
        assertThatThrownBy(() -> read("solid\n" + FACET.replace("1.5e1", "1.5.1") + "endsolid"))
                .hasMessage("line 5: a number should stand here");
        assertThatThrownBy(() -> read("solid\n" + FACET.replace("outer", "inner") + "endsolid"))
                .hasMessage("line 3: \"outer\" should stand here");
        assertThatThrownBy(() -> read("solid\n" + FACET + "endsolid\nsolid\nendsolid"))
                .hasMessageContaining("goes on after \"endsolid\"");
        assertThatThrownBy(() -> read("solid " + "a".repeat(300) + "\nendsolid"))
                .hasMessageContaining("longer than 256");
        assertThatThrownBy(() -> read("")).hasMessageContaining("ends after 0 bytes");
    }
}
