package dev.calotte.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Wireframe;
import java.io.OutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExportersTest {

    private static final Document DRAWING = new Drawing("d", "", 1, 1, List.of());
    private static final Document WIREFRAME = new Wireframe("w", "", List.of());

    private record Writer(String format, Class<? extends Document> sort) implements Exporter {

        @Override
        public boolean accepts(Document document) {
            return sort.isInstance(document);
        }

        @Override
        public void write(Document document, OutputStream out) {}
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
    void coreItselfInstallsNone() {
        assertThat(Exporters.installed().all()).isEmpty();
    }
}
