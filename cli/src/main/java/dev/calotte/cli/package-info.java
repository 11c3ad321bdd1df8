/**
 * The {@code calotte} command: {@link dev.calotte.cli.Calotte} and its subcommands. Reads a brief, calls the core and
 * writes files; no geometry is computed in this module.
 */
package dev.calotte.cli;
