/** The calotte command. */
module dev.calotte.cli {
    requires com.fasterxml.jackson.core;
    requires dev.calotte.core;
    requires dev.calotte.export.dxf;
    requires dev.calotte.export.stl;
    requires dev.calotte.export.svg;
    requires info.picocli;
    requires java.xml;
    requires org.apache.commons.text;
    requires org.snakeyaml.engine.v2;

    opens dev.calotte.cli to
            info.picocli;
}
