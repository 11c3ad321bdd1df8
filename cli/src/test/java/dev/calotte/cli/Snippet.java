package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;

/**
 * A block of Java in a text: imports and statements, as a reader would type them.
 *
 * @param lines the lines between the fences
 */
record Snippet(List<String> lines) {

    private static final Pattern BLOCK = Pattern.compile("```java\n(.*?)\n```", Pattern.DOTALL);
    private static final String CLASS_PATH = System.getProperty("java.class.path");

    static List<Snippet> of(Path text) throws IOException {
        return BLOCK.matcher(Files.readString(text))
                .results()
                .map(block -> new Snippet(block.group(1).lines().toList()))
                .toList();
    }

    String imports() {
        return lines.stream().filter(line -> line.startsWith("import ")).collect(Collectors.joining("\n"));
    }

    String statements() {
        return lines.stream()
                .filter(line -> !line.startsWith("import "))
                .collect(Collectors.joining("\n"))
                .strip();
    }

    /** Compiles the block as the main method of a class, runs that in a folder, and returns what it prints. */
    String run(Path folder) throws IOException, InterruptedException {
        Path source = folder.resolve("Snippet.java");
        String main = "public static void main(String[] args) throws Exception {\n" + statements() + "\n}\n";
        Files.writeString(source, imports() + "\npublic final class Snippet {\n" + main + "}\n");
        compile(source);
        Path printed = folder.resolve("printed.txt");
        Process java = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.language=en",
                        "-cp",
                        folder + System.getProperty("path.separator") + CLASS_PATH,
                        "Snippet"))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        int exit = java.waitFor();
        String text = Files.readString(printed, StandardCharsets.UTF_8);
        assertThat(exit).as(text).isZero();
        return text;
    }

    private static void compile(Path source) {
        StringWriter messages = new StringWriter();
        PrintWriter out = new PrintWriter(messages);
        int exit = ToolProvider.findFirst("javac")
                .orElseThrow()
                .run(out, out, "-proc:none", "-Xlint:all,-path", "-Werror", "-cp", CLASS_PATH, source.toString());
        assertThat(exit).as(messages.toString()).isZero();
    }
}
