/** Dome geometry, parts and neutral documents; file formats are other modules that provide an exporter. */
module dev.calotte.core {
    requires transitive commons.math3;
    requires static org.jspecify;

    exports dev.calotte.assembly;
    exports dev.calotte.bill;
    exports dev.calotte.book;
    exports dev.calotte.caution;
    exports dev.calotte.check;
    exports dev.calotte.choose;
    exports dev.calotte.compare;
    exports dev.calotte.contour;
    exports dev.calotte.document;
    exports dev.calotte.drawing;
    exports dev.calotte.dome;
    exports dev.calotte.export;
    exports dev.calotte.geometry;
    exports dev.calotte.model;
    exports dev.calotte.nest;
    exports dev.calotte.output;
    exports dev.calotte.parts;
    exports dev.calotte.pattern;
    exports dev.calotte.problem;
    exports dev.calotte.solid;
    exports dev.calotte.sphere;
    exports dev.calotte.stock;
    exports dev.calotte.threads;
    exports dev.calotte.units;

    uses dev.calotte.export.Exporter;
    uses dev.calotte.export.ShapeReader;
    uses dev.calotte.export.SolidReader;
    uses dev.calotte.export.WireReader;
}
