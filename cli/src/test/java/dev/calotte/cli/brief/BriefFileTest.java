package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BriefFileTest {

    @TempDir
    private Path folder;

    @Test
    void missingFilesAndFoldersAreRefused() {
        assertThat(refusal(folder.resolve("none.yaml")).code()).isEqualTo(Code.FILE);
        assertThat(refusal(folder.resolve("none.yaml")).what()).isEqualTo("there is no such file.");
        assertThat(refusal(folder).what()).isEqualTo("this is not a file.");
    }

    @Test
    void filesUpToTheLimitAreRead() throws IOException {
        String filling = "#" + "x".repeat(BriefFile.MOST_BYTES - Briefs.LEAST.length() - 1);
        assertThat(BriefText.read(file((Briefs.LEAST + filling).getBytes(StandardCharsets.UTF_8)))
                        .project())
                .isEqualTo(Briefs.of(Briefs.LEAST).project());
    }

    @Test
    void aLargerFileIsRefused() throws IOException {
        assertThat(refusal(file(new byte[BriefFile.MOST_BYTES + 1])).code()).isEqualTo(Code.FILE);
        Problem problem = refusal(file(new byte[1 << 20]));
        assertThat(problem.code()).isEqualTo(Code.FILE);
        assertThat(problem.what()).contains("256 KiB");
    }

    @Test
    void whatIsNotUtf8IsRefusedWithItsLine() throws IOException {
        Problem problem = refusal(file("title: a\ntitle: Kühlhaus\n".getBytes(StandardCharsets.ISO_8859_1)));
        assertThat(problem.code()).isEqualTo(Code.UNREADABLE);
        assertThat(problem.where()).endsWith("brief.yaml:2");
        assertThat(problem.what()).contains("not UTF-8");
        assertThat(refusal(file("title: ü".substring(0, 8).getBytes(StandardCharsets.UTF_8), 8))
                        .code())
                .isEqualTo(Code.UNREADABLE);
    }

    @Test
    void binariesAreRefusedWithTheirLine() throws IOException {
        Problem problem = refusal(file("title: a\nb\0".getBytes(StandardCharsets.UTF_8)));
        assertThat(problem.code()).isEqualTo(Code.UNREADABLE);
        assertThat(problem.where()).endsWith("brief.yaml:2");
        assertThat(refusal(file("title: \u001b[1m".getBytes(StandardCharsets.UTF_8)))
                        .code())
                .isEqualTo(Code.UNREADABLE);
        assertThat(refusal(file("title: a".getBytes(StandardCharsets.UTF_16))).code())
                .isEqualTo(Code.UNREADABLE);
    }

    @Test
    void aByteOrderMarkDoesNotShiftColumns() throws IOException {
        BriefText brief = BriefText.read(file("\ufeffx: 1\n".getBytes(StandardCharsets.UTF_8)));
        assertThat(brief.explain(Briefs.problems(brief).get(0)).get(0)).contains("brief.yaml:1:1  x: ");
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("brief.yaml"), bytes);
    }

    private Path file(byte[] bytes, int length) throws IOException {
        return file(Arrays.copyOf(bytes, length));
    }

    private static Problem refusal(Path path) {
        CalotteException thrown = catchThrowableOfType(CalotteException.class, () -> BriefText.read(path));
        assertThat(thrown.problems()).hasSize(1);
        return thrown.problems().get(0);
    }
}
