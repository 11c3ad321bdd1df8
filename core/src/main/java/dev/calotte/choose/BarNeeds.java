package dev.calotte.choose;

import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.parts.Parts;
import dev.calotte.stock.Bar;
import java.util.List;

/** What a frame needs of bars: its struts as they are cut, or the rails that stand in their place. */
public final class BarNeeds {

    private BarNeeds() {}

    /**
     * The cuts of a frame.
     *
     * @param parts the parts of the dome
     * @return one for each kind of strut or rail, a rail as long as its longest point
     */
    public static List<Cut> of(Parts parts) {
        if (!parts.railKinds().isEmpty()) {
            return parts.railKinds().stream()
                    .map(kind -> new Cut(kind.mark(), kind.longMm(), kind.count()))
                    .toList();
        }
        return parts.strutKinds().stream()
                .map(kind -> new Cut(kind.mark(), kind.cutLengthMm(), kind.count()))
                .toList();
    }

    /**
     * Cuts a frame from bars.
     *
     * @param parts the parts of the dome
     * @param bars the bars, at least one
     * @return the plan
     * @throws dev.calotte.problem.CalotteException if a strut is longer than every bar, or there are too few
     */
    public static BarPlan plan(Parts parts, List<Bar> bars) {
        return BarPlan.of(of(parts), bars);
    }
}
