package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Polyline;
import dev.calotte.export.ShapeReader;
import dev.calotte.export.WireReader;
import dev.calotte.testing.Services;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class DxfShapeReaderTest {

    private static final String SQUARE_IN_INCHES =
            "0 SECTION 2 HEADER 9 $INSUNITS 70 1 0 ENDSEC 0 SECTION 2 ENTITIES 0 LWPOLYLINE 8 BOARD 90 4 70 1 "
                    + "10 0 20 0 10 10 20 0 10 10 20 10 10 0 20 10 0 ENDSEC 0 EOF";

    @Test
    void isFoundByTheEndingOfItsFiles() {
        assertThat(ShapeReader.installed("dxf").orElseThrow()).isInstanceOf(DxfShapeReader.class);
        assertThat(ShapeReader.installed("svg")).isEmpty();
    }

    @Test
    void serviceFileAndModuleDescriptorNameTheSameReaders() throws IOException {
        Services services = new Services(DxfShapeReader.class);
        assertThat(services.inServiceFile(ShapeReader.class))
                .isEqualTo(services.inDescriptor(ShapeReader.class))
                .containsExactly(DxfShapeReader.class.getName());
        assertThat(services.inServiceFile(WireReader.class))
                .isEqualTo(services.inDescriptor(WireReader.class))
                .containsExactly(DxfWireReader.class.getName());
    }

    @Test
    void inchesBecomeMillimetres() throws IOException {
        byte[] bytes = SQUARE_IN_INCHES.replace(' ', '\n').getBytes(StandardCharsets.US_ASCII);
        Polyline square = (Polyline)
                new DxfShapeReader().read(new ByteArrayInputStream(bytes)).get(0);
        assertThat(square.isClosed()).isTrue();
        assertThat(square.x(2)).isEqualTo(254);
        assertThat(square.y(2)).isEqualTo(254);
    }
}
