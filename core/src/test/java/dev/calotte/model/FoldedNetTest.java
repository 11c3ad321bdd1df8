package dev.calotte.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

class FoldedNetTest {

    private static final double SCALE = 20;
    private static final double KERF = 0.15;

    /** A dome, its shell and the pieces of its net. */
    private record Net(String name, Parts parts, Tabs tabs, List<NetPiece> pieces) {

        @Override
        public String toString() {
            return name;
        }

        Dome dome() {
            return parts.dome();
        }
    }

    private static final List<Net> NETS = all();

    static List<Net> nets() {
        return NETS;
    }

    private static List<Net> all() {
        List<Net> nets = new ArrayList<>();
        for (Solid solid : Solid.values()) {
            for (int frequency = 1; frequency <= 6; frequency++) {
                nets.add(net(solid + " " + frequency, Models.whole(solid, frequency), false));
            }
        }
        nets.add(net("orchard", Models.orchard(), false));
        nets.add(net("with a door", Models.opened(), false));
        nets.add(net("panels", Models.orchard(), true));
        return List.copyOf(nets);
    }

    private static Net net(String name, Parts parts, boolean single) {
        Tabs tabs = new Tabs(new Shell(parts.dome(), SCALE), 6);
        Unfolding unfolding = new Unfolding(tabs, new Vector2D(1000, 700), 1.65);
        return new Net(name, parts, tabs, single ? unfolding.single() : unfolding.pieces());
    }

    @ParameterizedTest
    @MethodSource("nets")
    void aNetOfThisKindIsWhole(Net net) {
        everyPanelLiesInOnePiece(net);
        everyJointIsAFoldOrHasOneTab(net);
        foldedUpItIsTheDome(net);
        nothingLiesOnAnything(net);
        numbersPairATabWithASide(net);
    }

    private static void everyPanelLiesInOnePiece(Net net) {
        assertThat(net.pieces().stream().flatMap(piece -> piece.panels().stream()))
                .hasSameSizeAs(net.dome().panels())
                .doesNotHaveDuplicates();
    }

    private static void everyJointIsAFoldOrHasOneTab(Net net) {
        List<Integer> joined = new ArrayList<>();
        for (NetPiece piece : net.pieces()) {
            joined.addAll(piece.folds());
            assertThat(piece.folds()).hasSize(piece.panels().size() - 1);
            piece.border().stream()
                    .filter(net.tabs()::has)
                    .forEach(side -> joined.add(net.tabs().shell().strut(side)));
        }
        List<Integer> between = net.dome().struts().stream()
                .filter(strut -> strut.dihedralRad().isPresent())
                .map(Strut::index)
                .toList();
        assertThat(joined).containsExactlyInAnyOrderElementsOf(between);
    }

    /** Each piece is put on the dome by one panel, and every other panel follows over its fold. */
    private static void foldedUpItIsTheDome(Net net) {
        for (NetPiece piece : net.pieces()) {
            Map<Integer, List<Vector3D>> raised = new TreeMap<>();
            Panel first = net.dome().panels().get(piece.panels().get(0));
            raised.put(first.index(), hubs(net.dome(), first));
            for (boolean more = true; more; ) {
                more = false;
                for (int strut : piece.folds()) {
                    more |= raise(net, piece, strut, raised);
                }
            }
            assertThat(raised).hasSameSizeAs(piece.panels());
            raised.forEach((panel, corners) -> {
                List<Vector3D> hubs = hubs(net.dome(), net.dome().panels().get(panel));
                for (int k = 0; k < 3; k++) {
                    assertThat(corners.get(k).distance(hubs.get(k))).isLessThan(1e-6);
                }
            });
        }
    }

