/**
 * Paper templates: a drawing at full size on the pages of a home printer. Entry type:
 * {@link dev.calotte.svg.paper.Template}. Makes pages of lines and words, and a PDF file of them; how a page looks as SVG
 * is said above. Knows neither domes nor XML.
 */
package dev.calotte.svg.paper;
