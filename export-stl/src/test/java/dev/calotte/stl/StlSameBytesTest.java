package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Turkish has letters of its own for i, German a comma in numbers, Arabic digits of its own. */
class StlSameBytesTest {

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "en-US"})
    void bytesDoNotDependOnLocaleOrTimeZone(String tag) throws IOException {
        List<Document> documents = Samples.all();
        Locale.setDefault(Locale.ROOT);
        TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
        List<byte[]> expected = Samples.bytes(documents);
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(Samples.bytes(documents)).containsExactlyElementsOf(expected);
    }
}
