package dev.calotte.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Drawing;
import dev.calotte.document.Polyline;
import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Spoke;
import dev.calotte.dome.Strut;
import dev.calotte.drawing.Pose;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Reads the drawn lines back, without a look at what they were made from, and builds the dome out of them. */
class SlottedKitTest {

    private static final double MM = 1e-6;
    private static final double SCALE = 20;

    private final Map<String, Cut> cuts = new TreeMap<>();

    static List<Parts> domes() {
        return List.of(
                Models.orchard(),
                Models.opened(),
                Models.whole(Solid.ICOSAHEDRON, 1),
                Models.whole(Solid.ICOSAHEDRON, 4),
                Models.whole(Solid.OCTAHEDRON, 3),
                Models.whole(Solid.TETRAHEDRON, 2),
                Models.parts(Models.spec(Solid.ICOSAHEDRON, 2).withBreakdown(new Breakdown(2, 1))),
                Models.parts(Models.spec(Solid.OCTAHEDRON, 4)
                        .withKeep(new Keep.Rows(1, 2))
                        .withBase(Base.LEVEL)));
    }

    @ParameterizedTest
    @MethodSource("domes")
    void everyStrutThatHooksIntoAHubEndsAtTheNextOne(Parts parts) {
        read(drawn(parts, 0));
        Dome dome = parts.dome();
        for (Hub hub : dome.hubs()) {
            Cut disc = cuts.get(parts.kindOf(hub).mark());
            Vector3D at = hub.position().scalarMultiply(1 / SCALE);
            Vector3D axis = at.normalize();
            List<Spoke> spokes = parts.around(hub);
            assertThat(disc.floors()).hasSameSizeAs(spokes);
            Vector3D first = tangent(axis, across(dome, spokes.get(0), hub).subtract(at));
            for (int k = 0; k < spokes.size(); k++) {
                Strut strut = dome.struts().get(spokes.get(k).strut());
                double turn = angle(disc.outwards(0), disc.outwards(k));
                Vector3D out = new Vector3D(Math.cos(turn), first, Math.sin(turn), axis.crossProduct(first));
                Vector3D end = end(cuts.get(parts.kindOf(strut).mark()), disc.floorMm(), at, axis, out);
                assertThat(end.distance(across(dome, spokes.get(k), hub)))
                        .as("%s at %s", strut, hub)
                        .isLessThan(MM);
            }
        }
    }

    /** Where the hub's point at a strut's other end comes to lie, its left notch hooked into a slot. */
    private static Vector3D end(Cut strut, double floorMm, Vector3D at, Vector3D axis, Vector3D out) {
        Vector2D left = strut.hubPoint(0, floorMm);
        Vector2D right = strut.hubPoint(1, floorMm);
        Vector2D chord = right.subtract(left);
        double dip = angle(chord, strut.outwards(0).negate());
        return at.add(new Vector3D(chord.getNorm() * Math.cos(dip), out, -chord.getNorm() * Math.sin(dip), axis));
    }

    private static Vector3D across(Dome dome, Spoke spoke, Hub hub) {
        Strut strut = dome.struts().get(spoke.strut());
        int other = strut.from() == hub.index() ? strut.to() : strut.from();
        return dome.hubs().get(other).position().scalarMultiply(1 / SCALE);
    }

    private static Vector3D tangent(Vector3D axis, Vector3D towards) {
        return towards.subtract(axis.scalarMultiply(towards.dotProduct(axis))).normalize();
    }

    private static double angle(Vector2D from, Vector2D to) {
        return Math.atan2(from.getX() * to.getY() - from.getY() * to.getX(), from.dotProduct(to));
    }

