package dev.calotte.solid;

import dev.calotte.document.StrutSection;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the jigs are made for. The limits are those of printing with a nozzle of 0.4 mm: a wall of two lines, pins and
 * holes of 2 mm and more; common practice, no source.
 *
 * @param strut the section of the struts; not needed where panels are framed with mitred rails
 * @param clearanceMm what is left free on either side of a strut
 * @param wallMm how thick walls are
 * @param bed what the printer takes
 * @param sockets hubs that struts are put into, if they are wanted
 */
public record JigSpec(
        Optional<StrutSection> strut, double clearanceMm, double wallMm, Bed bed, Optional<Sockets> sockets) {

    /** For struts that are laid in and taken out; common practice, no source. */
    public static final double USUAL_CLEARANCE_MM = 0.3;

    /** For parts that are worked on; common practice, no source. */
    public static final double USUAL_WALL_MM = 2.4;

    /** Two lines of a nozzle of 0.4 mm. */
    public static final double LEAST_WALL_MM = 0.8;

    private static final double LEAST_STRUT_MM = 2;
    private static final double MOST_CLEARANCE_MM = 2;
    private static final double LEAST_BED_MM = 100;

    /**
     * Hubs for scale models and light shades.
     *
     * @param strut the section of dowels or tubes
     * @param depthMm how deep they sit in the hubs
     * @param scale how many times smaller the model is; 1 for the dome itself
     */
    public record Sockets(StrutSection strut, double depthMm, double scale) {}

    /**
     * What cannot be printed.
     *
     * @return the problems, their places below {@code jigs}; possibly none
     */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        if (wallMm < LEAST_WALL_MM) {
            problems.add(problem(
                    "wall",
                    text(wallMm) + " is less than two lines of a nozzle of 0.4 mm.",
                    "Write 0.8 mm or more; 2.4 mm is usual."));
        }
        if (clearanceMm > MOST_CLEARANCE_MM) {
            problems.add(problem(
                    "clearance",
                    text(clearanceMm) + " on either side holds nothing at an angle.",
                    "Write 2 mm or less; 0.3 mm is usual."));
        }
        strut.ifPresent(section -> addThin("strut", section, problems));
        sockets.ifPresent(wanted -> addThin("sockets.strut", wanted.strut(), problems));
        if (Math.min(bed.lengthMm(), bed.widthMm()) < LEAST_BED_MM || bed.heightMm() < LEAST_BED_MM / 2) {
            problems.add(problem(
                    "bed",
                    text(bed.lengthMm()) + " x " + text(bed.widthMm()) + " x " + text(bed.heightMm())
                            + " takes no jig: it has to be 100 mm x 100 mm and 50 mm high at least.",
                    "Write length, width and height of the printer's room, as in bed: [220 mm, 220 mm, 250 mm]."));
        }
        return List.copyOf(problems);
    }

    private static void addThin(String key, StrutSection section, List<Problem> problems) {
        double least = Math.min(section.widthMm(), section.depthMm());
        if (least < LEAST_STRUT_MM) {
            problems.add(problem(
                    key, text(least) + " is finer than holes that can be printed.", "Write a strut of 2 mm or more."));
        }
    }

    private static Problem problem(String key, String what, String mend) {
        return new Problem(Code.IMPOSSIBLE, "jigs." + key, what, mend);
    }

    static String text(double mm) {
        return NumberText.trimmed(mm, 1) + " mm";
    }
}
