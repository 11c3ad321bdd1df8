package dev.calotte.pattern;

import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.Groups;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What tells the patterns of congruent panels apart: for each side its angle to the neighbour where the material's
 * plane or thickness makes it matter, whether there is a neighbour, which of two unequal allowances it has, and whether
 * the grain is square to it.
 */
final class PatternKeys {

    /** Angles, in radians, that differ by less are equal. */
    private static final double SAME = 1e-9;

    private static final int NO_ANGLE = 0;

    private final Parts parts;
    private final Cover cover;
    private final Neighbours neighbours;
    private final boolean neighbourMatters;
    private final boolean anglesMatter;
    private final int[] angleOf;
    private final Groups angles;

    PatternKeys(Parts parts, Cover cover, Neighbours neighbours) {
        this.parts = parts;
        this.cover = cover;
        this.neighbours = neighbours;
        this.neighbourMatters =
                cover.allowances().baseMm() != cover.allowances().narrowMm();
        this.anglesMatter = cover.sheeting().planeMm() != 0 || cover.sheeting().thicknessMm() > 0;
        List<Strut> struts = parts.dome().struts();
        this.angleOf = new int[struts.size()];
        List<Strut> inner =
                struts.stream().filter(s -> s.dihedralRad().isPresent()).toList();
        this.angles = Groups.of(
                inner.stream().mapToDouble(s -> s.dihedralRad().orElseThrow()).toArray(), SAME);
        for (int i = 0; i < inner.size(); i++) {
            angleOf[inner.get(i).index()] = 1 + angles.of(i);
        }
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
        return slot.angle == NO_ANGLE ? OptionalDouble.empty() : OptionalDouble.of(angles.value(slot.angle - 1));
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

    /** The number of the strut kind below side k. */
    int strut(Panel panel, int k) {
        return parts.kindOf(neighbours.strut(panel, k)).number();
    }
}
