package dev.calotte.nest;

/** How a part may be laid: face down or not, and turned. */
record Stand(boolean mirrored, double turnRad) {}
