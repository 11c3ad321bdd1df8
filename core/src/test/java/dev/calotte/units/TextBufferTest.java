package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TextBufferTest {

    private static String number(double value, int decimals, int least) {
        return new TextBuffer(0).addNumber(value, decimals, least).toString();
    }

    @Test
    void numbersAreThoseOfNumberText() {
        Random random = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            int decimals = 1 + random.nextInt(NumberText.MOST_DECIMALS);
            double value = random.nextGaussian() * StrictMath.pow(10, random.nextInt(24) - 12);
            double rounded = StrictMath.rint(value * 1000) / 1000;
            for (double each : new double[] {value, rounded, rounded + 0.0005}) {
                assertThat(number(each, decimals, 0)).isEqualTo(NumberText.trimmed(each, decimals));
                assertThat(number(each, decimals, decimals)).isEqualTo(NumberText.fixed(each, decimals));
            }
        }
    }

    @Test
    void someZerosMayBeKept() {
        assertThat(number(12, 6, 1)).isEqualTo("12.0");
        assertThat(number(12.5, 6, 1)).isEqualTo("12.5");
        assertThat(number(0.5, 1, 1)).isEqualTo("0.5");
        assertThat(number(1e300, 6, 1)).isEqualTo(NumberText.trimmed(1e300, 6) + ".0");
        assertThat(number(-1e-9, 6, 1)).isEqualTo("0.0");
        assertThat(number(100, 2, 0)).isEqualTo("100");
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> number(Double.NaN, 3, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> number(Double.NEGATIVE_INFINITY, 3, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void textIsWrittenInUtf8() throws IOException {
        String text = "plain, Kuppel\u00e4hnlich \u2300 \ud83d\udd28";
        TextBuffer buffer = new TextBuffer(0).add("before ").add(text).add('!');
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        buffer.drainTo(out);
        assertThat(out.toByteArray()).isEqualTo(("before " + text + "!").getBytes(StandardCharsets.UTF_8));
        assertThat(buffer.size()).isZero();
    }

    @Test
    void wholeNumbersHaveNoPoint() {
        TextBuffer buffer = new TextBuffer(0);
        for (int value : new int[] {0, 9, 10, 999, -7, Integer.MAX_VALUE, Integer.MIN_VALUE}) {
            buffer.addWhole(value).add(' ');
        }
        assertThat(buffer).hasToString("0 9 10 999 -7 2147483647 -2147483648 ");
    }

    @Test
    void partsAreComparedAndCutOff() {
        TextBuffer buffer = new TextBuffer(4).add("12 12 13");
        assertThat(buffer.repeats(0, 2, 3, 5)).isTrue();
        assertThat(buffer.repeats(0, 2, 6, 8)).isFalse();
        buffer.cut(5);
        assertThat(buffer).hasToString("12 12");
        assertThat(new TextBuffer(0).add(buffer).add(buffer)).hasToString("12 1212 12");
        buffer.clear();
        assertThat(buffer).hasToString("");
    }
}
