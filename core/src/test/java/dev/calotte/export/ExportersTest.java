package dev.calotte.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Wireframe;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportersTest {

    private static final Document DRAWING = new Drawing("d", "", 1, 1, List.of());
    private static final Document WIREFRAME = new Wireframe("w", "", List.of());

    private record Writer(String format, Class<? extends Document> sort) implements Exporter {

        @Override
        public boolean accepts(Document document) {
            return sort.isInstance(document);
        }

        @Override
        public void write(Document document, OutputStream out) throws IOException {
            out.write((format + " " + document.name()).getBytes(StandardCharsets.UTF_8));
        }
    }

    @Test
    void exportersComeInTheOrderOfTheirFormats() {
        Exporter svg = new Writer("svg", Drawing.class);
        Exporter dxf = new Writer("dxf", Document.class);
        assertThat(new Exporters(List.of(svg, dxf)).all()).containsExactly(dxf, svg);
    }

    @Test
    void onlyThoseThatAcceptADocumentAreOffered() {
        Exporter svg = new Writer("svg", Drawing.class);
        Exporter dxf = new Writer("dxf", Document.class);
        Exporters exporters = new Exporters(List.of(svg, dxf));
        assertThat(exporters.accepting(DRAWING)).containsExactly(dxf, svg);
        assertThat(exporters.accepting(WIREFRAME)).containsExactly(dxf);
    }

    @Test
    void twoOfOneFormatAreRefused() {
        List<Exporter> same = List.of(new Writer("svg", Drawing.class), new Writer("svg", Wireframe.class));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Exporters(same))
                .withMessageContaining("both claim the format svg");
    }

    @Test
    void theEndingOfAFileChoosesTheFormat(@TempDir Path folder) throws IOException {
        Exporters exporters =
                new Exporters(List.of(new Writer("svg", Drawing.class), new Writer("dxf", Document.class)));
        exporters.write(DRAWING, folder.resolve("a.v2.DXF"));
        exporters.write(DRAWING, folder.resolve("new/a.svg"));
        assertThat(folder.resolve("a.v2.DXF")).hasContent("dxf d");
        assertThat(folder.resolve("new/a.svg")).hasContent("svg d");
    }

    @Test
    void aFormatThatIsNotInstalledIsRefusedWithThoseThatAre(@TempDir Path folder) {
        Exporters exporters = new Exporters(List.of(new Writer("svg", Drawing.class)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> exporters.write(DRAWING, folder.resolve("a.dxf")))
                .withMessageContainingAll("no exporter of the format dxf", "only: svg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Exporters(List.of()).of("dxf"))
                .withMessageContaining("only: none");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aDocumentThatTheFormatCannotSayLeavesNoFile(@TempDir Path folder) {
        Exporters exporters = new Exporters(List.of(new Writer("svg", Drawing.class)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> exporters.write(WIREFRAME, folder.resolve("a.svg")))
                .withMessageContaining("does not write a Wireframe");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void coreItselfInstallsNone() {
        assertThat(Exporters.installed().all()).isEmpty();
    }
}
