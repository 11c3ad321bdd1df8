package dev.calotte.solid;

import dev.calotte.document.Jig.Arm;
import dev.calotte.parts.HubKind;
import java.util.ArrayList;
import java.util.List;

/** The struts of a kind of hubs as arms: where they point, and how much of the round is their own. */
final class HubArms {

    private HubArms() {}

    static List<Arm> of(HubKind kind) {
        List<Double> gaps = kind.gapsRad();
        double open =
                2 * Math.PI - gaps.stream().mapToDouble(Double::doubleValue).sum();
        double beside = Math.min(open / 2, Math.PI / 2);
        int count = kind.struts().size();
        List<Arm> arms = new ArrayList<>();
        double angle = 0;
        for (int i = 0; i < count; i++) {
            double right = i > 0 ? half(gaps.get(i - 1)) : kind.open() ? beside : half(gaps.get(count - 1));
            double left = i < gaps.size() ? half(gaps.get(i)) : beside;
            arms.add(new Arm(
                    kind.strutMarks().get(i),
                    angle,
                    right,
                    left,
                    kind.axialAnglesRad().get(i)));
            angle += i < gaps.size() ? gaps.get(i) : 0;
        }
        return arms;
    }

    private static double half(double gap) {
        return Math.min(gap / 2, Math.PI / 2);
    }

    /**
     * How far from the axis troughs have to begin so that between neighbours a wall is left.
     *
     * @param halfMm from a trough's axis to its sides
     */
    static double clearMm(List<Arm> arms, double halfMm) {
        double half = halfMm + JigSpec.LEAST_WALL_MM / 2;
        return arms.stream()
                .mapToDouble(arm -> Math.min(arm.leftRad(), arm.rightRad()))
                .map(side ->
                        side < Math.PI / 2 ? (halfMm * StrictMath.cos(side) + half - halfMm) / StrictMath.sin(side) : 0)
                .max()
                .orElse(0);
    }
}
