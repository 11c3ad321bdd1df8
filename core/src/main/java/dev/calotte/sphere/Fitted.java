package dev.calotte.sphere;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** {@link Spacing#FITTED}: checks what is asked, looks for it, and spreads what is found over the sphere. */
final class Fitted {

    /** The most panels on a face, those of a class without mirrors counted twice: 20V. */
    private static final long MOST_PANELS = 400;

    /** The same where few kinds are sought, which takes longer: 12V. */
    private static final long MOST_PANELS_FEW = 144;

    /** Lengths that differ by less were meant to be equal, and are made so. */
    private static final double NEARLY = 1e-8;

    /** Fitting takes longer than all else of a dome, and whoever looks for a size asks for the same again and again. */
    private static final Map<Asked, double[]> FOUND = new ConcurrentHashMap<>();

    private static final int MOST_REMEMBERED = 64;

    private record Asked(Solid solid, Breakdown breakdown, Fitting fitting) {}

    private Fitted() {}

    /** All points of a divided solid: x, y and z of each, not to be changed. */
    static double[] place(Sites sites, Breakdown breakdown, Fitting fitting) {
        Asked asked = new Asked(sites.solid(), breakdown, fitting);
        double[] known = FOUND.get(asked);
        if (known != null) {
            return known;
        }
        double[] found = found(sites, breakdown, fitting);
        if (FOUND.size() >= MOST_REMEMBERED) {
            FOUND.clear();
        }
        FOUND.put(asked, found);
        return found;
    }

    private static double[] found(Sites sites, Breakdown breakdown, Fitting fitting) {
        boolean mirrored = breakdown.classNumber() != 3;
        Web web = new Web(new VertexOrbits(sites, mirrored), sites);
        Aim aim = Aim.width(fitting.strutRatio());
        Fitter fitter = new Fitter(List.of(start(web, sites, Spacing.CHORD), start(web, sites, Spacing.FITTED)));
        Pose best = fitter.best(aim);
        if (aim.flaw(best) > Fitter.KEPT) {
            Pose least = fitter.least(best);
            if (aim.flaw(least) > Fitter.KEPT) {
                throw unreachable(fitting.strutRatio(), StrictMath.exp(least.span()));
            }
            best = Descent.from(least, aim);
        }
        Pose found = fitting.goal() == Fitting.Goal.FEW_KINDS ? fitter.fewest(aim, best) : polished(best, aim);
        return web.orbits().spread(found.points());
    }

    private static Pose start(Web web, Sites sites, Spacing spacing) {
        return Pose.of(web, sites.place(Placement.of(spacing, sites.solid(), sites.lattice())));
    }

    /** What is nearly equal made equal, if nothing is lost by it. */
    private static Pose polished(Pose pose, Aim aim) {
        return new Equalizer(new Kinds(pose, NEARLY).equal())
                .from(pose)
                .filter(equal -> aim.of(equal) <= aim.of(pose) + NEARLY && aim.flaw(equal) <= Fitter.KEPT)
                .orElse(pose);
    }

    /** Checks before any long work that it would not take too long. */
    static void check(Breakdown breakdown, Fitting.Goal goal) {
        boolean few = goal == Fitting.Goal.FEW_KINDS;
        long most = (few ? MOST_PANELS_FEW : MOST_PANELS) / (breakdown.classNumber() == 3 ? 2 : 1);
        if (breakdown.triangulationNumber() > most) {
            throw new CalotteException(
                    Code.TOO_LARGE,
                    "dome.breakdown",
                    breakdown + " makes " + breakdown.triangulationNumber() + " panels on a face of the solid; fitted"
                            + (few ? ", where few kinds are sought," : "") + " is computed up to " + most
                            + " in class " + "I".repeat(breakdown.classNumber()) + ".",
                    "Take a lower breakdown, or spacing: chord.");
        }
    }

    private static CalotteException unreachable(double ratio, double least) {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "dome.strut-ratio",
                String.format(
                        Locale.ROOT,
                        "no spacing was found that keeps the longest strut within %s times the shortest; the least ratio is %.4f.",
                        ratio,
                        least),
                String.format(
                        Locale.ROOT,
                        "Write strut-ratio: %.4f or more, or take another breakdown or solid.",
                        Math.ceil(least * 1e4) / 1e4));
    }
}
