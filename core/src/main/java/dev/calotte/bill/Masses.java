package dev.calotte.bill;

import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.nest.BarPlan;
import dev.calotte.parts.RailKind;
import dev.calotte.pattern.Pattern;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What pieces weigh, from the masses of the stock that they are cut from. Hubs, bolts, seams and tapes are not in it.
 * Kilograms. Where stocks of different masses are used for one purpose, nothing is said.
 *
 * <pre>{@code
 * Needs needs = new Needs(parts, Optional.empty(), Optional.empty(), List.of(fit), List.of(plan), 0.05);
 * Masses masses = Masses.of(needs);
 * }</pre>
 */
public final class Masses {

    private final Needs needs;
    private final OptionalDouble perMetre;

    /** For each cover whose mass is known, what each of its patterns weighs. */
    private final List<Map<String, Double>> covers = new ArrayList<>();

    private Masses(Needs needs) {
        this.needs = needs;
        this.perMetre = needs.bars().map(Masses::perMetre).orElse(OptionalDouble.empty());
        needs.plans().forEach(plan -> covers(plan).ifPresent(covers::add));
    }

    /**
     * Weighs the pieces of a dome.
     *
     * @param needs what it takes
     * @return the masses
     */
    public static Masses of(Needs needs) {
        return new Masses(needs);
    }

    private static OptionalDouble perMetre(BarPlan plan) {
        return same(plan.bars().stream().map(cut -> cut.bar().terms()));
    }

    private static OptionalDouble same(Stream<Terms> terms) {
        List<OptionalDouble> masses = terms.map(Terms::massKg).distinct().toList();
        return masses.size() == 1 ? masses.get(0) : OptionalDouble.empty();
    }

    private static Optional<Map<String, Double>> covers(CoverPlan plan) {
        OptionalDouble perSquareMetre = same(plan.plan().sheets().stream()
                .map(sheet -> sheet.stock())
                .distinct()
                .map(Stock::terms));
        if (perSquareMetre.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> kg = new TreeMap<>();
        for (PatternFit fit : plan.fit().fits()) {
            double mm2 = fit.pieces().stream()
                    .mapToDouble(piece -> piece.blank().area())
                    .sum();
            kg.put(fit.pattern().mark(), mm2 / 1e6 * perSquareMetre.getAsDouble());
        }
        return Optional.of(kg);
    }

    /**
     * What a strut weighs, as it is cut.
     *
     * @param strut a strut of the dome
     * @return its mass; absent if that of the bars is not known, or rails stand in its place
     */
    public OptionalDouble ofStrut(Strut strut) {
        return perMetre.isPresent() && needs.parts().railKinds().isEmpty()
                ? OptionalDouble.of(needs.parts().kindOf(strut).cutLengthMm() / 1000 * perMetre.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * What a panel weighs in all covers together.
     *
     * @param panel a panel of the dome
     * @return its mass; absent if that of a cover is not known, or there is no cover
     */
    public OptionalDouble ofPanel(Panel panel) {
        if (covers.isEmpty() || covers.size() < needs.covers().size()) {
            return OptionalDouble.empty();
        }
        double kg = 0;
        for (int i = 0; i < covers.size(); i++) {
            Pattern pattern = needs.plans().get(i).fit().patterns().of(panel);
            kg += covers.get(i).get(pattern.mark());
        }
        return OptionalDouble.of(kg);
    }

    /**
     * What all struts or rails weigh.
     *
     * @return their mass; absent if that of the bars is not known
     */
    public OptionalDouble frameKg() {
        if (perMetre.isEmpty()) {
            return perMetre;
        }
        double mm = needs.parts().railKinds().isEmpty()
                ? needs.parts().strutKinds().stream()
                        .mapToDouble(kind -> kind.cutLengthMm() * kind.count())
                        .sum()
                : needs.parts().railKinds().stream().mapToDouble(Masses::mm).sum();
        return OptionalDouble.of(mm / 1000 * perMetre.getAsDouble());
    }

    private static double mm(RailKind kind) {
        return kind.longMm() * kind.count();
    }

    /**
     * What all panels weigh.
     *
     * @return their mass; absent if that of a cover is not known, or there is no cover
     */
    public OptionalDouble panelsKg() {
        return ofPanels(needs.parts().dome().panels());
    }

    /**
     * What several panels weigh together.
     *
     * @param panels panels of the dome
     * @return their mass; absent if that of a cover is not known
     */
    public OptionalDouble ofPanels(List<Panel> panels) {
        return covers.isEmpty() ? OptionalDouble.empty() : sum(panels, this::ofPanel);
    }

    /**
     * What several struts weigh together.
     *
     * @param struts struts of the dome
     * @return their mass; absent if that of the bars is not known
     */
    public OptionalDouble ofStruts(List<Strut> struts) {
        return sum(struts, this::ofStrut);
    }

    /** Nothing where one of them is not known. */
    private static <T> OptionalDouble sum(List<T> pieces, Function<T, OptionalDouble> mass) {
        List<OptionalDouble> each = pieces.stream().map(mass).toList();
        return each.stream().anyMatch(OptionalDouble::isEmpty)
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        each.stream().mapToDouble(OptionalDouble::getAsDouble).sum());
    }
}
