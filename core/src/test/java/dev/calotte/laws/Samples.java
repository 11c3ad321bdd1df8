package dev.calotte.laws;

import dev.calotte.dome.Base;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Domes on which the laws are checked. */
final class Samples {

    /** Not 1, so that a forgotten radius shows. */
    static final double R = 1500;

    /** Whether only some of them are taken: mutation tests repeat every law thousands of times. */
    private static final boolean FEW = Boolean.getBoolean("calotte.few");

    private static final List<Breakdown> BREAKDOWNS = List.of(
            Breakdown.of(1),
            Breakdown.of(2),
            Breakdown.of(3),
            Breakdown.of(4),
            new Breakdown(0, 5),
            new Breakdown(1, 1),
            new Breakdown(2, 2),
            new Breakdown(2, 1),
            new Breakdown(1, 3));

    private Samples() {}

    static DomeSpec spec(Solid solid, Breakdown breakdown) {
        return DomeSpec.of(solid, breakdown, Size.radius(R));
    }

    private static Stream<DomeSpec> some(Stream<DomeSpec> specs, int one) {
        List<DomeSpec> all = specs.toList();
        return IntStream.range(0, all.size())
                .filter(i -> !FEW || i % one == one / 2)
                .mapToObj(all::get);
    }

    /** Whole spheres of every solid, breakdown, spacing and crown. */
    static Stream<DomeSpec> spheres() {
        return some(everySphere(), 61);
    }

    private static Stream<DomeSpec> everySphere() {
        return Stream.of(Solid.values())
                .flatMap(solid -> BREAKDOWNS.stream().map(breakdown -> spec(solid, breakdown)))
                .flatMap(spec -> Stream.of(Spacing.values()).map(spec::withSpacing))
                .filter(Samples::isPossible)
                .flatMap(spec -> Stream.of(Up.values()).map(spec::withUp));
    }

    private static boolean isPossible(DomeSpec spec) {
        boolean classOne = spec.breakdown().classNumber() == 1;
        boolean powerOfTwo = Integer.bitCount(spec.breakdown().frequency()) == 1;
        return switch (spec.spacing()) {
            case CHORD -> true;
            case ARC -> classOne;
            case MIDARC -> classOne && powerOfTwo;
            // each is computed anew, so that only a few are taken
            case FITTED -> spec.solid() == Solid.ICOSAHEDRON && spec.breakdown().frequency() == 3;
        };
    }

    /** Parts of spheres: rows, and what lies above, at and below the centre. */
    static Stream<DomeSpec> caps() {
        return some(everyCap(), 11);
    }

    private static Stream<DomeSpec> everyCap() {
        Stream<DomeSpec> rows = Stream.of(Solid.values())
                .flatMap(solid -> Stream.of(3, 4).map(n -> spec(solid, Breakdown.of(n))))
                .flatMap(spec -> Stream.of(Spacing.CHORD, Spacing.ARC).map(spec::withSpacing))
                .map(spec -> spec.withKeep(half(spec)));
        Stream<DomeSpec> above = Stream.of(Solid.OCTAHEDRON, Solid.ICOSAHEDRON)
                .flatMap(solid -> Stream.of(Breakdown.of(4), new Breakdown(2, 2), new Breakdown(3, 1))
                        .map(breakdown -> spec(solid, breakdown)))
                .flatMap(spec -> Stream.of(Up.values()).map(spec::withUp))
                .flatMap(spec -> Stream.of(-0.4, 0.0, 0.1).map(h -> spec.withKeep(new Keep.AboveHeight(h * R))));
        return Stream.concat(Stream.concat(rows, above), level());
    }

    /** Domes whose base hubs were brought to one height. */
    private static Stream<DomeSpec> level() {
        DomeSpec icosahedron = spec(Solid.ICOSAHEDRON, Breakdown.of(3)).withBase(Base.LEVEL);
        DomeSpec classThree = spec(Solid.ICOSAHEDRON, new Breakdown(2, 1)).withBase(Base.LEVEL);
        return Stream.of(
                icosahedron.withKeep(new Keep.Rows(5, 9)),
                icosahedron.withKeep(new Keep.Rows(4, 9)).withSpacing(Spacing.ARC),
                icosahedron.withUp(Up.EDGE).withKeep(new Keep.AboveHeight(0)),
                icosahedron.withUp(Up.FACE).withKeep(new Keep.AboveHeight(-0.2 * R)),
                classThree.withKeep(new Keep.AboveHeight(0)));
    }

    private static Keep half(DomeSpec spec) {
        int all = spec.solid().rowsPerFrequency() * spec.breakdown().frequency();
        return new Keep.Rows((all + 1) / 2, all);
    }

    static Stream<DomeSpec> all() {
        return Stream.concat(spheres(), caps());
    }
}
