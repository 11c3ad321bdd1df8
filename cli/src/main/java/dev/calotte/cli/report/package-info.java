/**
 * What is said about a design in words and numbers: {@code dome.json}, the tables and the page that {@code show}
 * prints. No geometry is computed here.
 */
package dev.calotte.cli.report;
