package dev.calotte.cli.folder;

import dev.calotte.export.Rendition;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;

/**
 * Writes a folder of results, all of it or nothing. Files go to a new folder beside the target; when all are written it
 * takes the target's place, and the earlier result, set aside under another name for that moment, is removed. A run
 * that is killed between the two leaves the earlier result under that name, and the next run puts it back first.
 *
 * <p>The sums of all files stand in a {@link Manifest}; they are taken while the files are written.
 *
 * <p>A target that holds anything but earlier results is refused, so that no other file is ever removed.
 */
public final class ResultFolder implements FileSink {

    private static final List<String> OWN = List.of(
            "dome\\.json",
            Manifest.NAME,
            "build-book\\.html",
            "tables/[^/]+\\.csv",
            "dxf/.+\\.dxf",
            "svg/.+\\.svg",
            "svg/templates/[^/]+\\.pdf",
            "stl/.+\\.stl",
            "stl/[^/]+\\.3mf");
    private static final int BUFFER = 1 << 16;
    private static final int MOST_TRIES = 1000;

    private final Path target;
    private final Path fresh;
    private final Path aside;
    private final SortedMap<String, String> digests = new ConcurrentSkipListMap<>();

    private ResultFolder(Path target) throws IOException {
        this.target = target.toAbsolutePath().normalize();
        Path parent = Optional.ofNullable(this.target.getParent()).orElse(this.target);
        this.aside = parent.resolve("." + this.target.getFileName() + ".earlier");
        checkTarget();
        Files.createDirectories(parent);
        restore();
        this.fresh = newFolder(parent);
    }

    /** A folder that is nobody else's, with the usual rights, under a name that a killed run may have used up. */
    private Path newFolder(Path parent) throws IOException {
        for (int i = 1; ; i++) {
            try {
                return Files.createDirectory(parent.resolve("." + target.getFileName() + ".new-" + i));
            } catch (FileAlreadyExistsException taken) {
                if (i == MOST_TRIES) {
                    throw taken;
                }
            }
        }
    }

    /** Writes all files. */
    public interface Filling {

        /**
         * Writes the files.
         *
         * @param folder takes them
         * @throws IOException if one cannot be written
         */
        void fill(ResultFolder folder) throws IOException;
    }

    /**
     * Writes a folder.
     *
     * @param target where the result shall stand; replaced if it holds an earlier result
     * @param filling writes the files
     * @throws CalotteException if the target holds other files, or cannot be written
     */
    public static void write(Path target, Filling filling) {
        try {
            ResultFolder folder = new ResultFolder(target);
            try {
                filling.fill(folder);
                folder.addManifest();
                folder.takePlace();
            } finally {
                remove(folder.fresh);
            }
        } catch (UncheckedIOException e) {
            throw unwritten(target, e.getCause());
        } catch (IOException e) {
            throw unwritten(target, e);
        }
    }

    private static CalotteException unwritten(Path target, IOException e) {
        return new CalotteException(
                Code.FILE,
                "",
                "the result cannot be written to " + target + ": " + reason(e) + ".",
                "Choose another folder with --out, or make room; what stood there before is unchanged.");
    }

    private static String reason(IOException e) {
        String name = e.getClass().getSimpleName().replaceAll("Exception$", "");
        return e.getMessage() == null ? name : e.getMessage() + " (" + name + ")";
    }

    @Override
    public void add(String name, Rendition.Content content) throws IOException {
        Path file = fresh.resolve(name).normalize();
        if (!file.startsWith(fresh) || OWN.stream().noneMatch(name::matches)) {
            throw new IllegalArgumentException("no result may be called " + name);
        }
        Files.createDirectories(file.getParent());
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), BUFFER)) {
            MessageDigest digest = Sha256.begun();
            content.writeTo(new DigestOutputStream(out, digest));
            digests.put(name, Sha256.text(digest));
        }
    }

    @Override
    public List<String> names() {
        return List.copyOf(digests.keySet());
    }

    private void addManifest() throws IOException {
        byte[] text = new Manifest(digests).toString().getBytes(StandardCharsets.UTF_8);
        add(Manifest.NAME, out -> out.write(text));
    }

    private void checkTarget() throws IOException {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw refused("is not a folder");
        }
        try (Stream<Path> files = Files.walk(target)) {
            Optional<String> foreign = files.filter(f -> !Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
                    .map(f -> target.relativize(f).toString().replace('\\', '/'))
                    .filter(name -> OWN.stream().noneMatch(name::matches))
                    .sorted()
                    .findFirst();
            if (foreign.isPresent()) {
                throw refused("holds " + foreign.get() + ", which is no result of this command");
            }
        }
    }

    private CalotteException refused(String why) {
        return new CalotteException(
                Code.FILE,
                "",
                target.getFileName() + " " + why + "; nothing is written, so that nothing of yours is lost.",
                "Choose another folder with --out, or move that away.");
    }

    private void restore() throws IOException {
        if (Files.isDirectory(aside, LinkOption.NOFOLLOW_LINKS)) {
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                remove(aside);
            } else {
                Files.move(aside, target);
            }
        }
    }

    private void takePlace() throws IOException {
        boolean earlier = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
        if (earlier) {
            Files.move(target, aside);
        }
        try {
            Files.move(fresh, target);
        } catch (IOException e) {
            if (earlier) {
                Files.move(aside, target);
            }
            throw e;
        }
        remove(aside);
    }

    private static void remove(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, IOException e) throws IOException {
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
