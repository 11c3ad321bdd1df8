package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Drawing;
import dev.calotte.export.PageSize;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The file of all pages, read by Apache PDFBox. */
class TemplatePdfTest {

    private static final double ROUNDING_MM = 2e-4;

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void holdsTheOverviewAndEveryPageInOrderWithTheSameLinesAndWords(PageSize size) throws IOException {
        Drawing drawing = Printed.triangle("panels/P1", 500);
        Map<String, Document> pages = Printed.pages(drawing, size);
        try (PDDocument pdf = Loader.loadPDF(Printed.files(drawing, size).get("P1.pdf"))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(pages.size());
            int number = 0;
            for (Document page : pages.values()) {
                PDPage printed = pdf.getPage(number++);
                assertThat(printed.getMediaBox().getWidth())
                        .isCloseTo((float) (size.widthMm() / 25.4 * 72), within(1e-3f));
                assertThat(printed.getMediaBox().getHeight())
                        .isCloseTo((float) (size.heightMm() / 25.4 * 72), within(1e-3f));
                assertThat(words(printed)).isEqualTo(page.select("text").eachText());
                same(sides(printed), page, size);
            }
        }
    }

    private static void same(List<double[]> printed, Document page, PageSize size) {
        List<double[]> drawn = new ArrayList<>();
        for (Element path : page.select("path")) {
            drawn.addAll(Printed.sides(path, size));
        }
        assertThat(printed).hasSameSizeAs(drawn);
        for (int i = 0; i < drawn.size(); i++) {
            assertThat(printed.get(i)).containsExactly(drawn.get(i), within(ROUNDING_MM));
        }
    }

    private static List<double[]> sides(PDPage page) throws IOException {
        List<double[]> sides = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        double[] first = {0, 0};
        double[] last = {0, 0};
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                numbers.add((double) number.floatValue());
            } else if (token instanceof Operator operator) {
                switch (operator.getName()) {
                    case "cm" ->
                        assertThat(numbers.subList(0, 4))
                                .allSatisfy(n -> assertThat(n * (72 / 25.4 - n)).isCloseTo(0, within(1e-6)));
                    case "m" -> {
                        first = new double[] {numbers.get(0), numbers.get(1)};
                        last = first;
                    }
                    case "l" -> {
                        sides.add(new double[] {last[0], last[1], numbers.get(0), numbers.get(1)});
                        last = new double[] {numbers.get(0), numbers.get(1)};
                    }
                    case "h" -> sides.add(new double[] {last[0], last[1], first[0], first[1]});
                    default -> {}
                }
                numbers.clear();
            }
        }
        return sides;
    }

    private static List<String> words(PDPage page) throws IOException {
        return new PDFStreamParser(page)
                .parse().stream()
                        .filter(COSString.class::isInstance)
                        .map(token -> ((COSString) token).getString())
                        .toList();
    }

    @Test
    void lettersAreOfTheTypefaceThatEveryReaderHas() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(
                Printed.files(Printed.triangle("hubs/H1", 90), PageSize.A4).get("H1.pdf"))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            var font = pdf.getPage(0).getResources().getCOSObject().getCOSDictionary(COSName.FONT);
            assertThat(font.getCOSDictionary(COSName.getPDFName("F1")).getNameAsString(COSName.BASE_FONT))
                    .isEqualTo("Helvetica");
            assertThat(pdf.getDocument().getTrailer().containsKey(COSName.INFO))
                    .as("dates and names")
                    .isFalse();
        }
    }

    @Test
    void lettersThatTheTypefaceHasNotBecomeQuestionMarks() throws IOException {
        Drawing whole = Printed.triangle("panels/P1", 90);
        Drawing named = new Drawing(whole.name(), "(a\\b) \u00d8 \ud83d\ude00 \u0645", 7000, 7000, whole.parts());
        try (PDDocument pdf = Loader.loadPDF(Printed.files(named, PageSize.A4).get("P1.pdf"))) {
            assertThat(words(pdf.getPage(0))).contains("(a\\b) \u00d8 ? ?");
        }
    }
}
