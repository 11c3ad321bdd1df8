package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The licences that the README lists are those of what is shipped, as its authors published them. */
class LicencesTest {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([a-z0-9-]+)` \\| ([A-Za-z0-9.-]+) \\|");
    private static final Pattern LICENCE = Pattern.compile("(?s)<license>\\s*<name>([^<]+)</name>");
    private static final Pattern PARENT = Pattern.compile("(?s)<parent>.*?<groupId>([^<]+)</groupId>\\s*"
            + "<artifactId>([^<]+)</artifactId>\\s*<version>([^<]+)</version>");

    @Test
    void theReadmeListsTheLicenceOfEveryLibraryThatIsShipped() throws IOException {
        assertThat(listed()).isNotEmpty().isEqualTo(shipped());
    }

    @Test
    void licencesThatNoJarHasAreKeptInOurs() {
        // its own jar has none
        assertThat(getClass().getResource("/META-INF/licenses/jts-core/LICENSE.txt"))
                .isNotNull();
        // beside the Apache License, which stands in ours once, it has those of parts of other origin
        assertThat(getClass().getResource("/META-INF/licenses/commons-math3/LICENSE.txt"))
                .isNotNull();
        assertThat(getClass().getResource("/META-INF/LICENSE")).isNotNull();
    }

    private static Map<String, String> listed() throws IOException {
        return ROW.matcher(Files.readString(Path.of("../README.md")))
                .results()
                .collect(Collectors.toMap(row -> row.group(1), row -> row.group(2), (a, b) -> a, TreeMap::new));
    }

    /** What the build found of run-time dependencies: jars in a local repository, each beside its POM. */
    private static Map<String, String> shipped() throws IOException {
        Map<String, String> licences = new TreeMap<>();
        String jars = Files.readString(Path.of("target/shipped.txt"));
        for (String jar : Arrays.asList(jars.strip().split(File.pathSeparator, -1))) {
            Path version = Path.of(jar).getParent();
            String artifact = version.getParent().getFileName().toString();
            licences.put(artifact, licence(Path.of(jar.replaceFirst("\\.jar$", ".pom"))));
        }
        return licences;
    }

    private static String licence(Path pom) throws IOException {
        String text = Files.readString(pom);
        String names =
                LICENCE.matcher(text).results().map(found -> found.group(1)).collect(Collectors.joining(";"));
        return names.isEmpty() ? licence(parent(pom, text)) : shortly(names);
    }

    /** In the same repository, whose root lies as far up as the group's name has parts, and three more. */
    private static Path parent(Path pom, String text) {
        Matcher parent = PARENT.matcher(text);
        assertThat(parent.find()).as(pom.toString()).isTrue();
        String place = parent.group(1).replace('.', '/') + "/" + parent.group(2) + "/" + parent.group(3);
        Path file = Path.of(place, parent.group(2) + "-" + parent.group(3) + ".pom");
        Path root = pom.getParent();
        while (!Files.exists(root.resolve(file))) {
            root = root.getParent();
            assertThat(root).as(file.toString()).isNotNull();
        }
        return root.resolve(file);
    }

    private static String shortly(String names) {
        if (names.contains("Apache")) {
            return "Apache-2.0";
        }
        // of two to choose from, the one without conditions on what is built with it
        return names.contains("Eclipse Distribution License") ? "EDL-1.0" : names.contains("MIT") ? "MIT" : names;
    }
}
