/**
 * The folder of results: {@link dev.calotte.cli.folder.ResultFolder} writes all of it or nothing, and never removes a
 * file that is not its own.
 */
package dev.calotte.cli.folder;
