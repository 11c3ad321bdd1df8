package dev.calotte.solid;

import dev.calotte.document.Bedded;
import dev.calotte.document.Document;
import dev.calotte.document.Rods;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.NumberText;
import java.util.List;
import java.util.stream.Stream;

/**
 * The scale model: as a body, a shell or a frame, on a flat base.
 *
 * <pre>{@code
 * Document model = PrintModels.of("Shelter", dome, PrintSpec.body(50));
 * }</pre>
 */
public final class PrintModels {

    /** Two lines of a nozzle of 0.4 mm. */
    private static final double LEAST_WALL_MM = 0.8;

    /** Thinner rods break when they are taken from the bed; common practice, no source. */
    private static final double LEAST_ROD_MM = 2;

    /** Rods thicker than this share of the shortest strut leave no holes between them. */
    private static final double THICKEST = 0.2;

    private PrintModels() {}

    /**
     * Makes the model.
     *
     * @param title what to call it
     * @param dome the dome; a body or a shell has its openings closed
     * @param spec how it is printed
     * @return the document {@code model}
     * @throws CalotteException if it cannot be printed that way
     */
    public static Document of(String title, Dome dome, PrintSpec spec) {
        check(dome, spec);
        Document whole = switch (spec.shape()) {
            case BODY -> DomeModel.of(title, dome, spec.scale());
            case SHELL -> ShellModel.of(title, dome, spec.scale(), spec.wallMm());
            case FRAME -> frame(title, dome, spec);
        };
        return spec.bed()
                .<Document>map(bed -> new Bedded(
                        whole, bed.lengthMm() - 2 * Bed.MARGIN_MM, bed.widthMm() - 2 * Bed.MARGIN_MM, bed.heightMm()))
                .orElse(whole);
    }

    /**
     * Refuses what cannot be printed; quick, because nothing is made.
     *
     * @param dome the dome
     * @param spec how it is printed
     * @throws CalotteException if it cannot be printed that way
     */
    public static void check(Dome dome, PrintSpec spec) {
        switch (spec.shape()) {
            case BODY -> {}
            case SHELL -> checkShell(dome, spec);
            case FRAME -> checkFrame(dome, spec);
        }
    }

    private static void checkShell(Dome dome, PrintSpec spec) {
        if (spec.wallMm() < LEAST_WALL_MM) {
            throw problem("wall", spec.wallMm(), "less than two lines of a nozzle of 0.4 mm", "Write 0.8 mm or more.");
        }
        if (dome.whole().baseRing().isEmpty()) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "model.solid",
                    "a shell of a whole sphere would be closed all round.",
                    "Write solid: body or solid: frame.");
        }
        double thickest = dome.radiusMm() / spec.scale() / 10;
        if (spec.wallMm() > thickest) {
            throw problem(
                    "wall", spec.wallMm(), "more than a tenth of the model's radius", "Write less, or a larger scale.");
        }
    }

    private static void checkFrame(Dome dome, PrintSpec spec) {
        double shortest =
                dome.struts().stream().mapToDouble(Strut::lengthMm).min().orElseThrow() / spec.scale();
        if (spec.rodMm() < LEAST_ROD_MM) {
            throw problem("rod", spec.rodMm(), "finer than what can be printed", "Write 2 mm or more.");
        }
        if (spec.rodMm() > THICKEST * shortest) {
            throw problem(
                    "rod",
                    spec.rodMm(),
                    "too thick for struts of " + JigSpec.text(shortest) + " at that scale",
                    "Write " + NumberText.fixed(Math.floor(10 * THICKEST * shortest) / 10, 1)
                            + " mm or less, or a larger scale.");
        }
    }

    private static Document frame(String title, Dome dome, PrintSpec spec) {
        double[] xyz = dome.hubs().stream()
                .map(Hub::position)
                .flatMap(p -> Stream.of(p.getX(), p.getY(), p.getZ()))
                .mapToDouble(mm -> mm / spec.scale())
                .toArray();
        int[] ends = dome.struts().stream()
                .flatMap(strut -> List.of(strut.from(), strut.to()).stream())
                .mapToInt(Integer::intValue)
                .toArray();
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 2; i < xyz.length; i += 3) {
            lowest = Math.min(lowest, xyz[i]);
        }
        // half of a rod's half lies below, so that what stands on the bed is nearly as wide as the rod
        return new Rods("model", title, spec.rodMm(), lowest - spec.rodMm() / 4, xyz, ends);
    }

    private static CalotteException problem(String key, double mm, String why, String mend) {
        return new CalotteException(Code.IMPOSSIBLE, "model." + key, JigSpec.text(mm) + " is " + why + ".", mend);
    }
}