    private static boolean raise(Net net, NetPiece piece, int strut, Map<Integer, List<Vector3D>> raised) {
        int side = net.tabs().shell().side(strut);
        int twin = net.tabs().shell().twin(side);
        if (raised.containsKey(side / 3) == raised.containsKey(twin / 3)) {
            return false;
        }
        int known = raised.containsKey(side / 3) ? side : twin;
        int fresh = known == side ? twin : side;
        List<Vector2D> flat = piece.corners(known / 3);
        List<Vector3D> there = raised.get(known / 3);
        Vector2D origin = flat.get(known % 3);
        Vector2D x = flat.get((known + 1) % 3 == 0 && known % 3 == 2 ? 0 : known % 3 + 1)
                .subtract(origin)
                .normalize();
        Vector3D at = there.get(known % 3);
        Vector3D along = there.get((known % 3 + 1) % 3).subtract(at).normalize();
        Vector3D out =
                along.crossProduct(there.get((known % 3 + 2) % 3).subtract(at)).normalize();
        double bend = Math.PI - net.dome().struts().get(strut).dihedralRad().orElseThrow();
        Rotation fold = new Rotation(along, bend, RotationConvention.VECTOR_OPERATOR);
        List<Vector3D> corners = new ArrayList<>();
        for (Vector2D corner : piece.corners(fresh / 3)) {
            Vector2D from = corner.subtract(origin);
            double forward = from.dotProduct(x);
            double left = x.getX() * from.getY() - x.getY() * from.getX();
            Vector3D flatThere = new Vector3D(forward, along, left, out.crossProduct(along));
            corners.add(at.add(fold.applyTo(flatThere)));
        }
        raised.put(fresh / 3, corners);
        return true;
    }

    private static List<Vector3D> hubs(Dome dome, Panel panel) {
        return panel.hubs().stream()
                .map(hub -> dome.hubs().get(hub).position().scalarMultiply(1 / SCALE))
                .toList();
    }

    /** Panels and tabs together cover as much as the outline encloses, and that also holds with its kerf. */
    private static void nothingLiesOnAnything(Net net) {
        for (NetPiece piece : net.pieces()) {
            List<Polygon> solids = new ArrayList<>();
            piece.panels().forEach(panel -> solids.add(polygon(piece.corners(panel))));
            for (int side : piece.border()) {
                if (net.tabs().has(side)) {
                    solids.add(tab(net, piece, side));
                }
            }
            double sum = solids.stream().mapToDouble(Polygon::getArea).sum();
            Polygon outline = polygon(piece.outline());
            assertThat(outline.isValid()).isTrue();
            assertThat(outline.getArea()).isCloseTo(sum, within(1e-6 * sum));
            assertThat(CascadedPolygonUnion.union(solids).getArea()).isCloseTo(sum, within(1e-6 * sum));
            Polygon cut = polygon(new Kerf(KERF)
                    .cutLine(dev.calotte.geometry.Polygon.of(piece.outline()))
                    .corners());
            assertThat(cut.isValid()).isTrue();
            assertThat(cut.buffer(1e-6).contains(outline)).isTrue();
        }
    }

    private static Polygon tab(Net net, NetPiece piece, int side) {
        Vector2D from = piece.corners(side / 3).get(side % 3);
        Vector2D to = piece.corners(side / 3).get((side + 1) % 3);
        assertThat(net.tabs().widthMm(side)).isLessThanOrEqualTo(6);
        List<Vector2D> corners = new ArrayList<>(List.of(to, from));
        corners.addAll(net.tabs().outer(side, from, to));
        return polygon(corners);
    }

    private static Polygon polygon(List<Vector2D> corners) {
        return Models.polygon(
                corners.stream().map(c -> new double[] {c.getX(), c.getY()}).toList());
    }

