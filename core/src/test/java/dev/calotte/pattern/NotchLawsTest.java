package dev.calotte.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Keep;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NotchLawsTest {

    private static final double SAME = 1e-9 * Assembly.R;
    /** Mutation tests repeat every law thousands of times. */
    private static final boolean FEW = Boolean.getBoolean("calotte.few");

    private static final Treatment CODED = new Treatment(false, false, Splitting.NEVER, true);

    static Stream<Patterns> patterns() {
        Cover plain = Cover.of("cloth").with(Allowances.of(15, 50)).with(CODED);
        Cover thick = plain.with(new Sheeting(40, 10, false));
        Cover felled = plain.with(new Allowances(8, 18, 50, Corner.BLUNT, 0));
        Parts large = Assembly.parts(Solid.ICOSAHEDRON, Breakdown.of(4), new Keep.Rows(1, 2));
        Parts turned = Assembly.parts(Solid.OCTAHEDRON, new Breakdown(2, 1), new Keep.AboveHeight(0));
        Parts small = Assembly.parts(Solid.ICOSAHEDRON, Breakdown.of(1), new Keep.Whole());
        return FEW
                ? Stream.of(Patterns.of(turned, felled), Patterns.of(small, plain))
                : Stream.of(plain, thick, felled)
                        .flatMap(cover -> Stream.of(Assembly.fiveNinths(), small, large, turned)
                                .map(parts -> Patterns.of(parts, cover)));
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void notchesOfNeighboursCoincideInSpace(Patterns patterns) {
        Assembly assembly = new Assembly(patterns);
        for (Strut strut : patterns.parts().dome().struts()) {
            List<Panel> panels = assembly.at(strut.index());
            List<Vector3D> one = points(assembly, panels.get(0), strut);
            if (panels.size() == 1) {
                assertThat(one).isEmpty();
            } else {
                List<Vector3D> other = points(assembly, panels.get(1), strut);
                assertThat(one).isNotEmpty().hasSameSizeAs(other);
                for (int i = 0; i < one.size(); i++) {
                    assertThat(one.get(i).distance(other.get(other.size() - 1 - i)))
                            .isLessThan(SAME);
                }
            }
        }
    }

    private static List<Vector3D> points(Assembly assembly, Panel panel, Strut strut) {
        Pattern pattern = assembly.patterns().of(panel);
        int side = assembly.side(panel, strut.index());
        return pattern.sides().get(side).notches().stream()
                .map(notch -> assembly.place(panel, Assembly.onNet(pattern, side, notch.alongMm())))
                .toList();
    }

    /** Two sides of patterns, that are joined somewhere in the dome or not. */
    private record Joint(String one, int side, String other, int otherSide) implements Comparable<Joint> {
        @Override
        public int compareTo(Joint joint) {
            return toString().compareTo(joint.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void sidesThatAreNowhereJoinedDoNotMatch(Patterns patterns) {
        Set<Joint> joined = joined(patterns);
        for (Pattern one : patterns.list()) {
            for (Pattern other : patterns.list()) {
                for (int k = 0; k < 9; k++) {
                    Joint joint = new Joint(one.mark(), k % 3, other.mark(), k / 3);
                    Side side = one.sides().get(k % 3);
                    Side otherSide = other.sides().get(k / 3);
                    if (!side.notches().isEmpty() && !otherSide.notches().isEmpty() && !isTurnable(one, other)) {
                        assertThat(match(side, otherSide)).as("%s", joint).isEqualTo(joined.contains(joint));
                        // its own image in the strut is the one thing that notches cannot tell
                        boolean image = one.mark().equals(other.mark()) && k % 3 == k / 3;
                        assertThat(match(side, turnedOver(otherSide)))
                                .as("%s turned over", joint)
                                .isEqualTo(image);
                    }
                }
            }
        }
    }

    /** Sides of an equilateral pattern with the same notches all round are the same side. */
    private static boolean isTurnable(Pattern... patterns) {
        return Stream.of(patterns)
                .anyMatch(p -> p.sides().get(0).equals(p.sides().get(1))
                        && p.sides().get(0).equals(p.sides().get(2)));
    }

    private static Set<Joint> joined(Patterns patterns) {
        Assembly assembly = new Assembly(patterns);
        Set<Joint> joined = new TreeSet<>();
        for (Strut strut : patterns.parts().dome().struts()) {
            List<Panel> panels = assembly.at(strut.index());
            for (int i = 0; i < 2 && panels.size() == 2; i++) {
                Panel one = panels.get(i);
                Panel other = panels.get(1 - i);
                joined.add(new Joint(
                        patterns.of(one).mark(),
                        assembly.side(one, strut.index()),
                        patterns.of(other).mark(),
                        assembly.side(other, strut.index())));
            }
        }
        return joined;
    }

    private static boolean match(Side side, Side other) {
        List<Notch> notches = side.notches();
        boolean match = notches.size() == other.notches().size();
        for (int i = 0; match && i < notches.size(); i++) {
            double there = other.notches().get(notches.size() - 1 - i).alongMm();
            match = Math.abs(notches.get(i).alongMm() - (other.lengthMm() - there)) < 0.5;
        }
        return match && Math.abs(side.lengthMm() - other.lengthMm()) < 1e-6;
    }

    /** The other piece with its wrong face outside: its sides then run the other way. */
    private static Side turnedOver(Side side) {
        List<Notch> turned = side.notches().stream()
                .map(notch -> new Notch(side.lengthMm() - notch.alongMm(), 0))
                .sorted(Comparator.comparingDouble(Notch::alongMm))
                .toList();
        return new Side(1, side.lengthMm(), side.dihedralRad(), 0, 0, Lap.NONE, turned);
    }
}
