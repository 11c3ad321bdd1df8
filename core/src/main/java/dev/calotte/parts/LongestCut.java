package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Sizes a dome by its longest strut as it is cut. Every strut is a fixed part of the radius long and loses at its ends
 * what does not depend on the radius, so each strut gives the radius at which it would be cut that long, and the least
 * of these is the one.
 */
public final class LongestCut {

    private static final double ANY_RADIUS_MM = 1000;

    private LongestCut() {}

    /**
     * Finds the size. Kinds are not merged for it: where the joinery merges, the longest kind may come out shorter by up
     * to half of what is merged.
     *
     * @param spec the dome; its size is not looked at
     * @param joinery how its struts end
     * @param wantedMm how long the longest cut strut shall be, above 0
     * @return the size: by the longest strut from node to node where all struts lose the same, otherwise by the radius
     * @throws CalotteException if what stays of the sphere depends on the radius and struts lose unequal lengths, no gap
     *     is given for a hub, or the flattened ends alone are as long
     */
    public static Size size(DomeSpec spec, Joinery joinery, double wantedMm) {
        OptionalDouble loss = equalLossMm(joinery);
        if (loss.isPresent()) {
            return new Size(Measure.LONGEST_STRUT, wantedMm + loss.getAsDouble());
        }
        if (spec.keep() instanceof Keep.AboveHeight above && above.heightMm() != 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "size.longest-cut",
                    "with keep: { above: ... } the hubs depend on the size, and here the struts' ends on the hubs.",
                    "Give longest-strut or radius, or keep a fraction of the rows.");
        }
        Dome dome = Dome.of(spec.withSize(Size.radius(ANY_RADIUS_MM)));
        double[] endMm = HubEnds.mm(dome.skeleton(), joinery);
        checkRoom(joinery.ends(), endMm, wantedMm);
        return Size.radius(dome.struts().stream()
                .mapToDouble(strut -> radiusMm(strut, endMm, joinery.ends(), wantedMm))
                .min()
                .orElseThrow());
    }

    /** What every strut loses, where all lose the same whatever their length. */
    private static OptionalDouble equalLossMm(Joinery joinery) {
        if (joinery.ends() instanceof Ends.Flattened) {
            return OptionalDouble.empty();
        }
        return joinery.hubGaps().isEmpty()
                ? OptionalDouble.of(0)
                : joinery.hubGaps().get().everywhereMm().stream()
                        .map(mm -> 2 * mm)
                        .findFirst();
    }

    /** Two flats alone are no strut, and unequal gaps set the bends apart besides. */
    private static void checkRoom(Ends ends, double[] endMm, double wantedMm) {
        if (ends instanceof Ends.Flattened flat) {
            DoubleSummaryStatistics gaps = Arrays.stream(endMm).summaryStatistics();
            double least = 2 * flat.flattenMm() + gaps.getMax() - gaps.getMin();
            if (wantedMm <= least) {
                throw new CalotteException(
                        Code.IMPOSSIBLE,
                        "size.longest-cut",
                        String.format(Locale.ROOT, "%.1f mm leave nothing between the flattened ends.", wantedMm),
                        String.format(Locale.ROOT, "Give more than %.1f mm, or flatten less.", least));
            }
        }
    }

    private static double radiusMm(Strut strut, double[] endMm, Ends ends, double wantedMm) {
        double near = Math.min(endMm[strut.from()], endMm[strut.to()]);
        double far = Math.max(endMm[strut.from()], endMm[strut.to()]);
        StrutCut cut = new StrutCut(ends, near, far, strut.axialAngleRad());
        return cut.lengthMm(wantedMm) / strut.lengthMm() * ANY_RADIUS_MM;
    }
}
