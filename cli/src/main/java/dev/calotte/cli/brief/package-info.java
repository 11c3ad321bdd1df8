/**
 * The brief: YAML in, a checked {@link dev.calotte.cli.brief.Project} out, or every problem at once with its line and
 * column. {@link dev.calotte.cli.brief.BriefText} is where to enter. The text becomes a small tree of its own, without
 * types, anchors or tags; one reader for each section takes what it knows from that tree, and what is left over is an
 * unknown key. Knows how a dome is specified, and nothing of how it is computed.
 */
package dev.calotte.cli.brief;
