/** A project that depends on Calotte. */
module example {
    requires dev.calotte.core;
}
