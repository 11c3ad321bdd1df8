package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table of keys in the README has all keys of the brief, and no other. */
class BriefReferenceTest {

    private static final Path README = Path.of("../README.md");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    /** A key that no level knows, at each of them. */
    private static final String STRANGE = """
            zzzzzzzzzz: 1
            dome: { zzzzzzzzzz: 1 }
            size: { zzzzzzzzzz: 1 }
            openings: [{ zzzzzzzzzz: 1 }]
            frame: { zzzzzzzzzz: 1, bar: { zzzzzzzzzz: 1 }, ends: { zzzzzzzzzz: 1 }, hub-plate: { zzzzzzzzzz: 1 } }
            covers: [{ zzzzzzzzzz: 1, stock: { zzzzzzzzzz: 1 }, fasteners: { zzzzzzzzzz: 1 } }]
            assembly: { zzzzzzzzzz: 1 }
            model: { zzzzzzzzzz: 1 }
            jigs: { zzzzzzzzzz: 1, sockets: { zzzzzzzzzz: 1 } }
            output: { zzzzzzzzzz: 1, operations: { zzzzzzzzzz: 1 } }
            """;

    @TempDir
    private Path folder;

    @Test
    void everyKeyOfTheBriefStandsInTheReadme() throws IOException {
        Map<String, String> rows = rows();
        levels().forEach((level, keys) -> assertThat(keys)
                .isNotEmpty()
                .allSatisfy(key -> assertThat(hasRows(rows, level + key) || isNamed(rows, level, key))
                        .as(level + key)
                        .isTrue()));
    }

    @Test
    void everyKeyOfTheReadmeIsAKeyOfTheBrief() throws IOException {
        Map<String, List<String>> levels = levels();
        assertThat(rows()).hasSizeGreaterThan(60).allSatisfy((path, row) -> {
            String level = path.substring(0, path.lastIndexOf('.') + 1);
            assertThat(levels).as(path).containsKey(level);
            assertThat(levels.get(level)).contains(path.substring(level.length()));
        });
    }

    /** Of its own, or for the keys below it. */
    private static boolean hasRows(Map<String, String> rows, String path) {
        return rows.keySet().stream().anyMatch(row -> row.equals(path) || row.startsWith(path + "."));
    }

    /** In the row of the level itself: as a code of its own, or in an example. */
    private static boolean isNamed(Map<String, String> rows, String level, String key) {
        String own = rows.getOrDefault(level.replaceAll("(\\[])?\\.$", ""), "");
        return Pattern.compile("[`{,] ?" + Pattern.quote(key) + "[`:]")
                .matcher(own)
                .find();
    }

    /** What the program itself names where a key is strange, by the path of the level. */
    private Map<String, List<String>> levels() throws IOException {
        Path brief = Files.writeString(folder.resolve("brief.yaml"), STRANGE);
        Matcher said = Pattern.compile(
                        "(\\S*)zzzzzzzzzz: zzzzzzzzzz is not a key of the brief here\\.\\R +The keys here are (.+)\\.\\R")
                .matcher(Runs.run("show", brief.toString()).err());
        Map<String, List<String>> levels = new LinkedHashMap<>();
        while (said.find()) {
            String level = said.group(1).replace("[0]", "[]");
            assertThat(levels.put(level, List.of(said.group(2).split(", | and ", -1))))
                    .isNull();
        }
        assertThat(levels).hasSize(17);
        return levels;
    }

    /** The rows of the table by the keys in their first column. */
    private static Map<String, String> rows() throws IOException {
        Map<String, String> rows = new LinkedHashMap<>();
        for (String line : table()) {
            String first = line.substring(2, line.indexOf(" | "));
            String level = "";
            for (String key : CODE.matcher(first).results().map(m -> m.group(1)).toList()) {
                String path = key.indexOf('.') >= 0 ? key : level + key;
                level = path.substring(0, path.lastIndexOf('.') + 1);
                rows.put(path, line);
            }
        }
        return rows;
    }

    private static List<String> table() throws IOException {
        List<String> lines = Files.readAllLines(README);
        int first = lines.indexOf(lines.stream()
                .filter(line -> line.startsWith("| `title` |"))
                .findFirst()
                .orElseThrow());
        List<String> table = new ArrayList<>();
        Stream<String> rest = lines.subList(first, lines.size()).stream();
        rest.takeWhile(line -> line.startsWith("| ")).forEach(table::add);
        return table;
    }
}
