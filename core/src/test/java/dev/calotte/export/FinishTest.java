package dev.calotte.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.contour.Contours;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FinishTest {

    private record Writer(List<String> dialects) implements Exporter {

        @Override
        public String format() {
            return "abc";
        }

        @Override
        public boolean accepts(Document document) {
            return true;
        }

        @Override
        public void write(Document document, OutputStream out) throws IOException {
            out.write(7);
        }
    }

    @Test
    void aFormatIsWrittenInItsUsualDialectUnlessOthersAreAskedFor() {
        Exporter two = new Writer(List.of("plain", "fancy"));
        assertThat(Finish.PLAIN.dialects(two)).containsExactly("plain");
        assertThat(Finish.PLAIN.withDialects("abc", List.of("fancy", "plain")).dialects(two))
                .containsExactly("fancy", "plain");
        assertThat(Finish.PLAIN.dialects(new Writer(List.of()))).isEmpty();
    }

    @Test
    void aDocumentIsOneFileOfItsNameAndFormat() throws IOException {
        List<Rendition> files =
                new Writer(List.of()).renditions(new Drawing("hubs/H1", "", 1, 1, List.of()), Finish.PLAIN);
        assertThat(files).extracting(Rendition::path).containsExactly("abc/hubs/H1.abc");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.get(0).content().writeTo(out);
        assertThat(out.toByteArray()).containsExactly(7);
    }

    @Test
    void aChangeLeavesTheRest() {
        Colour grey = new Colour(128, 128, 128);
        Finish finish = Finish.PLAIN.withLine(0.01).withPage(PageSize.LETTER).withStroke(Operation.SCORE, grey);
        assertThat(finish.page()).isEqualTo(PageSize.LETTER);
        assertThat(finish.lineMm()).hasValue(0.01);
        assertThat(Finish.PLAIN.lineMm()).isEmpty();
        assertThat(finish.stroke(Operation.SCORE)).isEqualTo(grey);
        assertThat(finish.stroke(Operation.CUT_OUTER).hex()).isEqualTo("#ff0000");
        assertThat(Finish.PLAIN.stroke(Operation.SCORE).hex()).isEqualTo("#0000ff");
    }

    @Test
    void whatIsMissingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Finish(Map.of(), OptionalDouble.empty(), Contours.PLAIN, PageSize.A4, Map.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> Finish.PLAIN.withLine(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Finish.PLAIN.withLine(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Finish.PLAIN.withDialects("abc", List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Colour(0, 0, 256));
        assertThatIllegalArgumentException().isThrownBy(() -> new Colour(-1, 0, 0));
    }
}