    @ParameterizedTest
    @MethodSource("domes")
    void discsAndStrutsAreSlottedHalfwayAndAsWideAsTheBoardAndTheFit(Parts parts) {
        read(drawn(parts, 0));
        for (Cut cut : cuts.values()) {
            for (int k = 0; k < cut.floors().size(); k++) {
                assertThat(cut.widthMm(k)).isCloseTo(3.1, within(MM));
            }
        }
        Cut disc = cuts.get(parts.hubKinds().get(0).mark());
        Cut strut = cuts.get(parts.strutKinds().get(0).mark());
        assertThat(strut.depthMm(0)).isCloseTo(3, within(MM));
        assertThat(disc.rimMm() - disc.floorMm()).isCloseTo(3, within(MM));
    }

    @ParameterizedTest
    @MethodSource("domes")
    void strutsAtAHubDoNotTouch(Parts parts) {
        read(drawn(parts, 0));
        for (HubKind kind : parts.hubKinds()) {
            Cut disc = cuts.get(kind.mark());
            double end =
                    disc.floorMm() - cuts.get(parts.strutKinds().get(0).mark()).depthMm(0);
            for (int k = 0; k + 1 < kind.struts().size(); k++) {
                double gap = Math.abs(angle(disc.outwards(k), disc.outwards(k + 1)));
                assertThat(end * Math.sin(gap / 2)).isGreaterThan(1.5 * Math.cos(gap / 2));
            }
        }
    }

    @Test
    void theKerfNarrowsEverySlotOnceAndMovesRimsOutByHalf() {
        Parts parts = Models.orchard();
        read(drawn(parts, 0));
        Map<String, Cut> net = new TreeMap<>(cuts);
        read(drawn(parts, 0.2));
        cuts.forEach((mark, cut) -> {
            assertThat(cut.widthMm(0)).as(mark).isCloseTo(2.9, within(MM));
            assertThat(cut.lengthMm()).as(mark).isCloseTo(net.get(mark).lengthMm() + 0.2, within(0.05));
        });
        Cut disc = cuts.get("H1L");
        assertThat(disc.floorMm()).isCloseTo(net.get("H1L").floorMm() + 0.1, within(MM));
        assertThat(disc.rimMm()).isCloseTo(net.get("H1L").rimMm() + 0.1, within(0.01));
    }

    @Test
    void insideEachSlotStandsTheNumberOfItsStrut() {
        Parts parts = Models.orchard();
        List<ModelPart> kit = SlottedKit.of(parts, ModelSpec.of(SCALE, Board.of(900, 600, 3, 0)));
        for (int hub = 0; hub < parts.hubKinds().size(); hub++) {
            HubKind kind = parts.hubKinds().get(hub);
            List<Label> labels = new ArrayList<>(kit.get(hub).labels());
            assertThat(labels.remove(labels.size() - 1).text()).isEqualTo(kind.mark());
            boolean mixed = kind.struts().stream().distinct().count() > 1;
            assertThat(labels).hasSize(mixed ? kind.struts().size() : 0);
            double turn = 0;
            for (int slot = 0; slot < labels.size(); slot++) {
                Label label = labels.get(slot);
                assertThat(label.text()).isEqualTo("" + kind.struts().get(slot));
                assertThat(angle(label.middle(), new Vector2D(Math.cos(turn), Math.sin(turn))))
                        .isCloseTo(0, within(1e-9));
                turn += slot < kind.gapsRad().size() ? kind.gapsRad().get(slot) : 0;
            }
        }
    }

    @Test
    void everyPartIsThereAsOftenAsTheDomeHasIt() {
        Parts parts = Models.opened();
        ModelSpec spec = ModelSpec.of(40, Board.of(600, 300, 1.5, 0)).withKinds(ModelKind.SLOTTED);
        List<String> marks = Models.pieces(ModelDrawings.of(parts, spec)).stream()
                .map(part -> part.mark().replaceFirst("\\..*", ""))
                .toList();
        parts.hubKinds()
                .forEach(kind ->
                        assertThat(marks).filteredOn(kind.mark()::equals).hasSize(kind.count()));
        parts.strutKinds()
                .forEach(kind ->
                        assertThat(marks).filteredOn(kind.mark()::equals).hasSize(kind.count()));
        assertThat(marks)
                .hasSize(1 + parts.dome().struts().size() + parts.dome().hubs().size())
                .contains("COMB");
    }

