package dev.calotte.drawing;

import dev.calotte.document.Picture;
import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import dev.calotte.units.UnitSystem;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;

/** Domes on which drawings are checked. */
final class DrawnDomes {

    private static final List<Named<Dome>> ALL = make();
    private static final IdentityHashMap<Dome, List<Picture>> DRAWN = new IdentityHashMap<>();

    private DrawnDomes() {}

    static DomeSpec ico(int frequency) {
        return DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3200));
    }

    static DomeSpec tetra(int frequency) {
        return DomeSpec.of(Solid.TETRAHEDRON, Breakdown.of(frequency), Size.radius(1500));
    }

    /** A 3V dome without three panels of its lowest row and the one above them. */
    static Dome withDoor(boolean strutsGo) {
        Dome dome = Dome.of(ico(3).withKeep(new Keep.Rows(5, 9)));
        List<Integer> door = dome.panels().stream()
                .filter(panel -> (panel.row() == 5 && panel.place() >= 5 && panel.place() <= 7)
                        || (panel.row() == 4 && panel.place() == 6))
                .map(Panel::index)
                .toList();
        return dome.withOpenings(List.of(new Opening("door", door, strutsGo)));
    }

    static Stream<Named<Dome>> all() {
        return ALL.stream();
    }

    /** The drawings of a dome, made once for all tests. */
    static synchronized List<Picture> drawings(Dome dome) {
        return DRAWN.computeIfAbsent(dome, d -> DomeDrawings.of(subject(d)));
    }

    private static List<Named<Dome>> make() {
        return List.of(
                Named.of("1V", Dome.of(ico(1).withKeep(new Keep.Rows(2, 3)))),
                Named.of("3V, five of nine rows", Dome.of(ico(3).withKeep(new Keep.Rows(5, 9)))),
                Named.of("3V with a door", withDoor(true)),
                Named.of("3V with a door in its frame", withDoor(false)),
                Named.of(
                        "3V on a level base",
                        Dome.of(ico(3).withKeep(new Keep.Rows(5, 9)).withBase(Base.LEVEL))),
                Named.of("4V half", Dome.of(ico(4).withKeep(new Keep.Rows(1, 2)))),
                Named.of("6V half", Dome.of(ico(6).withKeep(new Keep.Rows(1, 2)))),
                Named.of("8V, five of eight rows", Dome.of(ico(8).withKeep(new Keep.Rows(5, 8)))),
                Named.of("tetrahedron", Dome.of(tetra(1))),
                Named.of("4V tetrahedron", Dome.of(tetra(4))),
                Named.of("2V sphere", Dome.of(ico(2))),
                Named.of(
                        "class II, a face up",
                        Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, new Breakdown(2, 2), Size.radius(3200))
                                .withUp(Up.FACE)
                                .withKeep(new Keep.AboveHeight(-900)))),
                Named.of(
                        "4V octahedron, an edge up",
                        Dome.of(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(4), Size.radius(3200))
                                .withUp(Up.EDGE)
                                .withKeep(new Keep.AboveHeight(-100)))),
                Named.of(
                        "class III",
                        Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, new Breakdown(2, 1), Size.radius(3200))
                                .withKeep(new Keep.AboveHeight(0)))));
    }

    static Subject subject(Dome dome) {
        return new Subject("A dome", Parts.of(dome, Joinery.nodeToNode()), UnitSystem.METRIC, 0);
    }
}
