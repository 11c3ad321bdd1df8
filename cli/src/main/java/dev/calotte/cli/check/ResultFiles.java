package dev.calotte.cli.check;

import dev.calotte.cli.folder.Sha256;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The files below a folder. Links are never followed, and neither the number of files nor what is read of one is unbounded.
 */
final class ResultFiles {

    private static final int MOST_FILES = 200_000;
    private static final int DEEPEST = 8;

    private final Path folder;
    private final Set<String> names = new TreeSet<>();
    private final Set<String> others = new TreeSet<>();

    private ResultFiles(Path folder) {
        this.folder = folder;
    }

    static ResultFiles in(Path folder) throws IOException {
        ResultFiles files = new ResultFiles(folder);
        Files.walkFileTree(folder, Set.of(), DEEPEST, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                (attributes.isRegularFile() ? files.names : files.others).add(name);
                return files.names.size() + files.others.size() < MOST_FILES
                        ? FileVisitResult.CONTINUE
                        : FileVisitResult.TERMINATE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                files.others.add(folder.relativize(file).toString().replace('\\', '/'));
                return FileVisitResult.CONTINUE;
            }
        });
        return files;
    }

    /** The names of all regular files, sorted. */
    Set<String> names() {
        return names;
    }

    /** Links, folders that lie too deep, and whatever else is no regular file. */
    Set<String> others() {
        return others;
    }

    boolean has(String name) {
        return names.contains(name);
    }

    InputStream open(String name) throws IOException {
        return new BufferedInputStream(Files.newInputStream(folder.resolve(name), LinkOption.NOFOLLOW_LINKS), 1 << 16);
    }

    String sha256(String name) throws IOException {
        try (InputStream in = open(name)) {
            return Sha256.of(in);
        }
    }

    long size(String name) throws IOException {
        return Files.size(folder.resolve(name));
    }

    /** A text of no more bytes than that. */
    String text(String name, int mostBytes) throws IOException {
        try (InputStream in = open(name)) {
            byte[] bytes = in.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) {
                throw new RecordException("it is larger than " + mostBytes / 1024 / 1024 + " MiB");
            }
            return new String(bytes, StandardCharsets.UTF_8);
        }
    }

    /** Those that begin and end so. */
    List<String> names(String folderName, String ending) {
        return names.stream()
                .filter(name -> name.startsWith(folderName) && name.endsWith(ending))
                .toList();
    }
}
