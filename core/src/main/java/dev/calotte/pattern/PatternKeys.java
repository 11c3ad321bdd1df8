package dev.calotte.pattern;

import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.MergedGroups;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What tells the patterns of congruent panels apart: for each side its angle to the neighbour where the material's
 * plane or thickness makes it matter, whether there is a neighbour, which of two unequal allowances it has, and whether
 * the grain is square to it.
 */
final class PatternKeys {

    /** Tangents that differ by less are equal. */
    private static final double SAME = 1e-9;

    private static final int NO_ANGLE = 0;

    private final Parts parts;
    private final Cover cover;
    private final Neighbours neighbours;
    private final boolean neighbourMatters;
    private final boolean anglesMatter;
    private final int[] angleOf;
    private final int[] firstAsLong;
    /** The tangents of half the turns from panel to panel. */
    private final MergedGroups turns;

    PatternKeys(Parts parts, Cover cover, Neighbours neighbours) {
        this.parts = parts;
        this.cover = cover;
        this.neighbours = neighbours;
        this.firstAsLong = firstAsLong(parts.whole().strutKinds());
        this.neighbourMatters =
                cover.allowances().baseMm() != cover.allowances().narrowMm();
        this.anglesMatter = cover.sheeting().planeMm() != 0 || cover.sheeting().thicknessMm() > 0;
        List<Strut> struts = parts.dome().struts();
        this.angleOf = new int[struts.size()];
        List<Strut> inner =
                struts.stream().filter(s -> s.dihedralRad().isPresent()).toList();
        this.turns = MergedGroups.of(
                inner.stream()
                        .mapToDouble(
                                s -> StrictMath.tan((Math.PI - s.dihedralRad().orElseThrow()) / 2))
                        .toArray(),
                SAME,
                anglesMatter ? parts.joinery().mergeWithinMm() / furthestMm() : 0);
        for (int i = 0; i < inner.size(); i++) {
            angleOf[inner.get(i).index()] = 1 + turns.of(i);
        }
    }

    /** How far the material reaches from the plane of the hub centres: times a tangent it is the growth of a side. */
    private double furthestMm() {
        double inner = cover.sheeting().planeMm();
        return Math.max(Math.abs(inner), Math.abs(inner + cover.sheeting().thicknessMm()));
    }

    /** What a side adds to the key. */
    record Slot(int angle, Lap lap, boolean joined, boolean foot) implements Comparable<Slot> {

        @Override
        public int compareTo(Slot other) {
            int byAngle = Integer.compare(angle, other.angle);
            int byLap = byAngle != 0 ? byAngle : lap.compareTo(other.lap);
            int byJoint = byLap != 0 ? byLap : Boolean.compare(other.joined, joined);
            return byJoint != 0 ? byJoint : Boolean.compare(other.foot, foot);
        }
    }

    Slot slot(Panel panel, int k) {
        Strut strut = neighbours.strut(panel, k);
        boolean joined = neighbours.across(panel, strut.index()) != Neighbours.NONE;
        boolean unequal = cover.allowances().wideMm() != cover.allowances().narrowMm();
        return new Slot(
                anglesMatter ? angleOf[strut.index()] : NO_ANGLE,
                unequal ? neighbours.lap(panel, k) : Lap.NONE,
                joined || !neighbourMatters,
                cover.treatment().grain() && neighbours.foot(panel) == k);
    }

    OptionalDouble dihedralRad(Slot slot) {
        return slot.angle == NO_ANGLE
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.PI - 2 * StrictMath.atan(turns.value(slot.angle - 1)));
    }

    /** The sides of a kind's triangle as a pattern has them: the longest, and the two others counter-clockwise. */
    static List<Integer> struts(PanelKind kind) {
        List<Integer> rising = kind.struts();
        return switch (kind.hand()) {
            case RIGHT -> List.of(rising.get(2), rising.get(1), rising.get(0));
            default -> List.of(rising.get(2), rising.get(0), rising.get(1));
        };
    }

    PanelKind kind(Panel panel) {
        return parts.kindOf(panel);
    }

    /** The number of the first strut kind that is as long as the strut below side k; its ends do not matter here. */
    int strut(Panel panel, int k) {
        return firstAsLong[parts.kindOf(neighbours.strut(panel, k)).number() - 1];
    }

    private static int[] firstAsLong(List<StrutKind> kinds) {
        int[] first = new int[kinds.size()];
        for (int i = 0; i < first.length; i++) {
            boolean alike = i > 0 && kinds.get(i - 1).lengthMm() == kinds.get(i).lengthMm();
            first[i] = alike ? first[i - 1] : kinds.get(i).number();
        }
        return first;
    }
}
