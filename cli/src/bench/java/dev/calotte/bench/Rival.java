package dev.calotte.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Somebody whose work is measured, in a process of its own.
 *
 * @param name for the table
 * @param command what is run; takes a folder, and how many runs are to get warm and to count
 */
record Rival(String name, List<String> command) {

    /** Copies the list. */
    Rival {
        command = List.copyOf(command);
    }

    /** A piece of work of ours. */
    static Rival ours(String name, String work, String... flags) {
        List<String> command = java(Entrant.class, flags);
        command.add(work);
        return new Rival(name, command);
    }

    /** Starts a class of this class path. */
    static List<String> java(Class<?> main, String... flags) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(flags));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        return command;
    }

    /** A script of another library. */
    static Rival peer(String name, String program, Path script) {
        return new Rival(name, List.of(program, script.toString()));
    }

    /** Runs once more; false if it could not, of which it tells. */
    boolean run(Samples samples, String... words) throws IOException {
        List<String> all = new ArrayList<>(command);
        all.addAll(List.of(words));
        String last = "nothing";
        try {
            Process process = new ProcessBuilder(all).redirectErrorStream(true).start();
            try (BufferedReader lines = process.inputReader()) {
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    samples.add(line);
                    last = line;
                }
            }
            if (process.waitFor() == 0) {
                return true;
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (IOException absent) {
            last = absent.getMessage();
        }
        System.err.println("left out: " + name + ", which said: " + last);
        return false;
    }
}
