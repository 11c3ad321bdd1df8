package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.assembly.Patch;
import dev.calotte.assembly.Patches;
import dev.calotte.assembly.PieceMarks;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.drawing.CoverSheets;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Placed;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class CoverPlanTest {

    private static final Stock ROLL = new Roll(1200, 10, OptionalDouble.empty(), Terms.OPEN);
    private static final Stock SHEET = new Sheet(2440, 1220, 10, Terms.OPEN);
    private static final Layout LAYOUT = new Layout(6, 50, 2);

    private static CoverFit fit(Cover cover, Stock stock) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(2500))
                .withKeep(new Keep.Rows(5, 9));
        Parts parts = Parts.of(Dome.of(spec), Joinery.nodeToNode());
        return CoverFit.of(Patterns.of(parts, cover), List.of(stock));
    }

    static Stream<CoverPlan> plans() {
        Cover felled =
                Cover.of("felled").with(Allowances.of(12, 40)).with(new Treatment(false, false, Splitting.SEAM, true));
        Cover grained = Cover.of("boards").with(new Treatment(true, true, Splitting.SEAM, false));
        Cover saving = Cover.of("saving").with(new Treatment(false, false, Splitting.WHEN_IT_SAVES, false));
        return Stream.of(
                        SeamSaving.of(fit(saving, SHEET), LAYOUT).map(SeamSaving::plan),
                        CoverPlan.of(fit(Cover.of("net"), SHEET), LAYOUT),
                        CoverPlan.of(fit(felled, ROLL), LAYOUT),
                        CoverPlan.of(fit(grained, SHEET), LAYOUT),
                        CoverPlan.of(
                                fit(Cover.of("glass").with(Allowances.of(-3, 0).withHubRelief(40)), SHEET), LAYOUT),
                        CoverPlan.of(fit(felled, ROLL), LAYOUT).map(plan -> plan.handedOut(inOrder(plan))),
                        CoverPlan.of(fit(grained, SHEET), LAYOUT)
                                .map(plan -> BatchedCover.of(plan, patches(plan), LAYOUT)
                                        .plan()),
                        CoverPlan.of(fit(felled, ROLL), LAYOUT)
                                .map(plan -> BatchedCover.of(plan, patches(plan), LAYOUT)
                                        .plan()))
                .map(plan -> plan.orElseThrow());
    }

    private static List<List<Panel>> patches(CoverPlan plan) {
        return Patches.of(plan.fit().patterns().parts()).patches().stream()
                .map(Patch::panels)
                .toList();
    }

    private static List<Panel> inOrder(CoverPlan plan) {
        return patches(plan).stream().flatMap(List::stream).toList();
    }

    @Test
    void ofPiecesThatAreAlikeTheFirstOnTheRollIsWantedFirst() {
        CoverPlan free = CoverPlan.of(fit(Cover.of("net"), ROLL), LAYOUT).orElseThrow();
        List<Panel> order = inOrder(free);
        CoverPlan plan = free.handedOut(order);
        assertThat(plan.plan()).isEqualTo(free.plan());
        List<Placed> parts = plan.plan().sheets().get(0).parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (parts.get(i).mark().equals(parts.get(j).mark())) {
                    assertThat(turn(order, plan.panels().get(0).get(i))
                                    < turn(order, plan.panels().get(0).get(j)))
                            .isEqualTo(begin(parts.get(i)) < begin(parts.get(j)));
                }
            }
        }
    }

    private static int turn(List<Panel> order, Panel panel) {
        return order.indexOf(panel);
    }

    private static double begin(Placed part) {
        return -part.outline().reach(new Vector2D(-1, 0));
    }

    /** A 3V of five rows has six stars of five panels at the solid's corners and fifteen more, some cut by the base. */
    @Test
    void patchByPatchEachGroupHasThePanelsOfItsPatches() {
        CoverPlan free = CoverPlan.of(fit(Cover.of("net"), ROLL), LAYOUT).orElseThrow();
        List<List<Panel>> patches = patches(free);
        BatchedCover cover = BatchedCover.of(free, patches, LAYOUT);
        int first = 0;
        for (int group = 0; group < cover.groups().size(); group++) {
            List<Panel> laid = new ArrayList<>();
            for (int i = 0; i < cover.groupOf().get(0).size(); i++) {
                if (cover.groupOf().get(0).get(i) == group) {
                    laid.add(cover.plan().panels().get(0).get(i));
                }
            }
            int last = first + cover.groups().get(group);
            assertThat(laid)
                    .containsExactlyInAnyOrderElementsOf(patches.subList(first, last).stream()
                            .flatMap(List::stream)
                            .toList());
            first = last;
        }
        assertThat(first).isEqualTo(patches.size());
        assertThat(cover.extraSheets()).isZero();
        assertThat(cover.extraRollMm())
                .isEqualTo(cover.plan().plan().goal().reached()
                        - free.plan().goal().reached());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void everyPanelHasAllItsPiecesOnce(CoverPlan plan) {
        List<String> laid = new ArrayList<>();
        for (int s = 0; s < plan.plan().sheets().size(); s++) {
            CutSheet sheet = plan.plan().sheets().get(s);
            for (int p = 0; p < sheet.parts().size(); p++) {
                laid.add(sheet.parts().get(p).mark() + " "
                        + plan.panels().get(s).get(p).index());
            }
        }
        List<String> wanted = new ArrayList<>();
        Patterns patterns = plan.fit().patterns();
        for (Panel panel : patterns.parts().dome().panels()) {
            plan.fit().fits().stream()
                    .filter(f -> f.pattern().equals(patterns.of(panel)))
                    .flatMap(f -> f.pieces().stream())
                    .forEach(piece -> wanted.add(piece.mark() + " " + panel.index()));
        }
        assertThat(laid).containsExactlyInAnyOrderElementsOf(wanted);
    }

    /** Judged by the JTS Topology Suite: nothing overlaps, all lies inside the margin, gaps are kept. */
    @ParameterizedTest
    @MethodSource("plans")
    void drawnPiecesKeepTheirDistances(CoverPlan plan) {
        List<Drawing> drawings = CoverSheets.of(plan, UnitSystem.METRIC);
        assertThat(drawings).hasSameSizeAs(plan.plan().sheets());
        for (int sheet = 0; sheet < drawings.size(); sheet++) {
            Drawing drawing = drawings.get(sheet);
            List<Geometry> cut = new ArrayList<>();
            for (Drawing.Part part : drawing.parts()) {
                part.shapes().stream()
                        .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                        .map(shape -> polygon((Polyline) shape))
                        .forEach(cut::add);
            }
            assertThat(drawing.parts()).extracting(Drawing.Part::mark).doesNotHaveDuplicates();
            drawing.parts().stream().flatMap(part -> part.shapes().stream()).forEach(shape -> liesIn(drawing, shape));
            assertThat(cut).hasSameSizeAs(plan.plan().sheets().get(sheet).parts());
            Geometry inside = new GeometryFactory()
                    .createLineString(new Coordinate[] {
                        new Coordinate(10, 10), new Coordinate(drawing.widthMm() - 10, drawing.heightMm() - 10)
                    })
                    .getEnvelope();
            for (int i = 0; i < cut.size(); i++) {
                assertThat(inside.buffer(1e-6).covers(cut.get(i))).isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(cut.get(i).distance(cut.get(j))).isGreaterThan(6 - 1e-6);
                }
            }
        }
    }

    private static void liesIn(Drawing drawing, Shape shape) {
        if (shape instanceof Polyline path) {
            for (int c = 0; c < path.size(); c++) {
                assertThat(path.x(c)).isBetween(-1e-6, drawing.widthMm() + 1e-6);
                assertThat(path.y(c)).isBetween(-1e-6, drawing.heightMm() + 1e-6);
            }
        }
    }

    private static Geometry polygon(Polyline path) {
        Coordinate[] ring = new Coordinate[path.size() + 1];
        for (int c = 0; c <= path.size(); c++) {
            ring[c] = new Coordinate(path.x(c % path.size()), path.y(c % path.size()));
        }
        Geometry polygon = new GeometryFactory().createPolygon(ring);
        assertThat(polygon.isValid()).isTrue();
        assertThat(org.locationtech.jts.algorithm.Orientation.isCCW(ring)).isTrue();
        return polygon;
    }

    @ParameterizedTest
    @MethodSource("plans")
    void onlyReversiblePiecesLieFaceDown(CoverPlan plan) {
        boolean reversible = plan.fit().patterns().cover().treatment().reversible();
        assertThat(plan.plan().sheets())
                .allSatisfy(sheet -> assertThat(sheet.parts())
                        .allSatisfy(part ->
                                assertThat(part.mirrored() && !reversible).isFalse()));
    }

    @Test
    void aSheetTellsWhichPieceIsForWhichPanel() {
        CoverPlan plan = CoverPlan.of(fit(Cover.of("net"), SHEET), LAYOUT).orElseThrow();
        Drawing first = CoverSheets.of(plan, UnitSystem.IMPERIAL).get(0);
        Placed placed = plan.plan().sheets().get(0).parts().get(0);
        PieceMarks marks = new PieceMarks(plan.fit().patterns().parts());
        assertThat(first.name()).isEqualTo("sheets/net-01");
        assertThat(first.title()).startsWith("Cover net, sheet 1 of ").endsWith("8' 0 1/16\" by 4' 0 1/16\"");
        assertThat(first.parts().get(0).mark())
                .isEqualTo(marks.of(plan.panels().get(0).get(0)));
        assertThat(first.parts().get(0).description()).startsWith("Pattern " + placed.mark());
    }

    @Test
    void withoutStockOrWithMisfitsThereIsNoPlan() {
        CoverFit fit = fit(Cover.of("net"), new Sheet(500, 500, 0, Terms.OPEN));
        assertThat(CoverPlan.of(fit, LAYOUT)).isEmpty();
        assertThat(CoverPlan.of(new CoverFit(fit.patterns(), List.of(), fit.fits()), LAYOUT))
                .isEmpty();
    }
}
