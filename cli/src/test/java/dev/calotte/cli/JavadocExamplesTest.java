package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the Javadoc of the library shows can be compiled, and runs with what a reader would have at hand. */
class JavadocExamplesTest {

    private static final List<Path> LIBRARY = Stream.of("core", "export-dxf", "export-svg", "export-stl")
            .map(module -> Path.of("..", module, "src/main/java/dev/calotte"))
            .toList();
    private static final Pattern EXAMPLE = Pattern.compile("<pre>\\{@code\n(.*?)\n \\* }</pre>", Pattern.DOTALL);

    private static final String AT_HAND = """
            DomeSpec spec = DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(2), Size.radius(1500));
            Joinery joinery = Joinery.nodeToNode();
            Dome dome = Dome.of(spec);
            Parts parts = Parts.of(dome, joinery);
            Cover cover = Cover.of("glazing");
            List<Stock> stocks = List.of(new Sheet(2440, 2440, 10, Terms.OPEN));
            CoverFit fit = CoverFit.of(Patterns.of(parts, cover), stocks);
            CoverPlan plan = CoverPlan.of(fit, new Layout(5, 0, 1)).orElseThrow();
            Path target = Path.of("by-hand");
            Files.createDirectories(Path.of("sheets"));
            Exporters.installed().write(CoverSheets.of(plan, UnitSystem.METRIC).get(0), Path.of("sheets/glazing-01.dxf"));
            """;

    @TempDir
    private Path folder;

    @Test
    void everyExampleRuns() throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>(imports());
        lines.addAll(AT_HAND.lines().toList());
        List<String> examples = examples();
        assertThat(examples).hasSizeGreaterThan(60);
        for (String example : examples) {
            // a class of its own, so that an example may name its variables like those at hand
            lines.add(
                    "new java.util.concurrent.Callable<Object>() { @Override public Object call() throws Exception {");
            lines.addAll(example.lines().toList());
            lines.add("return null; } }.call();");
        }
        assertThat(new Snippet(lines).run(folder)).startsWith("dome.keep: ");
    }

    private static List<String> examples() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : filesOf(LIBRARY)) {
            EXAMPLE.matcher(Files.readString(file))
                    .results()
                    .map(JavadocExamplesTest::withoutStars)
                    .forEach(found::add);
        }
        return found;
    }

    private static List<Path> filesOf(List<Path> folders) throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path folder : folders) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(Files::isRegularFile).sorted().forEach(found::add);
            }
        }
        return found;
    }

    private static String withoutStars(MatchResult example) {
        return example.group(1).replaceAll("(?m)^ \\* ?", "");
    }

    private static List<String> imports() throws IOException {
        List<String> imports = new ArrayList<>(List.of(
                "import java.io.InputStream;",
                "import java.io.OutputStream;",
                "import java.nio.file.Files;",
                "import java.nio.file.Path;",
                "import java.util.List;",
                "import java.util.Optional;",
                "import java.util.OptionalDouble;"));
        for (Path module : LIBRARY) {
            try (Stream<Path> packages = Files.list(module)) {
                packages.filter(Files::isDirectory)
                        .sorted()
                        .map(room -> "import dev.calotte." + room.getFileName() + ".*;")
                        .forEach(imports::add);
            }
        }
        return imports;
    }
}
