package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Operation;
import dev.calotte.document.Wireframe;
import dev.calotte.export.ShapeReader;
import dev.calotte.export.WireReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the README says is run and compared. */
class ReadmeTest {

    private static final Path README = Path.of("../README.md");
    private static final Path CONSUMER = Path.of("../.ci/consumer");

    private static final Pattern PARENT =
            Pattern.compile("<artifactId>calotte</artifactId>\\s*<version>([^<]+)</version>");

    @TempDir
    private Path folder;

    @Test
    void everyBlockOfJavaHasATestHere() throws IOException {
        assertThat(Snippet.of(README)).hasSize(2);
    }

    @Test
    void theFirstSnippetPrintsTheStrutsAndWritesTheFrame() throws IOException, InterruptedException {
        String printed = Snippet.of(README).get(0).run(folder);
        assertThat(printed).isEqualToNormalizingNewlines("""
                30 x S1, cut to 1042.4 mm
                55 x S2, cut to 1220.8 mm
                80 x S3, cut to 1249.6 mm
                """);
        assertThat(lines(folder.resolve("frame.dxf"))).isEqualTo(165);
    }

    private static long lines(Path dxf) throws IOException {
        try (InputStream in = Files.newInputStream(dxf)) {
            return WireReader.installed("dxf").orElseThrow().read(in).stream()
                    .filter(layer -> layer.sort() == Wireframe.Sort.LINES)
                    .mapToLong(Wireframe.Layer::size)
                    .sum();
        }
    }

    @Test
    void theSnippetOnSheetsWritesEveryPanelOnce() throws IOException, InterruptedException {
        Snippet.of(README).get(1).run(folder);
        long panels = 0;
        try (Stream<Path> sheets = Files.list(folder.resolve("sheets"))) {
            for (Path sheet : sheets.toList()) {
                assertThat(sheet.getFileName().toString()).matches("glazing-\\d\\d\\.dxf");
                panels += outlines(sheet);
            }
        }
        assertThat(panels).isEqualTo(8 * 4);
    }

    private static long outlines(Path dxf) throws IOException {
        try (InputStream in = Files.newInputStream(dxf)) {
            return ShapeReader.installed("dxf").orElseThrow().read(in).stream()
                    .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                    .count();
        }
    }

    @Test
    void theConsumerIsWhatTheReadmeShows() throws IOException {
        String source = Files.readString(CONSUMER.resolve("src/main/java/example/FirstDome.java"));
        Snippet first = Snippet.of(README).get(0);
        assertThat(source).contains(first.statements().indent(8));
        assertThat(source.lines()).containsAll(first.imports().lines().toList());
    }

    @Test
    void theDependenciesAreThoseOfTheConsumerInTheVersionThatIsBuilt() throws IOException {
        String readme = Files.readString(README);
        String pom = Files.readString(CONSUMER.resolve("pom.xml"));
        String xml = readme.substring(readme.indexOf("```xml\n") + 7);
        xml = xml.substring(0, xml.indexOf("```"));
        assertThat(pom).contains(xml.indent(2));
        String version = version(Files.readString(Path.of("pom.xml")));
        assertThat(version(xml)).isEqualTo(version);
        assertThat(readme).contains("`dev.calotte:calotte-export-dxf:" + version + "`");
    }

    private static String version(String pom) {
        Matcher matcher = PARENT.matcher(pom);
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    @ParameterizedTest
    @CsvSource({
        "orchard-house, view, orchard-house",
        "orchard-house, patches, orchard-house-patches",
        "bandstand, elevation, bandstand-elevation",
        "planetarium, plan, planetarium-plan"
    })
    void picturesAreTheProgramsOwn(String example, String drawing, String picture) throws IOException {
        Path brief = Files.writeString(
                folder.resolve("brief.yaml"),
                Files.readString(Path.of("examples/" + example + ".yaml")) + "\nfiles: [svg]\n");
        Path made = folder.resolve("made");
        Runs.run("make", brief.toString(), "--out", made.toString());
        assertThat(Files.readString(Path.of("examples/pictures/" + picture + ".svg")))
                .isEqualTo(Files.readString(made.resolve("svg/drawings/" + drawing + ".svg")));
        assertThat(Files.readString(README)).contains("](cli/examples/pictures/" + picture + ".svg)");
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        for (Path page : List.of(README, Path.of("../DEVELOPERS.md"))) {
            String text = Files.readString(page);
            List<String> headings = text.lines()
                    .filter(line -> line.startsWith("#"))
                    .map(line -> "#"
                            + line.replaceAll("^#+ ", "")
                                    .toLowerCase(Locale.ROOT)
                                    .replace(' ', '-'))
                    .toList();
            assertThat(Pattern.compile("\\]\\(([^)]+)\\)")
                            .matcher(text)
                            .results()
                            .map(link -> link.group(1)))
                    .allSatisfy(link -> assertThat(headings.contains(link)
                                    || Files.exists(Path.of("..").resolve(link)))
                            .as(page + ": " + link)
                            .isTrue());
        }
    }

    @Test
    void thePageThatShowPrintsStandsInTheReadme() throws IOException {
        String page = Runs.run("show", "examples/orchard-house.yaml").out();
        assertThat(Files.readString(README)).contains("```text\n" + page + "```");
    }
}
