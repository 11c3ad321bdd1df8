package dev.calotte.dxf;

import dev.calotte.export.Reading;
import dev.calotte.export.ShapeReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Reads the lines of DXF files, as {@link DxfOutlines} does. */
public final class DxfShapeReader implements ShapeReader {

    /** A reader. */
    public DxfShapeReader() {}

    @Override
    public String format() {
        return "dxf";
    }

    @Override
    public Reading reading(InputStream in) throws IOException {
        DxfOutlines outlines = DxfOutlines.read(in);
        return new Reading(
                outlines.title(),
                outlines.all().stream()
                        .map(outline -> new Reading.Line(Optional.empty(), outline.shape()))
                        .toList());
    }
}
