/**
 * Reads a folder of results back ({@code ResultCheck}) and hands what it says to {@code
 * dev.calotte.check}. Files are found by the readers that are installed; no geometry is computed here.
 */
package dev.calotte.cli.check;
