package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.Patch;
import dev.calotte.assembly.Patches;
import dev.calotte.assembly.PieceMarks;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Label;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class DomeDrawingsTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    static Stream<Named<Dome>> domes() {
        return DrawnDomes.all();
    }

    private static List<Picture> drawings(Dome dome, String name) {
        return DrawnDomes.drawings(dome).stream()
                .filter(picture -> picture.name().startsWith("drawings/" + name))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("domes")
    void everyDrawingIsLegible(Dome dome) {
        isLegible(DrawnDomes.drawings(dome));
    }

    /** A title that has no end, inches, and a wall. */
    @Test
    void everyDrawingIsLegibleInInchesToo() {
        Parts parts = DrawnDomes.subject(DrawnDomes.withDoor(true)).parts();
        isLegible(DomeDrawings.of(new Subject("A dome of many words ".repeat(20), parts, UnitSystem.IMPERIAL, 1500)));
    }

    private static void isLegible(List<Picture> all) {
        assertThat(all).extracting(Picture::name).doesNotHaveDuplicates();
        for (Picture picture : all) {
            DrawingCheck.everythingIsOnThePage(picture);
            DrawingCheck.lettersAreLargeEnough(picture);
            DrawingCheck.noLabelLiesOnAnother(picture);
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void everySheetSaysWhichOfHowManyItIs(Dome dome) {
        List<Picture> all = DrawnDomes.drawings(dome);
        for (int i = 0; i < all.size(); i++) {
            String sheet = "sheet " + (i + 1) + " of " + all.size();
            assertThat(DrawingCheck.labels(all.get(i)))
                    .filteredOn(label -> label.text().endsWith(sheet))
                    .singleElement()
                    .satisfies(label -> assertThat(label.text()).startsWith("A dome  |  "));
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void planHasEveryPanelOnceAndItsMarkInIt(Dome dome) {
        everyPanelHasItsMark(dome, drawings(dome, "plan"));
    }

    @ParameterizedTest
    @MethodSource("domes")
    void rowsHaveEveryPanelOnceAndItsMarkInIt(Dome dome) {
        everyPanelHasItsMark(dome, drawings(dome, "rows"));
    }

    private static void everyPanelHasItsMark(Dome dome, List<Picture> pictures) {
        PieceMarks marks = DrawnDomes.subject(dome).marks();
        Map<String, List<Label>> labels = pictures.stream()
                .flatMap(picture -> DrawingCheck.labels(picture).stream())
                .collect(Collectors.groupingBy(Label::text));
        Map<String, List<Facet>> facets = pictures.stream()
                .flatMap(picture -> DrawingCheck.facets(picture).stream())
                .collect(Collectors.groupingBy(Facet::title));
        for (Panel panel : dome.panels()) {
            String mark = marks.of(panel);
            assertThat(labels.get(mark)).as(mark).hasSize(1);
            assertThat(facets.get(mark)).as(mark).hasSize(1);
            assertThat(DrawingCheck.isInside(
                            labels.get(mark).get(0), facets.get(mark).get(0)))
                    .as(mark)
                    .isTrue();
        }
    }

    /** Each panel bears its place in its patch, and strong lines part patches: struts with one side in each. */
    @ParameterizedTest
    @MethodSource("domes")
    void patchesShowEveryPanelOnceAndWherePatchesMeet(Dome dome) {
        List<Picture> pictures = drawings(dome, "patches");
        Patches patches = Patches.of(DrawnDomes.subject(dome).parts());
        int parting = 0;
        for (Strut strut : dome.struts()) {
            List<Patch> beside = dome.panels().stream()
                    .filter(panel -> panel.struts().contains(strut.index()))
                    .map(patches::of)
                    .toList();
            boolean inside = beside.size() == 2 && beside.get(0).equals(beside.get(1));
            parting += inside || beside.isEmpty() ? 0 : 1;
        }
        for (Patch patch : patches.patches()) {
            List<Picture> shown = pictures.stream()
                    .filter(picture -> hasFacetOf(picture, patch))
                    .toList();
            shown.forEach(picture -> assertNumbers(picture, patch));
            assertThat(DrawingCheck.count(pictures, patch.mark()))
                    .as(patch.mark())
                    .isEqualTo(shown.size());
        }
        long strong = pictures.stream()
                .flatMap(picture -> DrawingCheck.items(picture, Picture.Line.class).stream())
                .filter(line -> line.weight() == Picture.Weight.STRONG)
                .filter(line -> !line.dashed())
                .count();
        assertThat(strong).isGreaterThanOrEqualTo(parting);
    }

    private static boolean hasFacetOf(Picture picture, Patch patch) {
        return DrawingCheck.facets(picture).stream()
                .anyMatch(facet -> facet.title().startsWith(patch.mark() + "."));
    }

    /** In each of its panels its number, and but for the mark of the patch nothing else. */
    private static void assertNumbers(Picture picture, Patch patch) {
        List<Label> labels = DrawingCheck.labels(picture);
        for (Facet facet : DrawingCheck.facets(picture)) {
            if (facet.title().startsWith(patch.mark() + ".")) {
                List<String> inside = labels.stream()
                        .filter(label -> DrawingCheck.isInside(label, facet))
                        .map(Label::text)
                        .toList();
                String number = facet.title().substring(patch.mark().length() + 1);
                assertThat(inside).as(facet.title()).contains(number);
                assertThat(inside).as(facet.title()).isSubsetOf(number, patch.mark());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void neighbouringPatchesOfOneKindDifferInTone(Dome dome) {
        Patches patches = Patches.of(DrawnDomes.subject(dome).parts());
        Map<String, Picture.Tone> tones = drawings(dome, "patches").stream()
                .flatMap(picture -> DrawingCheck.facets(picture).stream())
                .filter(facet -> facet.title().contains("."))
                .collect(Collectors.toMap(Facet::title, Facet::tone));
        for (Strut strut : dome.struts()) {
            List<Patch> beside = dome.panels().stream()
                    .filter(panel -> panel.struts().contains(strut.index()))
                    .map(patches::of)
                    .distinct()
                    .toList();
            if (beside.size() == 2
                    && beside.get(0).kind().number() == beside.get(1).kind().number()) {
                assertThat(tones.get(beside.get(0).mark() + ".1"))
                        .as(beside.get(0).mark() + " beside " + beside.get(1).mark())
                        .isNotEqualTo(tones.get(beside.get(1).mark() + ".1"));
            }
        }
    }

    /** Where the base ring turns inwards, too. */
    @ParameterizedTest
    @MethodSource("domes")
    void marksOfBaseHubsLieOnNoPanel(Dome dome) {
        PieceMarks marks = DrawnDomes.subject(dome).marks();
        for (Picture plan : drawings(dome, "plan")) {
            List<Polygon> panels = DrawingCheck.facets(plan).stream()
                    .filter(facet -> facet.title().contains("."))
                    .map(DomeDrawingsTest::polygon)
                    .toList();
            for (int hub : dome.baseRing()) {
                String mark = marks.of(dome.hubs().get(hub));
                DrawingCheck.labels(plan).stream()
                        .filter(label -> label.text().equals(mark))
                        .map(DrawingCheck::box)
                        .forEach(box -> assertThat(panels)
                                .as(mark)
                                .noneMatch(panel -> panel.intersects(
                                        JTS.toGeometry(new Envelope(box[0], box[2], box[1], box[3])))));
            }
        }
    }

    private static Polygon polygon(Facet facet) {
        List<Double> xy = facet.xy();
        Coordinate[] ring = IntStream.rangeClosed(0, xy.size() / 2)
                .map(corner -> 2 * corner % xy.size())
                .mapToObj(at -> new Coordinate(xy.get(at), xy.get(at + 1)))
                .toArray(Coordinate[]::new);
        return JTS.createPolygon(ring);
    }

    private static Label label(List<Picture> pictures, String text) {
        return pictures.stream()
                .flatMap(picture -> DrawingCheck.labels(picture).stream())
                .filter(label -> label.text().equals(text))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("domes")
    void planHasEveryBaseHubOnce(Dome dome) {
        List<Picture> plans = drawings(dome, "plan");
        PieceMarks marks = DrawnDomes.subject(dome).marks();
        for (int hub : dome.baseRing()) {
            String mark = marks.of(dome.hubs().get(hub));
            assertThat(DrawingCheck.count(plans, mark)).as(mark).isEqualTo(1);
        }
    }

    /** Panels next to each other go round the middle the way they are counted, from twelve o'clock to the left. */
    @Test
    void planCountsCounterClockwiseFromTwelve() {
        Dome dome = DrawnDomes.withDoor(true).whole();
        List<Picture> plans = drawings(dome, "plan");
        PieceMarks marks = DrawnDomes.subject(dome).marks();
        List<Label> hubs = dome.baseRing().stream()
                .map(hub -> label(plans, marks.of(dome.hubs().get(hub))))
                .toList();
        double middle = hubs.get(0).x();
        assertThat(hubs.get(0).y())
                .isEqualTo(hubs.stream().mapToDouble(Label::y).max().orElseThrow());
        assertThat(hubs.get(1).x()).isLessThan(middle);
        assertThat(hubs.get(14).x()).isGreaterThan(middle);
    }

    @ParameterizedTest
    @MethodSource("domes")
    void stepsAddUpToEveryStrutAndPanel(Dome dome) {
        List<Picture> steps = drawings(dome, "step-");
        Parts parts = DrawnDomes.subject(dome).parts();
        for (StrutKind kind : parts.strutKinds()) {
            assertThat(DrawingCheck.count(steps, kind.mark())).as(kind.mark()).isEqualTo(kind.count());
        }
        for (PanelKind kind : parts.panelKinds()) {
            assertThat(DrawingCheck.count(steps, kind.mark())).as(kind.mark()).isEqualTo(kind.count());
        }
    }

    /** All but what is seen edge on: none of this dome's panels is. */
    @Test
    void everyStepShowsTheDomeAsFarAsItIsBuilt() {
        Dome dome = DrawnDomes.withDoor(true);
        List<Picture> steps = drawings(dome, "step-");
        for (int i = 0; i < steps.size(); i++) {
            int lowest = steps.size() - i;
            long built = dome.panels().stream()
                    .filter(panel -> panel.row() >= lowest)
                    .count();
            assertThat(DrawingCheck.facets(steps.get(i)).stream()
                            .filter(facet -> facet.title().isEmpty()))
                    .hasSize((int) built);
        }
    }

    @Test
    void stepSaysInItsTitleWhatToDo() {
        assertThat(drawings(DrawnDomes.withDoor(true).whole(), "step-01").get(0).title())
                .isEqualTo("A dome: Row 5: 20 of S2, 40 of S3; panels P2 x 30");
    }

    /** Between arms less than 40 degrees apart, as a divided tetrahedron has, there is no room for two words. */
    @ParameterizedTest
    @MethodSource("domes")
    void noWordLiesOnTheArmOfAHub(Dome dome) {
        double narrowest = DrawnDomes.subject(dome).parts().hubKinds().stream()
                .flatMap(kind -> kind.gapsRad().stream())
                .min(Double::compare)
                .orElseThrow();
        if (narrowest < Math.toRadians(40)) {
            return;
        }
        for (Picture sheet : drawings(dome, "hubs")) {
            List<Polygon> arms = DrawingCheck.facets(sheet).stream()
                    .map(DomeDrawingsTest::polygon)
                    .toList();
            for (Label label : DrawingCheck.labels(sheet)) {
                double[] box = DrawingCheck.box(label);
                assertThat(arms)
                        .as(label.text())
                        .noneMatch(arm -> arm.intersects(JTS.toGeometry(new Envelope(box[0], box[2], box[1], box[3]))));
            }
        }
    }

    /** Arms go counter-clockwise round the hub from the one marked start, which the labels at their ends show. */
    @ParameterizedTest
    @MethodSource("domes")
    void hubsListTheirStrutsInTheOrderOfTheKind(Dome dome) {
        List<HubKind> kinds = DrawnDomes.subject(dome).parts().hubKinds();
        for (HubKind kind : kinds) {
            List<Double> directions = HubSheets.directionsRad(kind);
            assertThat(directions)
                    .isSortedAccordingTo(Comparator.naturalOrder())
                    .hasSameSizeAs(kind.struts());
            double turn = directions.get(directions.size() - 1) - directions.get(0);
            assertThat(turn).isLessThan(2 * Math.PI);
            for (Picture sheet : drawings(dome, "hubs")) {
                Optional<Picture.Disc> disc = DrawingCheck.items(sheet, Picture.Disc.class).stream()
                        .filter(d -> d.title().equals(kind.mark()))
                        .findFirst();
                disc.ifPresent(d -> assertThat(armsRound(sheet, d)).isEqualTo(kind.strutMarks()));
            }
        }
        assertThat(drawings(dome, "hubs").stream()
                        .flatMap(sheet -> DrawingCheck.items(sheet, Picture.Disc.class).stream()))
                .hasSameSizeAs(kinds);
    }

    /** The marks of the arms round a disc by the angle of their ends, from the one next to the word start. */
    private static List<String> armsRound(Picture sheet, Picture.Disc disc) {
        List<Facet> arms = DrawingCheck.facets(sheet).stream()
                .filter(f -> Math.abs(out(f, disc, 0)) < 5)
                .sorted(Comparator.comparingDouble(f -> StrictMath.atan2(out(f, disc, 2) - 0.0, across(f, disc, 2))))
                .toList();
        Label start = DrawingCheck.labels(sheet).stream()
                .filter(label -> label.text().equals("start"))
                .min(Comparator.comparingDouble(label -> distance(label.x() - disc.x(), label.y() - disc.y())))
                .orElseThrow();
        int first = 0;
        for (int i = 0; i < arms.size(); i++) {
            if (gap(arms.get(i), start) < gap(arms.get(first), start)) {
                first = i;
            }
        }
        int from = first;
        return Stream.iterate(0, i -> i + 1)
                .limit(arms.size())
                .map(i -> arms.get((from + i) % arms.size()).title())
                .toList();
    }

    private static double gap(Facet arm, Label start) {
        return distance(
                (arm.xy().get(2) + arm.xy().get(4)) / 2 - start.x(),
                (arm.xy().get(3) + arm.xy().get(5)) / 2 - start.y());
    }

    private static double across(Facet arm, Picture.Disc disc, int corner) {
        return (arm.xy().get(corner) + arm.xy().get((corner + 2) % 8)) / 2 - disc.x();
    }

    /** How far over the disc the middle of two corners of an arm is; for the foot, how far from it. */
    private static double out(Facet arm, Picture.Disc disc, int corner) {
        int from = corner == 0 ? 6 : corner;
        double x = (arm.xy().get(from) + arm.xy().get((from + 2) % 8)) / 2 - disc.x();
        double y = (arm.xy().get(from + 1) + arm.xy().get((from + 3) % 8)) / 2 - disc.y();
        return corner == 0 ? distance(x, y) : y;
    }

    private static double distance(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    @Test
    void planNamesAnOpeningWhereNoPanelIs() {
        List<Picture> plans = drawings(DrawnDomes.withDoor(true), "plan");
        assertThat(DrawingCheck.count(plans, "door")).isEqualTo(1);
        Label name = label(plans, "door");
        assertThat(DrawingCheck.facets(plans.get(0)))
                .noneMatch(facet -> DrawingCheck.isInside(name, facet))
                .isNotEmpty();
        assertThat(name.x())
                .as("a sixth of a turn counter-clockwise")
                .isLessThan(label(plans, "start ray").x());
    }

    @Test
    void planShowsTheStrutsThatStayInAnOpening() {
        Dome framed = DrawnDomes.withDoor(false);
        long more = lines(framed) - lines(DrawnDomes.withDoor(true));
        assertThat(more).isEqualTo(BareStruts.of(framed).size()).isPositive();
    }

    private static long lines(Dome dome) {
        return drawings(dome, "plan").stream()
                .mapToLong(plan -> DrawingCheck.items(plan, Picture.Line.class).size())
                .sum();
    }

    @Test
    void elevationIsSeenFromTheDoor() {
        Picture open = drawings(DrawnDomes.withDoor(true), "elevation").get(0);
        Picture whole = drawings(DrawnDomes.withDoor(true).whole(), "elevation").get(0);
        assertThat(DrawingCheck.labels(open))
                .extracting(Label::text)
                .contains("Seen from the opening door, 60.2° counter-clockwise from the start ray.");
        assertThat(DrawingCheck.labels(whole)).extracting(Label::text).contains("Seen from the start ray.");
    }

    /** Row by row the hubs' own heights, and with a wall under them so much more. */
    @Test
    void elevationGivesTheHeightsOfTheRows() {
        Dome dome = DrawnDomes.withDoor(false);
        Parts parts = DrawnDomes.subject(dome).parts();
        Subject walled = new Subject("A dome", parts, UnitSystem.METRIC, 1000);
        double lowest = dome.hubs().stream()
                .mapToDouble(hub -> hub.position().getZ())
                .min()
                .orElseThrow();
        Hub top = dome.hubs().get(0);
        String high = UnitSystem.METRIC.length(top.position().getZ() - lowest + 1000);
        Picture picture = DomeDrawings.of(walled).stream()
                .filter(p -> p.name().endsWith("elevation"))
                .findFirst()
                .orElseThrow();
        assertThat(DrawingCheck.labels(picture))
                .extracting(Label::text)
                .contains("hubs of row 0: " + high)
                .anyMatch(text -> text.startsWith("hubs of row 5: 1000 mm to "));
        assertThat(DrawingCheck.facets(picture)).anyMatch(facet -> facet.title().equals("wall"));
    }

    /** The kinds of a 4V: five, one of them in both hands. */
    @Test
    void panelsStandSideBySideTrueToTheirSidesAndHands() {
        Dome dome = Dome.of(DrawnDomes.ico(4));
        Parts parts = DrawnDomes.subject(dome).parts();
        List<Picture> sheets = drawings(dome, "panels");
        for (PanelKind kind : parts.panelKinds()) {
            Facet facet = sheets.stream()
                    .flatMap(sheet -> DrawingCheck.facets(sheet).stream())
                    .filter(f -> f.title().equals(kind.mark()))
                    .findFirst()
                    .orElseThrow();
            assertThat(DrawingCheck.area(facet)).isPositive();
            double bottom = facet.xy().get(2) - facet.xy().get(0);
            double right = distance(
                    facet.xy().get(4) - facet.xy().get(2),
                    facet.xy().get(5) - facet.xy().get(3));
            double expected = kind.mark().endsWith("R")
                    ? kind.triangle().b()
                    : kind.triangle().a();
            assertThat(right / bottom).isCloseTo(expected / kind.triangle().c(), within(1e-9));
            assertThat(DrawingCheck.count(
                            sheets, UnitSystem.METRIC.length(kind.triangle().c(), 1)))
                    .isPositive();
        }
    }
}
