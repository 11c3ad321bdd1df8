/**
 * The build book: {@link dev.calotte.book.BuildBook} puts what was computed of a dome into the order of the work, as a
 * document that any exporter may set. It computes nothing of its own, and knows no formats.
 */
@NullMarked
package dev.calotte.book;

import org.jspecify.annotations.NullMarked;
