/** The calotte command. */
module dev.calotte.cli {
    requires dev.calotte.core;
}
