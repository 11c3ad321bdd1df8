package dev.calotte.cli;

import dev.calotte.cli.brief.Project;
import dev.calotte.compare.Comparison;
import dev.calotte.compare.InCommon;

/**
 * A brief and the domes that could stand in its place.
 *
 * @param project what was asked for
 * @param common by what the domes are sized
 * @param comparison the domes, ranked
 */
public record Rivals(Project project, InCommon common, Comparison comparison) {}