    @Test
    void thicknessIsTheSameAtEveryScale() {
        Parts parts = Models.orchard();
        Board board = Board.of(900, 600, 3, 0);
        for (double scale : new double[] {10, 25}) {
            read(drawn(parts, ModelSpec.of(scale, board)));
            assertThat(cuts.get("S1").widthMm(0)).isCloseTo(3.1, within(MM));
        }
    }

    @Test
    void aDiscTooSmallForItsSlotsIsRefusedWithOneThatDoes() {
        Parts parts = Models.orchard();
        Problem problem = refused(parts, disc(12));
        assertThat(problem.where()).isEqualTo("model.disc");
        assertThat(problem.what()).contains("12 mm").contains("run into each other");
        double mend = Double.parseDouble(problem.mend().replaceFirst("Use a disc of ([0-9.]+) mm.*", "$1"));
        assertThat(drawn(parts, disc(mend))).isNotEmpty();
        assertThat(refused(parts, disc(mend - 1.5)).where()).isEqualTo("model.disc");
    }

    @Test
    void strutsTooShortBetweenDiscsAreRefusedWithAScaleThatDoes() {
        Parts parts = Models.orchard();
        Board board = Board.of(900, 600, 3, 0);
        Problem problem = refused(parts, ModelSpec.of(100, board));
        assertThat(problem.where()).isEqualTo("model.scale");
        assertThat(problem.what()).startsWith("strut S1 is 10.5 mm long");
        double mend = Double.parseDouble(problem.mend().replaceFirst("Use a scale of 1:([0-9.]+) .*", "$1"));
        assertThat(drawn(parts, ModelSpec.of(mend, board))).isNotEmpty();
    }

    @Test
    void partsLargerThanTheSheetAreRefused() {
        ModelSpec spec = ModelSpec.of(20, Board.of(40, 40, 3, 0)).withKinds(ModelKind.SLOTTED);
        assertThatThrownBy(() -> ModelDrawings.of(Models.orchard(), spec))
                .hasMessageStartingWith(
                        "model.sheet: part S1 of the model is larger than a sheet. Use sheets larger by");
    }

    @Test
    void whatWillBeFiddlyIsSaid() {
        Parts parts = Models.orchard();
        assertThat(ModelNotes.of(parts, ModelSpec.of(20, Board.of(600, 300, 3, 0))))
                .isEmpty();
        Board thin = new Board(600, 300, 0.5, 0, 0.05, OptionalDouble.of(8));
        assertThat(ModelNotes.of(parts, ModelSpec.of(70, thin).withKinds(ModelKind.SLOTTED)))
                .containsExactly(
                        "The model's struts shorter than 15 mm are hard to hold (S1); a larger scale helps.",
                        "Letters below 2 mm on parts of the model are hard to read (H1L, H1R, H2); a larger scale or"
                                + " larger discs help.");
        assertThat(ModelNotes.of(
                        parts, ModelSpec.of(100, Board.of(600, 300, 3, 0)).withKinds(ModelKind.NET)))
                .containsExactly(
                        "Tabs of the model come out 2.5 mm wide, which is hard to glue; a larger scale helps.",
                        "Letters on the panels of the model come out below 2 mm; a larger scale helps.");
    }

    private static ModelSpec disc(double mm) {
        return ModelSpec.of(20, new Board(600, 300, 3, 0, 0.1, OptionalDouble.of(mm)));
    }

    private static Problem refused(Parts parts, ModelSpec spec) {
        try {
            SlottedKit.of(parts, spec);
        } catch (CalotteException e) {
            return e.problems().get(0);
        }
        throw new AssertionError("not refused");
    }

