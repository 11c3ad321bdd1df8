package dev.calotte.tables;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The closed forms of the table, evaluated, and the same quantities measured on domes. */
final class ClosedForms {

    private static final double SQRT5 = Math.sqrt(5);

    private ClosedForms() {}

    static double formula(String formula) {
        return switch (formula) {
            case "1" -> 1;
            case "sqrt2" -> Math.sqrt(2);
            case "1/sqrt5" -> 1 / SQRT5;
            case "sqrt(8/3)" -> Math.sqrt(8.0 / 3);
            case "sqrt(2/5)" -> Math.sqrt(2.0 / 5);
            case "sqrt(2-sqrt2)" -> Math.sqrt(2 - Math.sqrt(2));
            case "sqrt(2-2/sqrt3)" -> Math.sqrt(2 - 2 / Math.sqrt(3));
            case "sqrt(2-4/sqrt5)" -> Math.sqrt(2 - 4 / SQRT5);
            case "sqrt(2-6/sqrt15)" -> Math.sqrt(2 - 6 / Math.sqrt(15));
            case "(sqrt5-1)/2" -> (SQRT5 - 1) / 2;
            case "(sqrt5-1)/sqrt3" -> (SQRT5 - 1) / Math.sqrt(3);
            case "sqrt((5+2*sqrt5)/15)" -> Math.sqrt((5 + 2 * SQRT5) / 15);
            case "sqrt(2-2*sqrt((5+2*sqrt5)/15))" -> Math.sqrt(2 - 2 * Math.sqrt((5 + 2 * SQRT5) / 15));
            case "1/sin(2*pi/5) = 4/sqrt(10+2*sqrt5)" -> 4 / Math.sqrt(10 + 2 * SQRT5);
            case "2*sin(atan(2)/4) = sqrt(2-sqrt(2+2/sqrt5))" -> Math.sqrt(2 - Math.sqrt(2 + 2 / SQRT5));
            default -> angle(formula);
        };
    }

    private static double angle(String formula) {
        return switch (formula) {
            case "2*sin(atan(2)/6)" -> 2 * StrictMath.sin(StrictMath.atan(2) / 6);
            case "2*sin(atan(2)/8)" -> 2 * StrictMath.sin(StrictMath.atan(2) / 8);
            case "atan(2)" -> Math.toDegrees(StrictMath.atan(2));
            case "180-asin(2/3)" -> 180 - Math.toDegrees(StrictMath.asin(2.0 / 3));
            case "acos(-1/3)" -> Math.toDegrees(StrictMath.acos(-1.0 / 3));
            default -> throw new AssertionError("no formula " + formula);
        };
    }

    static double measured(String what) {
        List<String> words = List.of(what.split("[ :]"));
        Solid solid = Solid.valueOf(words.get(0).toUpperCase(java.util.Locale.ROOT));
        if (what.contains(" kind ")) {
            int kind = Integer.parseInt(words.get(words.indexOf("kind") + 1));
            return chords(solid, breakdown(words.get(1)), Spacing.CHORD).toArray()[kind - 1];
        }
        if (what.contains("arc spacing")) {
            return edgePart(solid, breakdown(words.get(1)));
        }
        return ofTheSolid(solid, what.substring(words.get(0).length() + 1));
    }

    private static Breakdown breakdown(String word) {
        return word.equals("(1,1)") ? new Breakdown(1, 1) : Breakdown.of(word.charAt(0) - '0');
    }

    private static double ofTheSolid(Solid solid, String what) {
        Dome dome = Dome.of(spec(solid, Breakdown.of(1)));
        Strut strut = dome.struts().get(0);
        return switch (what) {
            case "edge", "edge over circumradius" -> strut.lengthMm();
            case "central angle deg" -> Math.toDegrees(2 * strut.axialAngleRad());
            case "dihedral deg" -> Math.toDegrees(strut.dihedralRad().orElseThrow());
            case "ring row latitude z" -> dome.hubs().get(1).position().getZ();
            case "inradius over circumradius" ->
                3 * dome.measures().volumeMm3() / dome.measures().surfaceAreaMm2();
            default -> throw new AssertionError("nothing is called " + what);
        };
    }

    /** The strut that leaves the crown along an edge of the solid. */
    private static double edgePart(Solid solid, Breakdown breakdown) {
        return Dome.of(spec(solid, breakdown).withSpacing(Spacing.ARC))
                .struts()
                .get(0)
                .lengthMm();
    }

    private static DoubleStream chords(Solid solid, Breakdown breakdown, Spacing spacing) {
        Dome dome = Dome.of(spec(solid, breakdown).withSpacing(spacing));
        return Parts.of(dome, Joinery.nodeToNode()).strutKinds().stream().mapToDouble(kind -> kind.chordFactor());
    }

    private static DomeSpec spec(Solid solid, Breakdown breakdown) {
        return DomeSpec.of(solid, breakdown, Size.radius(1));
    }

    /** The dihedrals of icosahedra of low frequency and of the 4V tetrahedron. */
    static List<Double> someDihedralsDeg() {
        Stream<DomeSpec> specs = Stream.of(
                spec(Solid.ICOSAHEDRON, Breakdown.of(1)),
                spec(Solid.ICOSAHEDRON, Breakdown.of(2)),
                spec(Solid.ICOSAHEDRON, Breakdown.of(3)),
                spec(Solid.ICOSAHEDRON, Breakdown.of(4)),
                spec(Solid.TETRAHEDRON, Breakdown.of(4)));
        return specs.flatMap(spec -> Dome.of(spec).struts().stream())
                .map(strut -> Math.toDegrees(strut.dihedralRad().orElseThrow()))
                .toList();
    }
}
