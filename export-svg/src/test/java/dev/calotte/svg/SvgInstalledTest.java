package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class SvgInstalledTest {

    private static final String SERVICE = Exporter.class.getName();

    @Test
    void isFoundAmongTheInstalledExporters() {
        assertThat(Exporters.installed().all()).hasAtLeastOneElementOfType(SvgExporter.class);
    }

    @Test
    void serviceFileAndModuleDescriptorNameTheSameExporter() throws IOException {
        assertThat(inServiceFile()).isEqualTo(inModule()).containsExactly(SvgExporter.class.getName());
    }

    @Test
    void moduleExportsThePackageOfTheExporterAndNoOther() throws IOException {
        assertThat(module().exports())
                .extracting(ModuleDescriptor.Exports::source)
                .containsExactly(SvgExporter.class.getPackageName());
    }

    private static List<String> inServiceFile() throws IOException {
        try (InputStream file = own("META-INF/services/" + SERVICE)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    private static List<String> inModule() throws IOException {
        return module().provides().stream()
                .filter(provided -> provided.service().equals(SERVICE))
                .flatMap(provided -> provided.providers().stream())
                .toList();
    }

    private static ModuleDescriptor module() throws IOException {
        try (InputStream descriptor = own("module-info.class")) {
            return ModuleDescriptor.read(descriptor);
        }
    }

    /** A file of this module, which is not the only one on the class path that has a file of that name. */
    private static InputStream own(String file) throws IOException {
        String here = SvgExporter.class.getName().replace('.', '/') + ".class";
        String place = SvgExporter.class.getResource("/" + here).toString();
        return new URL(place.substring(0, place.length() - here.length()) + file).openStream();
    }
}
