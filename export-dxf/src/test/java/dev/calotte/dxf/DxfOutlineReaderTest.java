package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Path;
import dev.calotte.export.OutlineReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

class DxfOutlineReaderTest {

    private static final String SQUARE_IN_INCHES =
            "0 SECTION 2 HEADER 9 $INSUNITS 70 1 0 ENDSEC 0 SECTION 2 ENTITIES 0 LWPOLYLINE 8 BOARD 90 4 70 1 "
                    + "10 0 20 0 10 10 20 0 10 10 20 10 10 0 20 10 0 ENDSEC 0 EOF";

    @Test
    void isFoundByTheEndingOfItsFiles() {
        assertThat(OutlineReader.installed("dxf").orElseThrow()).isInstanceOf(DxfOutlineReader.class);
        assertThat(OutlineReader.installed("svg")).isEmpty();
    }

    @Test
    void serviceFileAndModuleDescriptorNameTheSameReader() throws IOException {
        java.nio.file.Path classes = java.nio.file.Path.of("target/classes");
        String service = OutlineReader.class.getName();
        assertThat(Files.readAllLines(classes.resolve("META-INF/services").resolve(service)))
                .containsExactly(DxfOutlineReader.class.getName());
        try (InputStream in = Files.newInputStream(classes.resolve("module-info.class"))) {
            assertThat(ModuleDescriptor.read(in).provides())
                    .anyMatch(p -> p.service().equals(service)
                            && p.providers().equals(List.of(DxfOutlineReader.class.getName())));
        }
    }

    @Test
    void inchesBecomeMillimetres() throws IOException {
        byte[] bytes = SQUARE_IN_INCHES.replace(' ', '\n').getBytes(StandardCharsets.US_ASCII);
        Path square = (Path)
                new DxfOutlineReader().read(new ByteArrayInputStream(bytes)).get(0);
        assertThat(square.isClosed()).isTrue();
        assertThat(square.x(2)).isEqualTo(254);
        assertThat(square.y(2)).isEqualTo(254);
    }
}
