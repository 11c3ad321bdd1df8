package dev.calotte.testing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every exporter promises; the test of a format extends it with its exporter and documents that it accepts. */
public abstract class ExporterContract {

    private final Exporter exporter;
    private final List<? extends Document> documents;
    private final Services services;
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
        this.services = new Services(exporter.getClass());
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
        assertThat(services.inServiceFile(Exporter.class))
                .isEqualTo(services.inDescriptor(Exporter.class))
                .contains(exporter.getClass().getName());
    }

    @Test
    void moduleExportsThePackagesOfItsExportersAndNoOther() throws IOException {
        assertThat(services.descriptor().exports())
                .extracting(ModuleDescriptor.Exports::source)
                .containsExactlyInAnyOrderElementsOf(services.inDescriptor(Exporter.class).stream()
                        .map(name -> name.substring(0, name.lastIndexOf('.')))
                        .distinct()
                        .toList());
    }

    @Test
    void exportedPackagesSayThatNothingIsNull() throws IOException, ClassNotFoundException {
        for (ModuleDescriptor.Exports exported : services.descriptor().exports()) {
            Class<?> info = Class.forName(exported.source() + ".package-info");
            assertThat(info.getAnnotation(NullMarked.class))
                    .as(exported.source())
                    .isNotNull();
        }
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
}
