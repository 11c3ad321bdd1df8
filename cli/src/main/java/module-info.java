/** The calotte command. */
module dev.calotte.cli {
    requires dev.calotte.core;
    requires org.apache.commons.text;
    requires org.snakeyaml.engine.v2;
}
