package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.cli.folder.Manifest;
import dev.calotte.cli.folder.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A result in which faults are planted.
 *
 * @param folder where it is
 */
record Planted(Path folder) {

    /** Makes a result to copy from. */
    static void make(Path folder, String text) throws IOException {
        make(folder, text, 0);
    }

    static void make(Path folder, String text, int steps) throws IOException {
        Path brief = folder.resolve("brief.yaml");
        Files.writeString(brief, text);
        Runs.Result run = Runs.run(
                "make", brief.toString(), "--out", folder.resolve("out").toString(), "--steps", "" + steps);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
    }

    void copy(Path made) throws IOException {
        Path from = made.resolve("out");
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(from.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    void change(String name, UnaryOperator<String> change) throws IOException {
        Path file = folder.resolve(name);
        String before = Files.readString(file, StandardCharsets.ISO_8859_1);
        String after = change.apply(before);
        assertThat(after).isNotEqualTo(before);
        Files.writeString(file, after, StandardCharsets.ISO_8859_1);
    }

    /** Takes the sums of the changed files. */
    void sum() throws IOException {
        Map<String, String> sums = new TreeMap<>();
        Runs.contents(folder)
                .forEach((name, text) -> sums.put(name, Sha256.of(text.getBytes(StandardCharsets.ISO_8859_1))));
        sums.remove(Manifest.NAME);
        Files.writeString(folder.resolve(Manifest.NAME), new Manifest(sums).toString());
    }

    /** What the check says when the sums are those of the changed files. */
    String found() throws IOException {
        sum();
        Runs.Result result = Runs.run("check", folder.toString());
        assertThat(result.code()).as(result.out() + result.err()).isEqualTo(3);
        return result.out();
    }
}
