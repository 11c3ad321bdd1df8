package dev.calotte.svg.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.fontbox.afm.AFMParser;
import org.apache.fontbox.afm.FontMetrics;
import org.apache.fontbox.encoding.StandardEncoding;
import org.junit.jupiter.api.Test;

class LettersTest {

    private static FontMetrics helvetica() throws IOException {
        try (InputStream file = AFMParser.class.getResourceAsStream("/org/apache/pdfbox/resources/afm/Helvetica.afm")) {
            return new AFMParser(file).parse();
        }
    }

    /** Against the file of Adobe as Apache PDFBox ships it. The two quotes are other letters in its own encoding. */
    @Test
    void widthsAreThoseOfHelvetica() throws IOException {
        FontMetrics metrics = helvetica();
        double height = 1000 * Letters.CAPITALS;
        for (int c = ' '; c <= '~'; c++) {
            String name = switch (c) {
                case '\'' -> "quotesingle";
                case '`' -> "grave";
                default -> StandardEncoding.INSTANCE.getName(c);
            };
            assertThat(Letters.widthMm(Character.toString(c), height))
                    .as(name)
                    .isCloseTo(metrics.getCharacterWidth(name), within(1e-6));
        }
        assertThat(metrics.getCapHeight()).isEqualTo(718);
    }

    @Test
    void linesAreBrokenBetweenWords() {
        List<String> lines = Letters.wrapped("Cut off dotted edges, lay the page on the others", 2.5, 40);
        assertThat(lines).hasSizeGreaterThan(1).allMatch(line -> Letters.widthMm(line, 2.5) <= 40);
        assertThat(String.join(" ", lines)).isEqualTo("Cut off dotted edges, lay the page on the others");
    }

    @Test
    void whatIsTooLongEndsInDots() {
        assertThat(Letters.fitted("short", 2.5, 40)).isEqualTo("short");
        assertThat(Letters.fitted("\ud83d\ude00".repeat(20), 2.5, 40)).matches("(\ud83d\ude00)+\\.\\.\\.");
    }
}
