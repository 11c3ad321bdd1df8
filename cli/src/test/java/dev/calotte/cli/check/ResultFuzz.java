package dev.calotte.cli.check;

import dev.calotte.testing.ReadOrRefused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a fuzzer calls: the check of a folder whose record may hold any bytes. */
public final class ResultFuzz {

    private static final Path FOLDER = folder();

    private ResultFuzz() {}

    private static Path folder() {
        try {
            Path folder = Files.createTempDirectory("result");
            folder.toFile().deleteOnExit();
            folder.resolve("dome.json").toFile().deleteOnExit();
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Checks a result with any bytes for its record. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadOrRefused.check(ResultFuzz::read, bytes);
    }

    static void read(byte[] bytes) throws IOException {
        Files.write(FOLDER.resolve("dome.json"), bytes);
        CheckResult result = ResultCheck.of(FOLDER);
        if (result.findings().isEmpty()) {
            throw new AssertionError("nothing is found, though all other files are missing");
        }
    }
}
