package dev.calotte.svg.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import dev.calotte.export.PageSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/** Words of the file of all pages, where Apache PDFBox sees them, and where the file says that its objects begin. */
class PdfWordsTest {

    private static final double MM = 25.4 / 72;

    private static byte[] file(Label... words) throws IOException {
        PaperPage page = new PaperPage("t", PageSize.A4, List.of(), List.of(words));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(List.of(new Leaf("a", () -> page), new Leaf("b", () -> page)), out);
        return out.toByteArray();
    }

    /** The first and the last letter of the first word on the first page. */
    private static List<TextPosition> letters(byte[] file) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(file)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    letters.addAll(positions);
                }
            };
            stripper.setEndPage(1);
            stripper.getText(pdf);
        }
        return letters;
    }

    @Test
    void wordsBeginEndOrHaveTheirMiddleAtTheirPlace() throws IOException {
        for (Anchor anchor : Anchor.values()) {
            List<TextPosition> letters = letters(file(new Label("Ruler", 100, 200, 3.5, anchor)));
            assertThat(letters).hasSize(5);
            double left = letters.get(0).getXDirAdj() * MM;
            double right = (letters.get(4).getXDirAdj() + letters.get(4).getWidthDirAdj()) * MM;
            double at = anchor == Anchor.START ? left : anchor == Anchor.END ? right : (left + right) / 2;
            assertThat(at).as(anchor.name()).isCloseTo(100, within(0.01));
            double base = 297 - letters.get(0).getYDirAdj() * MM;
            assertThat(base).isCloseTo(200 - 3.5 / 2, within(0.01));
            // capitals are 0.718 of the size
            assertThat(letters.get(0).getYScale() * MM * 0.718).isCloseTo(3.5, within(0.01));
        }
    }

    @Test
    void lettersOfWesternEuropeAreWrittenAndOthersAreNot() throws IOException {
        String text = new String(
                file(new Label(" ~\u00a0\u00ff\u007f\u009f\u0100", 50, 50, 3, Anchor.START)),
                StandardCharsets.ISO_8859_1);
        assertThat(text).contains("( ~\u00a0\u00ff???) Tj");
    }

    /** ISO 32000-1, 7.5.4: the table stands where the end of the file says, and has the place of each object in bytes. */
    @Test
    void tableOfObjectsTellsWhereEachBegins() throws IOException {
        String text = new String(file(new Label("\u00d8 x", 50, 50, 3, Anchor.START)), StandardCharsets.ISO_8859_1);
        Matcher end = Pattern.compile("startxref\n(\\d+)\n%%EOF\n$").matcher(text);
        assertThat(end.find()).isTrue();
        int table = Integer.parseInt(end.group(1));
        assertThat(text.substring(table)).startsWith("xref\n0 8\n0000000000 65535 f \n");
        assertThat(text).contains("/Size 8 /Root 1 0 R");
        Matcher entry = Pattern.compile("(\\d{10}) 00000 n \n").matcher(text);
        for (int object = 1; object <= 7; object++) {
            assertThat(entry.find()).isTrue();
            assertThat(text.substring(Integer.parseInt(entry.group(1)))).startsWith(object + " 0 obj\n");
        }
        assertThat(entry.find()).isFalse();
    }

    @Test
    void eachStreamIsAsLongAsItSays() throws IOException {
        String text = new String(file(new Label("\u00d8 x", 50, 50, 3, Anchor.START)), StandardCharsets.ISO_8859_1);
        Matcher stream = Pattern.compile("/Length (\\d+) >>\nstream\n").matcher(text);
        int streams = 0;
        while (stream.find()) {
            int end = stream.end() + Integer.parseInt(stream.group(1));
            assertThat(text.substring(end)).startsWith("\nendstream");
            streams++;
        }
        assertThat(streams).isEqualTo(2);
    }
}
