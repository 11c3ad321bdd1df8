/**
 * What belongs to a dome: {@link dev.calotte.output.Documents} lists every document that is written for it. The top of
 * the house; nothing in this module knows it.
 */
@NullMarked
package dev.calotte.output;

import org.jspecify.annotations.NullMarked;
