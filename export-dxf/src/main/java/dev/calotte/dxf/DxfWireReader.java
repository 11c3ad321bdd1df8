package dev.calotte.dxf;

import dev.calotte.document.Wireframe;
import dev.calotte.export.WireReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/**
 * Reads {@code POINT}, {@code LINE} and {@code 3DFACE} in space from DXF files; lengths are brought to millimetres as
 * {@link DxfOutlines} does. Texts and dimensions are passed over. Everything else is refused, and so are faces of four
 * corners and layers whose names a {@link Wireframe.Layer} cannot have. Files may be up to 32 MiB long and have up to
 * 200,000 elements.
 */
public final class DxfWireReader implements WireReader {

    /** A reader. */
    public DxfWireReader() {}

    @Override
    public String format() {
        return "dxf";
    }

    @Override
    public List<Wireframe.Layer> read(InputStream in) throws IOException {
        WireGathering gathering = new WireGathering();
        FileReading file = new FileReading(new TagReader(in), gathering);
        file.read();
        return gathering.layers(file.millimetres());
    }
}
