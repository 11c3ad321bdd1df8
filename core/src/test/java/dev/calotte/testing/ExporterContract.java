package dev.calotte.testing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every exporter promises; the test of a format extends it with its exporter and documents that it accepts. */
public abstract class ExporterContract {

    private static final String SERVICE = Exporter.class.getName();

    private final Exporter exporter;
    private final List<? extends Document> documents;
    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    /**
     * Names what is tested.
     *
     * @param exporter the exporter
     * @param documents documents that it accepts
     */
    protected ExporterContract(Exporter exporter, List<? extends Document> documents) {
        this.exporter = exporter;
        this.documents = documents;
    }

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @Test
    void isFoundAmongTheInstalledExporters() {
        assertThat(Exporters.installed().all()).hasAtLeastOneElementOfType(exporter.getClass());
    }

    @Test
    void serviceFileAndModuleDescriptorNameTheSameExporters() throws IOException {
        assertThat(inServiceFile())
                .isEqualTo(inModule())
                .contains(exporter.getClass().getName());
    }

    @Test
    void moduleExportsThePackagesOfItsExportersAndNoOther() throws IOException {
        assertThat(module().exports())
                .extracting(ModuleDescriptor.Exports::source)
                .containsExactlyInAnyOrderElementsOf(inModule().stream()
                        .map(name -> name.substring(0, name.lastIndexOf('.')))
                        .distinct()
                        .toList());
    }

    /** Turkish has letters of its own for i, German a comma in numbers, Arabic digits of its own. */
    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "en-US"})
    void bytesDoNotDependOnLocaleOrTimeZone(String tag) throws IOException {
        assertThat(documents).isNotEmpty().allMatch(exporter::accepts);
        Locale.setDefault(Locale.ROOT);
        TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
        List<byte[]> expected = written();
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(written()).containsExactlyElementsOf(expected);
    }

    private List<byte[]> written() throws IOException {
        List<byte[]> all = new ArrayList<>();
        for (Document document : documents) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            exporter.write(document, out);
            all.add(out.toByteArray());
        }
        return all;
    }

    private List<String> inServiceFile() throws IOException {
        try (InputStream file = own("META-INF/services/" + SERVICE)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    private List<String> inModule() throws IOException {
        return module().provides().stream()
                .filter(provided -> provided.service().equals(SERVICE))
                .flatMap(provided -> provided.providers().stream())
                .toList();
    }

    private ModuleDescriptor module() throws IOException {
        try (InputStream descriptor = own("module-info.class")) {
            return ModuleDescriptor.read(descriptor);
        }
    }

    /** A file of the exporter's module, which is not the only one on the class path that has a file of that name. */
    private InputStream own(String file) throws IOException {
        String here = exporter.getClass().getName().replace('.', '/') + ".class";
        String place = exporter.getClass().getResource("/" + here).toString();
        return new URL(place.substring(0, place.length() - here.length()) + file).openStream();
    }
}
