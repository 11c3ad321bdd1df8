package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Weight;
import dev.calotte.document.Polyline;
import dev.calotte.testing.CountingStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SvgLengthTest {

    private static final int TRIANGLES = 200_000;

    @Test
    void longCutSheetGoesOutInSmallPieces() throws IOException {
        List<Drawing.Part> parts = IntStream.range(0, TRIANGLES)
                .mapToObj(i -> new Drawing.Part(
                        "P" + i,
                        "",
                        List.of(Polyline.closed(Operation.CUT_OUTER, x(i), y(i), x(i) + 1, y(i), x(i), y(i) + 1))))
                .toList();
        goesOutInSmallPieces(new Drawing("long", "", 1000, 1000, parts));
    }

    @Test
    void longPageGoesOutInSmallPieces() throws IOException {
        List<Item> items = IntStream.range(0, TRIANGLES)
                .<Item>mapToObj(i -> new Facet(
                        List.of(x(i), y(i), x(i) + 1, y(i), x(i), y(i) + 1), i % 30, Hatch.NONE, Weight.FINE, "P" + i))
                .toList();
        goesOutInSmallPieces(new Picture("long", "", 1000, 1000, items));
    }

    private static void goesOutInSmallPieces(Document document) throws IOException {
        CountingStream out = new CountingStream();
        new SvgExporter().write(document, out);
        assertThat(out.count()).isGreaterThan(100L * TRIANGLES);
        assertThat(out.largest()).isLessThan(1_000_000);
    }

    private static double x(int i) {
        return 2 * (i % 500) + 0.125;
    }

    private static double y(int i) {
        return 2 * Math.floorDiv(i, 500);
    }
}
