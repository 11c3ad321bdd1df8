package dev.calotte.dxf;

import dev.calotte.document.Shape;
import dev.calotte.export.OutlineReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Reads the lines of DXF files, as {@link DxfOutlines} does. */
public final class DxfOutlineReader implements OutlineReader {

    /** A reader. */
    public DxfOutlineReader() {}

    @Override
    public String format() {
        return "dxf";
    }

    @Override
    public List<Shape> read(InputStream in) throws IOException {
        return DxfOutlines.read(in).all().stream()
                .map(DxfOutlines.Outline::shape)
                .toList();
    }
}
