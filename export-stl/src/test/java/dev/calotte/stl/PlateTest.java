package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.document.Jig;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.geometry.io.euclidean.threed.stl.TextStlFacetDefinitionReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The 3MF file of a plate, read with Java's reader of zip and with jsoup. */
class PlateTest {

    private static final Jig.Gauge BEND = new Jig.Gauge("bend-11.6", "Bend <gauge>", Jig.Use.BEND, 0.2);
    private static final Jig.Socket SOCKET = new Jig.Socket(
            "socket-H1",
            "Hub & more",
            3,
            StrutSection.round(6),
            List.of(new Jig.Arm("S1", 0, 1.5, 0.5, 0.2), new Jig.Arm("S2", 1, 0.5, 1.5, 0.2)),
            14,
            12);
    private static final PrintPlate PLATE = new PrintPlate("plate", "Jigs for a dome", 0.3, 1.6, List.of(BEND, SOCKET));

    private static List<Rendition> files(String... dialects) {
        return new StlExporter().renditions(PLATE, Finish.PLAIN.withDialects("stl", List.of(dialects)));
    }

    private static byte[] bytes(Rendition file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        file.content().writeTo(out);
        return out.toByteArray();
    }

    private static Map<String, byte[]> parts() throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        List<Rendition> files = files("binary");
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes(files.get(files.size() - 1))))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 12, 0));
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static Document model() throws IOException {
        String xml = new String(parts().get("3D/3dmodel.model"), StandardCharsets.UTF_8);
        return Jsoup.parse(xml, "", Parser.xmlParser());
    }

    @Test
    void aPlateIsAFileForEachPieceAndOneForAll() {
        assertThat(files("binary"))
                .extracting(Rendition::path)
                .containsExactly(
                        "stl/jigs/bend-11.6.stl",
                        "stl/jigs/socket-H1.stl",
                        "stl/jigs/socket-H1-2.stl",
                        "stl/plate.3mf");
    }

    @Test
    void dialectsHaveFoldersWhereThereAreSeveral() {
        assertThat(files("binary", "ascii"))
                .extracting(Rendition::path)
                .startsWith("stl/binary/jigs/bend-11.6.stl", "stl/ascii/jigs/bend-11.6.stl")
                .endsWith("stl/plate.3mf");
        assertThat(files("ascii").get(0).path()).isEqualTo("stl/jigs/bend-11.6.stl");
    }

    @Test
    void aPlateIsNoSingleFile() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StlExporter().write(PLATE, new ByteArrayOutputStream()))
                .withMessage("STL holds meshes; plate is none");
    }

    @Test
    void thePackageHasTheThreePartsOfTheCoreSpecification() throws IOException {
        assertThat(parts().keySet()).containsExactly("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
    }

    @Test
    void everyPieceIsAnObjectAndEveryOneNeededAnItem() throws IOException {
        Document model = model();
        assertThat(model.selectFirst("model").attr("unit")).isEqualTo("millimeter");
        assertThat(model.select("object"))
                .extracting(object -> object.attr("name"))
                .containsExactly("bend-11.6", "socket-H1", "socket-H1-2");
        assertThat(model.select("item"))
                .extracting(item -> item.attr("objectid"))
                .containsExactly("1", "2", "2", "2", "3", "3", "3");
        assertThat(model.select("metadata").get(1).wholeText())
                .isEqualTo("bend-11.6: Bend <gauge>; socket-H1: Hub & more, piece 1; socket-H1-2: Hub & more, piece 2");
    }

    @Test
    void everyEdgeOfAnObjectIsSharedByTwoTrianglesOnce() throws IOException {
        for (Element object : model().select("object")) {
            int vertices = object.select("vertex").size();
            List<String> there = new ArrayList<>();
            List<String> back = new ArrayList<>();
            for (Element triangle : object.select("triangle")) {
                for (int k = 1; k <= 3; k++) {
                    String from = triangle.attr("v" + k);
                    String to = triangle.attr("v" + (k % 3 + 1));
                    assertThat(Integer.parseInt(from)).isLessThan(vertices);
                    there.add(from + " " + to);
                    back.add(to + " " + from);
                }
            }
            assertThat(there).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(back);
        }
    }

    @Test
    void asciiHoldsTheNumbersOfTheBinaryFile() throws IOException {
        List<Rendition> files = files("binary", "ascii");
        for (int i = 0; i < 6; i += 2) {
            List<Float> binary = new ArrayList<>();
            ByteBuffer buffer = ByteBuffer.wrap(bytes(files.get(i)))
                    .order(ByteOrder.LITTLE_ENDIAN)
                    .position(84);
            while (buffer.hasRemaining()) {
                buffer.position(buffer.position() + 12);
                for (int k = 0; k < 9; k++) {
                    binary.add(buffer.getFloat());
                }
                buffer.position(buffer.position() + 2);
            }
            List<Float> ascii = new String(bytes(files.get(i + 1)), StandardCharsets.US_ASCII)
                    .lines()
                    .map(String::strip)
                    .filter(line -> line.startsWith("vertex "))
                    .flatMap(line -> List.of(line.substring(7).split(" ", -1)).stream())
                    .map(Float::valueOf)
                    .toList();
            assertThat(ascii).isEqualTo(binary);
        }
    }

    @Test
    void commonsGeometryReadsBothDialects() throws IOException {
        List<Rendition> files = files("binary", "ascii");
        Reader text = new StringReader(new String(bytes(files.get(1)), StandardCharsets.US_ASCII));
        int count = 0;
        try (TextStlFacetDefinitionReader reader = new TextStlFacetDefinitionReader(text)) {
            while (reader.readFacet() != null) {
                count++;
            }
            assertThat(reader.getSolidName()).matches("jigs/bend-11\\.6 size=[0-9.]+x[0-9.]+x[0-9.]+");
        }
        assertThat(Facets.read(bytes(files.get(0))).list()).hasSize(count);
    }

    @Test
    void bytesDoNotDependOnLocaleOrTimeZone() throws IOException {
        List<byte[]> expected = all();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(Arrays.deepEquals(all().toArray(), expected.toArray()))
                        .as(tag)
                        .isTrue();
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    private static List<byte[]> all() throws IOException {
        List<byte[]> all = new ArrayList<>();
        for (Rendition file : files("binary", "ascii")) {
            all.add(bytes(file));
        }
        return all;
    }
}
