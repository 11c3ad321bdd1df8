package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MakeCommandTest {

    private static final String SMALL = "dome: { breakdown: 2, keep: 1/2 }\nsize: { radius: 2 m }\n";

    @TempDir
    private Path folder;

    static List<Path> examples() throws IOException {
        return Runs.examples();
    }

    @Test
    void everyPromisedFileOfAnExampleIsThere() throws IOException {
        Path out = folder.resolve("orchard");
        assertThat(make(Path.of("examples/orchard-house.yaml"), out).code()).isZero();
        assertThat(Runs.contents(out).keySet())
                .filteredOn(name -> !name.startsWith("svg/templates/"))
                .containsExactly(
                        "SHA256SUMS",
                        "build-book.html",
                        "dome.json",
                        "dxf/frame-3d.dxf",
                        "dxf/panels/glazing-P1.1.dxf",
                        "dxf/panels/glazing-P1.2.dxf",
                        "dxf/panels/glazing-P1.3.dxf",
                        "dxf/panels/glazing-P2.1.dxf",
                        "dxf/panels/glazing-P2.2.dxf",
                        "dxf/panels/glazing-P2.3.dxf",
                        "dxf/panels/glazing-P2.4.dxf",
                        "dxf/panels/glazing-P2.5.dxf",
                        "dxf/panels/glazing-P2.6.dxf",
                        "dxf/panels/glazing-P2.7.dxf",
                        "dxf/panels/glazing-P2.8.dxf",
                        "dxf/panels/glazing-P2.9.dxf",
                        "dxf/sheets/glazing-01.dxf",
                        "dxf/sheets/glazing-02.dxf",
                        "dxf/sheets/glazing-03.dxf",
                        "dxf/sheets/glazing-04.dxf",
                        "dxf/sheets/glazing-05.dxf",
                        "dxf/sheets/glazing-06.dxf",
                        "dxf/sheets/glazing-07.dxf",
                        "dxf/sheets/glazing-08.dxf",
                        "dxf/sheets/glazing-09.dxf",
                        "dxf/sheets/glazing-10.dxf",
                        "dxf/sheets/glazing-11.dxf",
                        "stl/jigs/H1L.stl",
                        "stl/jigs/H1R.stl",
                        "stl/jigs/H2.stl",
                        "stl/jigs/H3.stl",
                        "stl/jigs/H4.stl",
                        "stl/jigs/H5.stl",
                        "stl/jigs/fit.stl",
                        "stl/model-2.stl",
                        "stl/model-3.stl",
                        "stl/model-4.stl",
                        "stl/model.stl",
                        "stl/plate.3mf",
                        "svg/drawings/elevation.svg",
                        "svg/drawings/hubs.svg",
                        "svg/drawings/panels.svg",
                        "svg/drawings/patches.svg",
                        "svg/drawings/plan.svg",
                        "svg/drawings/rows.svg",
                        "svg/drawings/step-01.svg",
                        "svg/drawings/step-02.svg",
                        "svg/drawings/step-03.svg",
                        "svg/drawings/step-04.svg",
                        "svg/drawings/step-05.svg",
                        "svg/drawings/view.svg",
                        "svg/panels/glazing-P1.1.svg",
                        "svg/panels/glazing-P1.2.svg",
                        "svg/panels/glazing-P1.3.svg",
                        "svg/panels/glazing-P2.1.svg",
                        "svg/panels/glazing-P2.2.svg",
                        "svg/panels/glazing-P2.3.svg",
                        "svg/panels/glazing-P2.4.svg",
                        "svg/panels/glazing-P2.5.svg",
                        "svg/panels/glazing-P2.6.svg",
                        "svg/panels/glazing-P2.7.svg",
                        "svg/panels/glazing-P2.8.svg",
                        "svg/panels/glazing-P2.9.svg",
                        "svg/sheets/glazing-01.svg",
                        "svg/sheets/glazing-02.svg",
                        "svg/sheets/glazing-03.svg",
                        "svg/sheets/glazing-04.svg",
                        "svg/sheets/glazing-05.svg",
                        "svg/sheets/glazing-06.svg",
                        "svg/sheets/glazing-07.svg",
                        "svg/sheets/glazing-08.svg",
                        "svg/sheets/glazing-09.svg",
                        "svg/sheets/glazing-10.svg",
                        "svg/sheets/glazing-11.svg",
                        "tables/bars.csv",
                        "tables/base.csv",
                        "tables/bill.csv",
                        "tables/hub-schedule.csv",
                        "tables/hubs.csv",
                        "tables/panels.csv",
                        "tables/patterns.csv",
                        "tables/sheets.csv",
                        "tables/struts.csv");
    }

    @Test
    void everyPatternHasATemplateOfPagesInOneFileAndEachAlone() throws IOException {
        make(Path.of("examples/orchard-house.yaml"), folder.resolve("out"));
        Set<String> files = Runs.contents(folder.resolve("out")).keySet();
        for (String mark : List.of("P1.1", "P1.3", "P2.1", "P2.9")) {
            String name = "svg/templates/glazing-" + mark;
            assertThat(files).contains(name + ".svg", name + ".pdf");
            assertThat(files).filteredOn(file -> file.startsWith(name + "-r")).hasSizeBetween(18, 24);
        }
        assertThat(files)
                .filteredOn(file -> file.startsWith("svg/templates/"))
                .allMatch(file -> file.matches("svg/templates/glazing-P[12]\\.[1-9](-r\\dc\\d)?\\.svg|.*\\.pdf"));
    }

    @Test
    void hubPlatesHaveTemplatesOnThePaperThatIsAskedFor() throws IOException {
        make(
                brief(SMALL
                        + "frame: { hub-plate: { diameter: 120 mm, hole: 10 mm, hole-circle: 80 mm } }\n"
                        + "output: { page: Letter }\nfiles: [svg]\n"),
                folder.resolve("out"));
        Map<String, String> files = Runs.contents(folder.resolve("out"));
        List<String> plates = files.keySet().stream()
                .filter(name -> name.matches("svg/templates/H\\d[LR]?\\.svg"))
                .toList();
        assertThat(plates)
                .isNotEmpty()
                .allSatisfy(name -> assertThat(files.get(name)).contains("width=\"215.9mm\" height=\"279.4mm\""));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theSameBriefGivesTheSameBytesInEveryLocaleAndTimeZone(Path brief) throws IOException {
        make(brief, folder.resolve("here"));
        Map<String, String> here = Runs.contents(folder.resolve("here"));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                make(brief, folder.resolve(tag));
                assertThat(Runs.contents(folder.resolve(tag))).as(tag).isEqualTo(here);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void onlyTheFilesThatAreAskedForAreWritten() throws IOException {
        Path brief = brief(SMALL + "files: [stl]\n");
        make(brief, folder.resolve("out"));
        assertThat(Runs.contents(folder.resolve("out")).keySet())
                .containsExactly("SHA256SUMS", "dome.json", "stl/model.stl");
    }

    @Test
    void aModelIsWrittenForCuttersWhereTheBriefSaysOfWhat() throws IOException {
        Path brief = brief(SMALL + "model: { sheet: [600, 400], thickness: 3, kerf: 0.15 }\nfiles: [dxf, svg]\n");
        make(brief, folder.resolve("out"));
        assertThat(Runs.contents(folder.resolve("out")).keySet())
                .filteredOn(name -> name.contains("/model/"))
                .containsExactly(
                        "dxf/model/fit-comb.dxf",
                        "dxf/model/kit-01.dxf",
                        "dxf/model/net-01.dxf",
                        "svg/model/fit-comb.svg",
                        "svg/model/kit-01.svg",
                        "svg/model/net-01.svg");
    }

    @Test
    void aDiscTooSmallIsShownInTheBrief() throws IOException {
        Path brief = brief(SMALL + "model: { sheet: [600, 400], thickness: 3, disc: 11 }\n");
        Runs.Result result = make(brief, folder.resolve("out"));
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains(":3:", "model.disc", "Use a disc of 1");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aSecondRunReplacesTheFirst() throws IOException {
        make(Path.of("examples/planetarium.yaml"), folder.resolve("out"));
        make(brief(SMALL), folder.resolve("out"));
        assertThat(Runs.contents(folder.resolve("out")))
                .containsKey("dxf/panels/P2.dxf")
                .doesNotContainKey("dxf/panels/P3L.dxf");
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("brief.yaml", "out");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\u0000\u0001",
                "dome: { breakdown: 3 }\n",
                "dome: { breakdown: [0, 0] }\nsize: { radius: 3 m }\n",
                "dome: { breakdown: 5000 }\nsize: { radius: 3 m }\n",
                "dome: { breakdown: 3, keep: 5/7 }\nsize: { radius: 3 m }\n",
                "dome: { breakdown: 3 }\nsize: { radius: 3 m, height: 2 m }\n",
                "dome: { breakdown: 3 }\nsize: { radius: 3 parsec }\n",
                "dome: { breakdown: 3 }\nsize: { radius: 3 m }\nframe: { hub-gap: -1 mm }\n",
                "dome: { breakdown: 3 }\nsize: { radius: 3 m }\nframe: { hub-gap: 2 m }\n",
                "dome: { brakedown: 3 }\nsize: { radius: 3 m }\n",
                "dome: { breakdown: 3 }\nsize: { floor-area: 12 m2 }\n"
            })
    void aBadBriefEndsInTwoAndWritesNothing(String text) throws IOException {
        Runs.Result result = make(brief(text), folder.resolve("out"));
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).isNotBlank();
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aBadBriefLeavesAnEarlierResultAsItWas() throws IOException {
        make(brief(SMALL), folder.resolve("out"));
        Map<String, String> before = Runs.contents(folder.resolve("out"));
        assertThat(make(brief("dome: 3"), folder.resolve("out")).code()).isEqualTo(2);
        assertThat(Runs.contents(folder.resolve("out"))).isEqualTo(before);
    }

    @Test
    void problemsOfTheGeometryPointIntoTheBrief() throws IOException {
        Runs.Result result =
                make(brief("dome:\n  breakdown: 4\n  keep: 5/7\nsize: { radius: 3 m }\n"), folder.resolve("x"));
        assertThat(result.err())
                .contains("brief.yaml:3:3  dome.keep: 5/7 of 12 rows is not a whole number of rows.")
                .contains("Use 2/3 (8 rows) or 3/4 (9 rows).")
                .contains("  keep: 5/7\n      ^");
    }

    @Test
    void aMissingBriefAndAWrongCommandLineEndInTwo() {
        assertThat(Runs.run("make", "no-such-brief.yaml").code()).isEqualTo(2);
        assertThat(Runs.run("make").code()).isEqualTo(2);
        assertThat(Runs.run("cut", "brief.yaml").code()).isEqualTo(2);
        assertThat(Runs.run().code()).isEqualTo(2);
    }

    private Path brief(String text) throws IOException {
        return Files.writeString(folder.resolve("brief.yaml"), text);
    }

    private static Runs.Result make(Path brief, Path out) {
        return Runs.run("make", brief.toString(), "--out", out.toString());
    }
}