    private static void numbersPairATabWithASide(Net net) {
        NetKit kit = new NetKit(net.parts(), net.tabs(), net.pieces());
        Map<String, List<Boolean>> onTab = new TreeMap<>();
        for (NetPiece piece : net.pieces()) {
            for (Label label : kit.labels(piece)) {
                if (label.text().matches("\\d+\\.?")) {
                    boolean tab = piece.border().stream()
                            .filter(net.tabs()::has)
                            .anyMatch(side -> holds(tab(net, piece, side), label));
                    boolean panel = piece.panels().stream().anyMatch(p -> holds(polygon(piece.corners(p)), label));
                    assertThat(tab).isNotEqualTo(panel);
                    onTab.computeIfAbsent(label.text(), number -> new ArrayList<>())
                            .add(tab);
                }
            }
        }
        onTab.forEach((number, places) -> assertThat(places).as(number).containsExactlyInAnyOrder(true, false));
        long folds =
                net.pieces().stream().mapToInt(piece -> piece.folds().size()).sum();
        assertThat(onTab).hasSize(net.tabs().shell().joints().size() - (int) folds);
    }

    private static boolean holds(Polygon polygon, Label label) {
        return polygon.contains(polygon.getFactory()
                .createPoint(new org.locationtech.jts.geom.Coordinate(
                        label.middle().getX(), label.middle().getY())));
    }

    @ParameterizedTest
    @MethodSource("nets")
    void tabsUnderAPanelDoNotLieOnEachOther(Net net) {
        Map<Integer, List<Polygon>> under = new TreeMap<>();
        for (NetPiece piece : net.pieces()) {
            for (int side : piece.border()) {
                if (net.tabs().has(side)) {
                    int twin = net.tabs().shell().twin(side);
                    List<Vector2D> flat = net.tabs().shell().flat(twin / 3);
                    Vector2D from = flat.get((twin + 1) % 3 == 0 ? 0 : twin % 3 + 1);
                    Vector2D to = flat.get(twin % 3);
                    List<Vector2D> corners = new ArrayList<>(List.of(to, from));
                    corners.addAll(net.tabs().outer(side, from, to));
                    under.computeIfAbsent(twin / 3, panel -> new ArrayList<>()).add(polygon(corners));
                }
            }
        }
        under.forEach((panel, tabs) -> {
            double sum = tabs.stream().mapToDouble(Polygon::getArea).sum();
            assertThat(CascadedPolygonUnion.union(tabs).getArea()).isCloseTo(sum, within(1e-6 * sum));
            Polygon whole = polygon(net.tabs().shell().flat(panel));
            assertThat(tabs).allMatch(tab -> whole.buffer(1e-6).contains(tab));
        });
    }

    @Test
    void fewPiecesAreEnough() {
        Map<String, Integer> most = Map.of("ICOSAHEDRON 1", 1, "OCTAHEDRON 1", 1, "TETRAHEDRON 1", 1);
        for (Net net : nets()) {
            if (most.containsKey(net.name())) {
                assertThat(net.pieces()).as(net.name()).hasSize(most.get(net.name()));
            }
        }
        assertThat(net("orchard", Models.orchard(), false).pieces()).hasSizeLessThanOrEqualTo(6);
    }

    @Test
    void numbersThatAreOthersUpsideDownHaveAPoint() {
        Net net = net("panels", Models.orchard(), true);
        assertThat(new NetKit(net.parts(), net.tabs(), net.pieces())
                        .parts().stream()
                                .flatMap(part -> part.labels().stream())
                                .map(Label::text))
                .contains("6.", "9.", "66.", "89.", "8", "88", "16")
                .doesNotContain("6", "9", "66");
    }

    @Test
    void hollowFoldsAreBrokenLines() {
        Parts parts = Models.whole(Solid.TETRAHEDRON, 4);
        Shell shell = new Shell(parts.dome(), SCALE);
        TreeSet<Integer> hollow = new TreeSet<>();
        parts.dome().struts().stream()
                .filter(strut -> strut.dihedralRad().orElseThrow() > Math.PI + 1e-9)
                .forEach(strut -> hollow.add(strut.index()));
        assertThat(hollow).isNotEmpty();
        assertThat(Stream.iterate(0, strut -> strut + 1)
                        .limit(parts.dome().struts().size())
                        .filter(shell::isHollow))
                .containsExactlyElementsOf(hollow);
    }
}
