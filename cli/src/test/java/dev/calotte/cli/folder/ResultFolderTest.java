package dev.calotte.cli.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.problem.CalotteException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResultFolderTest {

    @TempDir
    private Path parent;

    @Test
    void aFailedRunLeavesTheEarlierResultAndNothingElse() throws IOException {
        write("first");
        assertThatThrownBy(() -> ResultFolder.write(target(), folder -> {
                    add(folder, "second");
                    throw new IOException("disk full");
                }))
                .isInstanceOf(CalotteException.class)
                .hasMessageContaining("disk full");
        assertThat(Files.readString(target().resolve("dome.json"))).isEqualTo("first");
        assertThat(names()).containsExactly("out");
    }

    @Test
    void aFaultInTheProgramLeavesNothingBehindEither() throws IOException {
        assertThatThrownBy(() -> ResultFolder.write(target(), folder -> {
                    throw new IllegalStateException("a fault");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(names()).isEmpty();
    }

    @Test
    void aFolderWithOtherFilesIsRefused() throws IOException {
        write("first");
        Files.writeString(target().resolve("notes.txt"), "mine");
        assertThatThrownBy(() -> write("second"))
                .isInstanceOf(CalotteException.class)
                .hasMessageContaining("notes.txt");
        assertThat(Files.readString(target().resolve("notes.txt"))).isEqualTo("mine");
        assertThat(Files.readString(target().resolve("dome.json"))).isEqualTo("first");
    }

    @Test
    void aBuildBookIsOneOfTheResults() throws IOException {
        ResultFolder.write(target(), folder -> folder.add("build-book.html", out -> out.write('b')));
        write("second");
        assertThat(target()).isDirectoryNotContaining("glob:**.html");
    }

    @Test
    void aFileInThePlaceOfTheFolderIsRefused() throws IOException {
        Files.writeString(target(), "mine");
        assertThatThrownBy(() -> write("x"))
                .isInstanceOf(CalotteException.class)
                .hasMessageContaining("not a folder");
        assertThat(Files.readString(target())).isEqualTo("mine");
    }

    @Test
    void anEarlierResultThatAKilledRunSetAsideComesBack() throws IOException {
        write("first");
        Files.move(target(), parent.resolve(".out.earlier"));
        assertThatThrownBy(() -> ResultFolder.write(target(), folder -> {
                    throw new IOException("disk full");
                }))
                .isInstanceOf(CalotteException.class);
        assertThat(Files.readString(target().resolve("dome.json"))).isEqualTo("first");
        assertThat(names()).containsExactly("out");
    }

    @Test
    void theLeftoverOfAKilledRunIsNotInTheWay() throws IOException {
        Files.createDirectory(parent.resolve(".out.new-1"));
        write("first");
        assertThat(Files.readString(target().resolve("dome.json"))).isEqualTo("first");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../dome.json", "notes.txt", "tables/../../x.csv", "dxf/../../x.dxf", "/etc/passwd"})
    void namesOutsideTheResultAreRefused(String name) {
        assertThatThrownBy(() -> ResultFolder.write(target(), folder -> folder.add(name, out -> out.write(1))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private void write(String text) {
        ResultFolder.write(target(), folder -> add(folder, text));
    }

    private static void add(ResultFolder folder, String text) throws IOException {
        folder.add("dome.json", out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    private Path target() {
        return parent.resolve("out");
    }

    private String[] names() {
        return parent.toFile().list();
    }
}
