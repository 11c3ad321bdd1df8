package dev.calotte.testing;

import dev.calotte.problem.CalotteException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * What every reader promises of any bytes: it reads them, or refuses them with a message, and needs no more memory than some
 * for each byte. Fuzzers hold it against what they make up, ordinary tests against what they found.
 */
public final class ReadOrRefused {

    private static final long LEAST_BYTES = 64L << 20;
    private static final long FOR_EACH_BYTE = 4096;
    private static final int CHANGES = 60;

    private ReadOrRefused() {}

    /** Reads bytes. */
    public interface Reader {
        /** Reads them, or throws what says why not. */
        void read(byte[] bytes) throws IOException;
    }

    /** Lets a reader read; an AssertionError if it breaks its promise, or whatever it throws that it should not. */
    public static void check(Reader reader, byte[] bytes) {
        long most = LEAST_BYTES + FOR_EACH_BYTE * bytes.length;
        long taken = taken(reader, bytes);
        if (taken > most) {
            // classes that are loaded meanwhile take memory too, but once only
            taken = taken(reader, bytes);
        }
        if (taken > most) {
            throw new AssertionError("took " + taken + " bytes of memory for a file of " + bytes.length);
        }
    }

    private static long taken(Reader reader, byte[] bytes) {
        long before = allocated();
        try {
            reader.read(bytes);
        } catch (IOException | CalotteException refused) {
            if (refused.getMessage() == null || refused.getMessage().isBlank()) {
                throw new AssertionError("refused without a reason", refused);
            }
        }
        return allocated() - before;
    }

    /** The same of each file of a folder, and of that file with random changes, the same in every run. */
    public static int checkAll(Reader reader, Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.sorted().toList();
        }
        files.forEach(file -> check(reader, file));
        return files.size();
    }

    private static void check(Reader reader, Path file) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        try {
            check(reader, bytes);
            Random random = new Random(file.getFileName().toString().hashCode());
            for (int i = 0; i < CHANGES && bytes.length > 0; i++) {
                check(reader, changed(bytes, random));
            }
        } catch (AssertionError | RuntimeException broken) {
            throw new AssertionError(file + ": " + broken, broken);
        }
    }

    private static byte[] changed(byte[] bytes, Random random) {
        byte[] changed = bytes.clone();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            int from = random.nextInt(bytes.length);
            int to = random.nextInt(bytes.length);
            int length = Math.min(1 + random.nextInt(12), bytes.length - Math.max(from, to));
            System.arraycopy(bytes, from, changed, to, length);
            changed[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(7));
        }
        return changed;
    }

    /** What this thread has taken so far. Asked by name, since no module here needs the one that knows it. */
    private static long allocated() {
        try {
            Object threads = Class.forName("java.lang.management.ManagementFactory")
                    .getMethod("getThreadMXBean")
                    .invoke(null);
            return (long) Class.forName("com.sun.management.ThreadMXBean")
                    .getMethod("getThreadAllocatedBytes", long.class)
                    .invoke(threads, Thread.currentThread().getId());
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("this Java machine does not count memory by thread", e);
        }
    }
}
