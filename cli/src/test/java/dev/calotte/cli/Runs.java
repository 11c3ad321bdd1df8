package dev.calotte.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Runs the command in this process. */
final class Runs {

    private Runs() {}

    /** What a run said. */
    record Result(int code, String out, String err) {}

    static Result run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Calotte.commandLine();
        line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        int code = line.execute(arguments);
        return new Result(code, out.toString(), err.toString());
    }

    /** A run in a process of its own, ready to be started; the option is one of the virtual machine. */
    static ProcessBuilder process(String option, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                option,
                "-cp",
                System.getProperty("java.class.path"),
                Calotte.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command);
    }

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    /** The bytes of each file below a folder, by name, as text of one byte a character. */
    static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(
                        folder.relativize(file).toString().replace('\\', '/'),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }
}
