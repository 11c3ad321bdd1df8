/** Writes SVG files and the build book, and reads lines from SVG files. */
module dev.calotte.export.svg {
    requires transitive dev.calotte.core;
    requires java.xml;
    requires org.jsoup;
    requires static org.jspecify;

    exports dev.calotte.svg;
    exports dev.calotte.svg.book;

    provides dev.calotte.export.Exporter with
            dev.calotte.svg.SvgExporter,
            dev.calotte.svg.book.BookExporter;
    provides dev.calotte.export.ShapeReader with
            dev.calotte.svg.read.SvgShapeReader;
}
