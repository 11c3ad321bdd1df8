package dev.calotte.dome;

import java.util.Locale;

/**
 * What a level base changed. Each hub of the base ring slides along its meridian: it stays on the sphere and keeps its
 * bearing.
 *
 * @param heightMm where all base hubs stand now, over the centre of the sphere: the mean of where they stood
 * @param spreadBeforeMm how much higher the highest of them stood than the lowest
 * @param movedHubs how many hubs moved by more than rounding (1e-9 of the radius)
 * @param largestMoveMm the longest way that one of them slid, along the arc of its meridian
 */
public record Leveling(double heightMm, double spreadBeforeMm, int movedHubs, double largestMoveMm) {

    /** What changed, in a sentence. */
    String note() {
        if (movedHubs == 0) {
            return "Base level: the base hubs stand at one height as they are; none moves.";
        }
        return String.format(
                Locale.ROOT,
                "Base level: %d hubs slide by up to %.1f mm along their meridians to one height; they stood up to"
                        + " %.1f mm apart.",
                movedHubs,
                largestMoveMm,
                spreadBeforeMm);
    }
}
