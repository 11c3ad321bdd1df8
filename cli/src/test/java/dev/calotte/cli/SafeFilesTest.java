package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files stay inside their folder and hurt nobody, whatever a brief says and the disk does. */
class SafeFilesTest {

    private static final String SMALL = "dome: { breakdown: 2, keep: 1/2 }\nsize: { radius: 2 m }\n";

    @TempDir
    private Path folder;

    private Path brief(String text) throws IOException {
        return Files.writeString(folder.resolve("brief.yaml"), text);
    }

    private Path target() {
        return folder.resolve("out");
    }

    private Runs.Result make(String text) throws IOException {
        return Runs.run("make", brief(text).toString(), "--out", target().toString());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../escaped",
                "/etc/escaped",
                "..",
                ".",
                "a/b",
                "a\\b",
                "CON",
                "nul.txt",
                "c:stream",
                "x\u0000y",
                "-rf",
                "$(touch escaped)",
                "name\nwith lines",
                "trailing. ",
                "\u202egnp.exe"
            })
    void noNameOfACoverLeadsOutOfTheFolder(String name) throws IOException {
        Runs.Result result =
                make(SMALL + "covers: [{ name: " + quoted(name) + ", edge: 5 mm }]\nfiles: [dxf, tables]\n");
        assertThat(names()).isSubsetOf("brief.yaml", "out");
        if (result.code() == 0) {
            assertThat(Runs.contents(target()).keySet()).allMatch(file -> file.matches("[A-Za-z0-9_./-]+"));
        } else {
            assertThat(result.code()).isEqualTo(Calotte.PROBLEM);
            assertThat(result.err()).contains("covers[0].name");
            assertThat(target()).doesNotExist();
        }
    }

    /** As YAML 1.2 escapes it between double quotes. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> quoted.append(String.format("\\u%04x", c)));
        return quoted.append('"').toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(1)", "+1+1", "-2+3", "@SUM(1)", "=cmd|' /C calc'!A0"})
    void noTextBecomesAFormulaInATable(String title) throws IOException {
        make("title: \"" + title + "\"\n" + SMALL + "files: [tables]\n");
        List<String> cells = new ArrayList<>();
        Runs.contents(target()).forEach((name, text) -> {
            if (name.endsWith(".csv")) {
                text.lines().forEach(line -> cells.addAll(List.of(line.split(","))));
            }
        });
        assertThat(cells).isNotEmpty().noneMatch(cell -> cell.matches("\"?[=@+].*") || cell.matches("\"?-[^0-9].*"));
    }

    @Test
    void aTitleIsOnlyATextInEveryFile() throws IOException {
        String title = "<script>alert(1)</script><!ENTITY x SYSTEM \"file:/etc/hostname\">]]>&amp;";
        assertThat(make("title: '" + title + "'\n" + SMALL).err()).isEmpty();
        Runs.contents(target()).forEach((name, text) -> {
            if (name.endsWith(".svg") || name.endsWith(".html")) {
                assertThat(text).as(name).doesNotContain("<script>alert", "<!ENTITY");
            }
        });
    }

    @Test
    void anEarlierResultBehindALinkIsNotReplaced() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("dome.json"), "mine");
        assumeTrue(linked(target(), elsewhere));
        Runs.Result result = make(SMALL + "files: [tables]\n");
        assertThat(result.code()).isEqualTo(Calotte.PROBLEM);
        assertThat(Files.readString(elsewhere.resolve("dome.json"))).isEqualTo("mine");
    }

    @Test
    void linksInAnEarlierResultAreNotFollowed() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("struts.csv"), "mine");
        Files.createDirectory(target());
        assumeTrue(linked(target().resolve("tables"), elsewhere));
        make(SMALL + "files: [tables]\n");
        assertThat(Files.readString(elsewhere.resolve("struts.csv"))).isEqualTo("mine");
    }

    private static boolean linked(Path link, Path to) throws IOException {
        try {
            Files.createSymbolicLink(link, to);
            return true;
        } catch (UnsupportedOperationException | FileSystemException notHere) {
            return false;
        }
    }

    @Test
    void nobodyElseMayWriteWhatIsMade() throws IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        make(SMALL + "files: [tables, dxf]\n");
        try (Stream<Path> files = Files.walk(target())) {
            for (Path file : files.toList()) {
                assertThat(Files.getPosixFilePermissions(file)).doesNotContain(PosixFilePermission.OTHERS_WRITE);
                if (Files.isRegularFile(file)) {
                    assertThat(Files.getPosixFilePermissions(file))
                            .doesNotContain(PosixFilePermission.OWNER_EXECUTE, PosixFilePermission.OTHERS_EXECUTE);
                }
            }
        }
    }

    @Test
    void aFolderThatTakesNoFilesIsNamedAndNothingIsLost() throws IOException {
        make(SMALL + "files: [tables]\n");
        Map<String, String> earlier = Runs.contents(target());
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeFalse(Files.isWritable(folder), "who may write anywhere cannot be refused");
            Runs.Result result =
                    Runs.run("make", folder.resolve("brief.yaml").toString(), "--out", target().toString());
            assertThat(result.code()).isEqualTo(Calotte.PROBLEM);
            assertThat(result.err()).contains("cannot be written");
            assertThat(Runs.contents(target())).isEqualTo(earlier);
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    /** The shell's limit on the size of files, in blocks of 512 bytes, makes writes fail as a full disk does. */
    @Test
    void aFullDiskLeavesTheEarlierResult() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
        make(SMALL + "files: [tables]\n");
        Map<String, String> earlier = Runs.contents(target());
        List<String> command = new ArrayList<>(List.of("/bin/sh", "-c", "ulimit -f 20; exec \"$@\"", "sh"));
        command.addAll(Runs.process("-XX:-UsePerfData", "make", brief(SMALL).toString(), "--out", target().toString())
                .command());
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isEqualTo(Calotte.PROBLEM);
        assertThat(said).contains("cannot be written");
        assertThat(Runs.contents(target())).isEqualTo(earlier);
        assertThat(names()).containsExactly("brief.yaml", "out");
    }
}
