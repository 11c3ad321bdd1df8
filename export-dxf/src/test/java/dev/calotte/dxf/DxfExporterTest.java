package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.document.Document;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DxfExporterTest {

    private final DxfExporter exporter = new DxfExporter();

    @Test
    void usualFileIsAPolylineFileInTheFolderOfTheFormat() throws IOException {
        List<Rendition> files = exporter.renditions(Samples.letterF(), Finish.PLAIN);
        assertThat(files).extracting(Rendition::path).containsExactly("dxf/panels/F.dxf");
        assertThat(bytes(files.get(0))).isEqualTo(Samples.bytes(Samples.letterF(), Dialect.POLYLINE));
    }

    @Test
    void oneDialectThatIsAskedForHasNoFolderOfItsOwn() throws IOException {
        List<Rendition> files = exporter.renditions(Samples.letterF(), asking("lines"));
        assertThat(files).extracting(Rendition::path).containsExactly("dxf/panels/F.dxf");
        assertThat(bytes(files.get(0))).isEqualTo(Samples.bytes(Samples.letterF(), Dialect.LINES));
    }

    @Test
    void severalDialectsHaveAFolderEach() throws IOException {
        List<Rendition> files = exporter.renditions(Samples.letterF(), asking("lwpolyline", "polyline"));
        assertThat(files)
                .extracting(Rendition::path)
                .containsExactly("dxf/lwpolyline/panels/F.dxf", "dxf/polyline/panels/F.dxf");
        assertThat(bytes(files.get(0))).isEqualTo(Samples.bytes(Samples.letterF(), Dialect.LWPOLYLINE));
    }

    @Test
    void dialectThatDoesNotExistIsRefused() {
        assertThatThrownBy(() -> exporter.renditions(Samples.letterF(), asking("binary")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no dialect binary");
    }

    /** Turkish has letters of its own for i, German a comma in numbers, Arabic digits of its own. */
    @ParameterizedTest
    @CsvSource({"tr-TR, Asia/Tokyo", "de-DE, America/St_Johns", "ar-EG-u-nu-arab, Pacific/Kiritimati"})
    void bytesOfEveryDialectDoNotDependOnLocaleOrTimeZone(String locale, String zone) throws IOException {
        Locale locale0 = Locale.getDefault();
        TimeZone zone0 = TimeZone.getDefault();
        List<byte[]> expected = all();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertThat(all()).hasSize(21).containsExactlyElementsOf(expected);
        } finally {
            Locale.setDefault(locale0);
            TimeZone.setDefault(zone0);
        }
    }

    private List<byte[]> all() throws IOException {
        List<byte[]> files = new ArrayList<>();
        for (Document document : DxfGoldenTest.documents().values()) {
            for (Rendition file : exporter.renditions(document, asking("polyline", "lwpolyline", "lines"))) {
                files.add(bytes(file));
            }
        }
        return files;
    }

    private static Finish asking(String... dialects) {
        return Finish.PLAIN.withDialects("dxf", List.of(dialects));
    }

    private static byte[] bytes(Rendition file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        file.content().writeTo(out);
        return out.toByteArray();
    }
}
