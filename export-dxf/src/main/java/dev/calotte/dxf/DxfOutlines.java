package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/**
 * The flat outlines of a DXF file: {@code POLYLINE}, {@code LWPOLYLINE}, {@code CIRCLE}, and {@code LINE} and {@code ARC}
 * joined where their ends lie within a thousandth of a millimetre, in whatever order and direction they stand. A polyline
 * that ends where it began is closed, with or without its flag. Lengths
 * are brought to millimetres by {@code $INSUNITS}, or by {@code $MEASUREMENT} where there is none; without both they are
 * millimetres.
 *
 * <p>Texts, dimensions, points and hatches are passed over. Everything else that could be part of an outline, such as
 * splines, ellipses, block references and what does not lie flat, is refused, since a part left out would not be missed
 * until it is cut. Files may be up to 32 MiB long and have up to 200,000 corners.
 *
 * @param title what a file of {@link DxfWriter} says that it shows; empty in files of others
 * @param all what was found, in the order of the file, lines and arcs last
 */
public record DxfOutlines(Optional<String> title, List<Outline> all) {

    /**
     * A shape and where it was found.
     *
     * @param layer the name of its layer, as it stands in the file
     * @param shape a path or a circle; its operation is that which the layer is named after, else {@code CUT_OUTER}
     */
    public record Outline(String layer, Shape shape) {

        /**
         * Whether it encloses an area.
         *
         * @return true for circles and closed paths
         */
        public boolean isClosed() {
            return shape instanceof Circle || (shape instanceof Polyline path && path.isClosed());
        }
    }

    /**
     * Copies the list.
     *
     * @param title what the file shows
     * @param all what was found
     */
    public DxfOutlines {
        all = List.copyOf(all);
    }

    /**
     * Reads a file.
     *
     * @param in the bytes of an ASCII DXF file of any release
     * @return its outlines
     * @throws DxfFormatException if it is no such file, or holds what cannot be read
     * @throws IOException if the stream does not give its bytes
     */
    public static DxfOutlines read(InputStream in) throws IOException {
        Gathering gathering = new Gathering();
        FileReading file = new FileReading(new TagReader(in), gathering);
        file.read();
        return new DxfOutlines(file.title(), gathering.outlines(file.millimetres()));
    }
}
