/**
 * The build book as one page of HTML that asks nobody for anything: {@link dev.calotte.svg.book.BookExporter}. The look and
 * what the page does by itself stand in {@code book.css}, {@code print.css} and the scripts beside the classes; this package
 * says what is on the page. It knows books and pictures, never a dome.
 */
@NullMarked
package dev.calotte.svg.book;

import org.jspecify.annotations.NullMarked;
