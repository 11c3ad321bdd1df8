package dev.calotte.check;

import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;

/** Domes whose records are checked. */
final class CheckedDomes {

    static final Parts ICOSAHEDRON = Parts.of(threeV(), Joinery.gap(30));
    static final Parts OCTAHEDRON =
            Parts.of(Dome.of(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(2), Size.radius(1500))), Joinery.nodeToNode());
    static final Parts CLASS_THREE = Parts.of(
            Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, new Breakdown(2, 1), Size.radius(3200))
                    .withKeep(new Keep.AboveHeight(0))),
            Joinery.nodeToNode());
    static final Parts OPENED = opened(true);
    static final Parts MERGED = Parts.of(
            Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(3000))
                    .withKeep(new Keep.Rows(1, 2))),
            Joinery.nodeToNode().withMergeWithin(2.2));

    private CheckedDomes() {}

    private static Dome threeV() {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(2500))
                .withKeep(new Keep.Rows(5, 9)));
    }

    /** Without three panels of the lowest row and the one above them; two of the struts between them go too, or none. */
    private static Parts opened(boolean strutsGo) {
        List<Integer> door = threeV().panels().stream()
                .filter(panel -> (panel.row() == 5 && panel.place() >= 5 && panel.place() <= 7)
                        || (panel.row() == 4 && panel.place() == 6))
                .map(Panel::index)
                .toList();
        return Parts.of(threeV().withOpenings(List.of(new Opening("door", door, strutsGo))), Joinery.nodeToNode());
    }

    private static Parts flattened() {
        return Parts.of(threeV(), Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 9, 20, OptionalDouble.empty())));
    }

    /** A tetrahedron of four has hollow edges, one of one and one is a cube with flat ones. */
    private static Parts tetrahedron(Breakdown breakdown) {
        return Parts.of(Dome.of(DomeSpec.of(Solid.TETRAHEDRON, breakdown, Size.radius(1500))), Joinery.nodeToNode());
    }

    static Stream<Named<Parts>> all() {
        return Stream.of(
                Named.of("3V, five of nine rows", ICOSAHEDRON),
                Named.of("2V octahedron", OCTAHEDRON),
                Named.of("class III", CLASS_THREE),
                Named.of("3V with a door", OPENED),
                Named.of("3V with a door whose struts stay", opened(false)),
                Named.of("4V with merged kinds", MERGED),
                Named.of("3V of flattened tubes", flattened()),
                Named.of(
                        "3V on a level base",
                        Parts.of(Dome.of(threeV().spec().withBase(Base.LEVEL)), Joinery.nodeToNode())),
                Named.of("4V tetrahedron", tetrahedron(Breakdown.of(4))),
                Named.of("cube", tetrahedron(new Breakdown(1, 1))));
    }
}