    private static List<Drawing.Part> drawn(Parts parts, double kerf) {
        return drawn(parts, ModelSpec.of(SCALE, Board.of(900, 600, 3, kerf)));
    }

    /** One part of each kind as it would be drawn, each lying somewhere. */
    private static List<Drawing.Part> drawn(Parts parts, ModelSpec spec) {
        SheetDrawings sheets = SheetDrawings.of(900, 600, spec.board());
        List<Drawing.Part> drawn = new ArrayList<>();
        for (ModelPart part : SlottedKit.of(parts, spec)) {
            Pose pose = Pose.turned(drawn.size()).withShift(new Vector2D(300 + drawn.size(), 200));
            drawn.add(new Drawing.Part(part.mark(), part.description(), sheets.shapes(part, pose)));
        }
        return drawn;
    }

    private void read(List<Drawing.Part> drawn) {
        cuts.clear();
        drawn.forEach(part -> cuts.put(part.mark(), Cut.of(part)));
    }

    /** A cut line, known by its hollow corners alone: two of them are the floor of a slot or notch. */
    private record Cut(List<Vector2D> corners, List<Integer> floors) {

        static Cut of(Drawing.Part part) {
            Polyline path = Models.outline(part);
            List<Vector2D> corners = new ArrayList<>();
            for (int c = 0; c < path.size(); c++) {
                corners.add(new Vector2D(path.x(c), path.y(c)));
            }
            List<Integer> floors = new ArrayList<>();
            Cut cut = new Cut(corners, floors);
            for (int c = 0; c < path.size(); c++) {
                if (cut.isHollow(c) && cut.isHollow(c + 1)) {
                    floors.add(c);
                }
            }
            return cut;
        }

        private Vector2D corner(int c) {
            return corners.get(Math.floorMod(c, corners.size()));
        }

        private boolean isHollow(int c) {
            return angle(corner(c).subtract(corner(c - 1)), corner(c + 1).subtract(corner(c))) < -0.5;
        }

        private Vector2D floor(int k) {
            int c = floors.get(k);
            return corner(c).add(corner(c + 1)).scalarMultiply(0.5);
        }

        /** From a floor to the mouth. */
        Vector2D outwards(int k) {
            int c = floors.get(k);
            return corner(c - 1).subtract(corner(c)).normalize();
        }

        double widthMm(int k) {
            int c = floors.get(k);
            Vector2D along = corner(c + 1).subtract(corner(c));
            assertThat(along.dotProduct(outwards(k))).isCloseTo(0, within(MM));
            return along.getNorm();
        }

        double depthMm(int k) {
            int c = floors.get(k);
            return corner(c - 1).distance(corner(c));
        }

        /** Where the middle lines of two slots of a disc cross. */
        private Vector2D centre() {
            Vector2D from = outwards(0);
            int other = Math.abs(angle(from, outwards(1))) < 3 ? 1 : 2;
            Vector2D to = outwards(other);
            Vector2D between = floor(other).subtract(floor(0));
            double cross = from.getX() * to.getY() - from.getY() * to.getX();
            double along = (between.getX() * to.getY() - between.getY() * to.getX()) / cross;
            return floor(0).add(along, from);
        }

        double floorMm() {
            return centre().distance(floor(0));
        }

        double rimMm() {
            return corners.stream().mapToDouble(centre()::distance).max().orElseThrow();
        }

        /** The strut slid so far that the floors meet: the hub's point lies beyond the notch. */
        Vector2D hubPoint(int k, double floorMm) {
            return floor(k).add(floorMm, outwards(k));
        }

        double lengthMm() {
            double most = 0;
            for (Vector2D corner : corners) {
                most = Math.max(
                        most,
                        corners.stream().mapToDouble(corner::distance).max().orElseThrow());
            }
            return most;
        }
    }
}
