package dev.calotte.choose;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Spacing;
import dev.calotte.stock.Stock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What would make a cover fit its stock. Every answer was tried on the whole cover before it is given.
 *
 * <pre>{@code
 * OptionalDouble radiusMm = Mends.of(spec, joinery, cover, stocks).radiusMm();
 * }</pre>
 *
 * @param turned whether it fits if pieces may be turned against the grain
 * @param seams how many seams a panel has at most if panels may be divided; empty if seams do not help
 * @param spacing another spacing of the same size that fits
 * @param breakdown the next higher breakdown of the same size that fits: of [b, c] the larger number grows, or both that
 *     are equal
 * @param radiusMm the largest radius at which it fits as it is, every panel in one piece
 */
public record Mends(
        boolean turned,
        Optional<Integer> seams,
        Optional<Spacing> spacing,
        Optional<Breakdown> breakdown,
        OptionalDouble radiusMm) {

    /** Fitting a spacing takes long for more, and nobody sews so many kinds for want of a wider roll. */
    private static final int MOST_FITTED = 8;

    private static final int MORE_PARTS = 3;

    /**
     * Tries what helps.
     *
     * @param spec the dome
     * @param joinery how its struts meet its hubs
     * @param cover a cover that does not fit
     * @param stocks what it is cut from
     * @return what helps
     */
    public static Mends of(DomeSpec spec, Joinery joinery, Cover cover, List<Stock> stocks) {
        Trial trial = new Trial(spec, joinery, cover, stocks);
        return new Mends(
                cover.treatment().grain() && trial.with(trial.turned()).fits(),
                trial.with(trial.divided()).seams(),
                trial.spacing(),
                trial.breakdown(),
                trial.radiusMm());
    }

    private record Trial(DomeSpec spec, Joinery joinery, Cover cover, List<Stock> stocks) {

        Trial with(Cover other) {
            return new Trial(spec, joinery, other, stocks);
        }

        Trial with(DomeSpec other) {
            return new Trial(other, joinery, cover, stocks);
        }

        Cover turned() {
            Treatment t = cover.treatment();
            return cover.with(new Treatment(t.reversible(), false, t.split(), t.coded()));
        }

        Cover divided() {
            Treatment t = cover.treatment();
            return cover.with(new Treatment(t.reversible(), t.grain(), Splitting.SEAM, t.coded()));
        }

        CoverFit fit() {
            return CoverFit.of(Patterns.of(Parts.of(Dome.of(spec), joinery), cover), stocks);
        }

        boolean fits() {
            try {
                return fit().misfits().isEmpty();
            } catch (CalotteException impossible) {
                return false;
            }
        }

        Optional<Integer> seams() {
            return fits()
                    ? fit().fits().stream().map(f -> f.pieces().size() - 1).max(Integer::compare)
                    : Optional.empty();
        }

        Optional<Spacing> spacing() {
            return Stream.of(Spacing.CHORD, Spacing.ARC, Spacing.MIDARC, Spacing.FITTED)
                    .filter(other -> other != spec.spacing())
                    .filter(other -> other != Spacing.FITTED || spec.breakdown().frequency() <= MOST_FITTED)
                    .filter(other -> with(spec.withSpacing(other)).fits())
                    .findFirst();
        }

        Optional<Breakdown> breakdown() {
            // the longer way grows, or both, so that mirror images stay mirror images and a class stays itself
            Breakdown own = spec.breakdown();
            int b = own.b() >= own.c() ? 1 : 0;
            int c = own.c() >= own.b() ? 1 : 0;
            return IntStream.rangeClosed(1, MORE_PARTS)
                    .mapToObj(more -> new Breakdown(own.b() + b * more, own.c() + c * more))
                    .filter(other -> with(spec.withBreakdown(other)).fits())
                    .findFirst();
        }

        OptionalDouble radiusMm() {
            try {
                Size size = WidestFor.of(spec, joinery, cover, stocks).size();
                return OptionalDouble.of(size.value());
            } catch (CalotteException impossible) {
                return OptionalDouble.empty();
            }
        }
    }
}
