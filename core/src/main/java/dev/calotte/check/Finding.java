package dev.calotte.check;

/**
 * One thing that is wrong with what was written.
 *
 * @param fault what sort of fault it is
 * @param file the file in which it shows, its parts separated by {@code /}
 * @param place the piece, row or place in the file; empty if the whole file is meant
 * @param what what is wrong, with the values seen, one sentence
 * @param mend what to do about it, one sentence
 */
public record Finding(Fault fault, String file, String place, String what, String mend) {}
