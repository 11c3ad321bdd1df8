package dev.calotte.compare;

import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.stock.Bar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A candidate in its size with all that is known of it but how its pieces lie on sheets and rolls.
 *
 * @param candidate the candidate
 * @param spec the same in its size
 * @param parts its parts
 * @param fits its covers, in their order
 * @param bars its bars, if the request names some
 */
record Draft(Candidate candidate, DomeSpec spec, Parts parts, List<CoverFit> fits, Optional<BarUse> bars) {

    /** The best plan for more kinds of cuts takes long; the own dome has the plan that is made for it elsewhere. */
    private static final int MOST_PLANNED = 10;

    /** The exception says why the candidate cannot be built. */
    static Draft of(Request request, Candidate candidate) {
        DomeSpec spec = new CandidateSize(request).of(candidate);
        Parts parts = Parts.of(Dome.of(spec), request.joinery());
        List<CoverFit> fits = request.covers().stream()
                .map(cladding -> CoverFit.of(Patterns.of(parts, cladding.cover()), cladding.stocks()))
                .toList();
        return new Draft(candidate, spec, parts, fits, bars(request, candidate, parts));
    }

    private static Optional<BarUse> bars(Request request, Candidate candidate, Parts parts) {
        List<Bar> bars = request.bars();
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        List<Cut> cuts = BarNeeds.of(parts);
        return Optional.of(
                candidate.own() || cuts.size() <= MOST_PLANNED
                        ? BarUse.of(BarPlan.of(cuts, bars), bars)
                        : BarEstimate.of(cuts, bars));
    }

    boolean fitsStock() {
        return fits.stream().allMatch(fit -> fit.misfits().isEmpty());
    }

    /** How many pieces have to be laid. */
    long pieces() {
        return fits.stream()
                .filter(fit -> !fit.stocks().isEmpty())
                .flatMap(fit -> fit.fits().stream())
                .mapToLong(fit -> (long) fit.pattern().count() * fit.pieces().size())
                .sum();
    }

    /** Lays its covers. The exception says which stock is not enough. */
    List<StockUse> laid(Request request, int steps) {
        List<StockUse> uses = new ArrayList<>();
        for (int i = 0; i < fits.size(); i++) {
            Layout layout = new Layout(request.covers().get(i).spacingMm(), steps, 1);
            CoverPlan.of(fits.get(i), layout).map(StockUse::of).ifPresent(uses::add);
        }
        return uses;
    }

    /** What its covers would take if they lay as close as those of another. */
    List<StockUse> like(List<StockUse> other) {
        return other.stream()
                .map(use -> use.scaled(StockUse.partsMm2(cover(use.cover()))))
                .toList();
    }

    private CoverFit cover(String name) {
        return fits.stream()
                .filter(fit -> fit.patterns().cover().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** What struts and pieces weigh of which the mass is known. */
    OptionalDouble massKg(Request request) {
        Stream<OptionalDouble> masses = Stream.concat(
                Stream.of(BarUse.massKg(BarNeeds.of(parts), request.bars())),
                fits.stream().map(StockUse::massKg));
        return sum(masses.filter(OptionalDouble::isPresent).toList());
    }

    static OptionalDouble sum(List<OptionalDouble> known) {
        return known.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        known.stream().mapToDouble(OptionalDouble::orElseThrow).sum());
    }
}
