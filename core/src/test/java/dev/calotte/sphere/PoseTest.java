package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.Triangle;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PoseTest {

    private static Pose pose(Solid solid, int b, int c, Spacing start) {
        Breakdown breakdown = new Breakdown(b, c);
        Sites sites = new Sites(solid, new Lattice(breakdown));
        Web web = new Web(new VertexOrbits(sites, breakdown.classNumber() != 3), sites);
        return Pose.of(web, sites.place(Placement.of(start, solid, sites.lattice())));
    }

    private static Pose chord(int b, int c) {
        return pose(Solid.ICOSAHEDRON, b, c, Spacing.CHORD);
    }

    /** A step of one number only, and back, as central differences take them. */
    private static double difference(Pose pose, int strut, int number) {
        double small = 1e-6;
        double[] step = new double[pose.dimension()];
        step[number] = small;
        double ahead = pose.moved(step).log(strut);
        step[number] = -small;
        return (ahead - pose.moved(step).log(strut)) / (2 * small);
    }

    @ParameterizedTest
    @CsvSource({"6, 0", "3, 3", "3, 1"})
    void slopesAreWhatSmallStepsShow(int b, int c) {
        Pose pose = chord(b, c);
        double[][] slopes = pose.slopes();
        for (int s = 0; s < slopes.length; s++) {
            for (int k = 0; k < pose.dimension(); k++) {
                assertThat(slopes[s][k]).isEqualTo(difference(pose, s, k), within(1e-7));
            }
        }
    }

    @Test
    void slopesOfAltitudesAreWhatSmallChangesShow() {
        Cases.each(50, (random, size) -> {
            double[] sides = {1, 1 + random.nextDouble() / 2, 1 + random.nextDouble() / 2};
            Width width = new Width(sides[0], sides[1], sides[2]);
            for (int side = 0; side < 3; side++) {
                for (int with = 0; with < 3; with++) {
                    double small = 1e-6;
                    double ahead = StrictMath.log(scaled(sides, with, 1 + small).altitude(side));
                    double behind =
                            StrictMath.log(scaled(sides, with, 1 - small).altitude(side));
                    assertThat(width.slope(side, with)).isEqualTo((ahead - behind) / (2 * small), within(1e-7));
                }
            }
        });
    }

    private static Width scaled(double[] sides, int with, double times) {
        double[] scaled = sides.clone();
        scaled[with] *= times;
        return new Width(scaled[0], scaled[1], scaled[2]);
    }

    /** A triangle of 3, 4 and 5 has the altitudes 4, 3 and 2.4. */
    @Test
    void theNarrowestWidthIsUponTheLongestSide() {
        for (Width width : List.of(new Width(3, 4, 5), new Width(5, 3, 4), new Width(4, 5, 3))) {
            assertThat(width.narrowest()).isEqualTo(2.4, within(1e-14));
            assertThat(width.longest()).isEqualTo(5);
            assertThat(width.side(width.base())).isEqualTo(5);
        }
        assertThat(new Width(3, 4, 5).altitude(0)).isEqualTo(4, within(1e-14));
        assertThat(new Width(3, 4, 5).altitude(1)).isEqualTo(3, within(1e-14));
        assertThat(new Width(2, 2, 2).base()).isZero();
        assertThat(new Width(1, 2, 2).base()).isEqualTo(1);
        assertThat(new Width(1, 2, 3).narrowest()).isZero();
    }

    @Test
    void aPoseKnowsItsExtremes() {
        Pose pose = chord(4, 0);
        double widest = 0;
        double thinnest = 1;
        for (Web.Panel panel : pose.web().panels()) {
            Triangle t = new Triangle(
                    pose.length(panel.struts().get(0)),
                    pose.length(panel.struts().get(1)),
                    pose.length(panel.struts().get(2)));
            widest = Math.max(widest, t.narrowestWidth());
            thinnest = Math.min(thinnest, t.narrowestWidth() / Math.max(t.a(), Math.max(t.b(), t.c())));
        }
        // shortest and longest chord factor of a 4V: 0.25318 and 0.32492 (common tables of 4V class I)
        assertThat(StrictMath.exp(pose.shortest())).isEqualTo(0.25318, within(5e-6));
        assertThat(StrictMath.exp(pose.shortest() + pose.span())).isEqualTo(0.32492, within(5e-6));
        assertThat(StrictMath.exp(pose.widest())).isEqualTo(widest, within(1e-14));
        assertThat(StrictMath.exp(pose.thinnest())).isEqualTo(thinnest, within(1e-14));
        assertThat(pose.wellFormed()).isTrue();
    }

    /** With the one free point of a 3V close to the corner, and beyond it, panels are flat and turned over. */
    @Test
    void flatAndTurnedPanelsAreNotWellFormed() {
        Pose pose = chord(3, 0);
        double reach = pose.points()[1].distance(pose.points()[0]);
        double sign = Math.signum(pose.moved(new double[] {0.01}).length(0) - pose.length(0));
        assertThat(pose.moved(new double[] {-sign * reach * 0.5}).wellFormed()).isTrue();
        assertThat(pose.moved(new double[] {-sign * StrictMath.tan(reach * 1.02)})
                        .wellFormed())
                .isFalse();
        assertThat(new Aim(true, 0, List.of()).of(pose.moved(new double[] {-sign * StrictMath.tan(reach * 1.02)})))
                .isInfinite();
    }

    @Test
    void anAimWeighsFlawsAboveWidth() {
        Pose pose = chord(3, 0);
        double span = StrictMath.log(1.1829981815);
        assertThat(Aim.width(1.3).of(pose)).isEqualTo(pose.widest(), within(1e-12));
        assertThat(Aim.width(1).of(pose)).isEqualTo(pose.widest() + Aim.FLAW * span, within(1e-8));
        assertThat(Aim.ratio().of(pose)).isEqualTo(Aim.FLAW * span, within(1e-8));
        Aim equal = Aim.width(2).with(List.of(new Web.Strut(0, 1)));
        assertThat(equal.flaw(pose)).isEqualTo(Math.abs(pose.log(0) - pose.log(1)), within(1e-15));
    }

    /** What is thinner than a tenth is a flaw, even where the ratio is kept. */
    @Test
    void aThinPanelIsAFlaw() {
        Pose pose = chord(3, 0);
        double reach = pose.points()[1].distance(pose.points()[0]);
        double sign = Math.signum(pose.moved(new double[] {0.01}).length(0) - pose.length(0));
        Pose thin = pose.moved(new double[] {-sign * StrictMath.tan(reach * 0.95)});
        assertThat(thin.thinnest()).isLessThan(Pose.THIN);
        assertThat(Aim.width(100).flaw(thin)).isEqualTo(Pose.THIN - thin.thinnest(), within(1e-14));
        assertThat(Aim.width(100).flaw(pose)).isZero();
    }

    @Test
    void equalizedStrutsAreEqual() {
        Pose pose = chord(5, 0);
        int found = 0;
        for (int s = 0; s < 9; s++) {
            for (int t = 0; t < s; t++) {
                List<Web.Strut> twice = List.of(new Web.Strut(s, t), new Web.Strut(t, s));
                Optional<Pose> equal = new Equalizer(twice).from(pose);
                found += equal.isPresent() ? 1 : 0;
                if (equal.isPresent()) {
                    assertThat(equal.get().log(s)).isEqualTo(equal.get().log(t), within(1e-13));
                    assertThat(Math.abs(pose.log(s) - pose.log(t))).isGreaterThan(1e-4);
                }
            }
        }
        // not all 36: at a corner five panels meet, and their sides cannot be equal
        assertThat(found).isBetween(20, 35);
        assertThat(new Equalizer(List.of()).from(pose)).containsSame(pose);
    }

    /** Seven lengths and four freedoms: the panels at a corner and at a face's middle are never all alike. */
    @Test
    void whatCannotBeEqualIsNot() {
        Pose pose = chord(3, 1);
        List<Web.Strut> all = List.of(
                new Web.Strut(0, 1),
                new Web.Strut(1, 2),
                new Web.Strut(2, 3),
                new Web.Strut(3, 4),
                new Web.Strut(4, 5),
                new Web.Strut(5, 6));
        assertThat(new Equalizer(all).from(pose)).isEqualTo(Optional.empty());
    }

    /** The kinds of a chord 3V and 4V (Kenner, Geodesic Math, 1976, from memory: 3 and 6 struts). */
    @ParameterizedTest
    @CsvSource({"3, 3, 2, 0 1 1 2 ", "4, 6, 5, 0 1 2 3 4 5 "})
    void kindsAreCounted(int n, int struts, int panels) {
        Kinds kinds = new Kinds(chord(n, 0));
        assertThat(kinds.struts()).isEqualTo(struts);
        assertThat(kinds.panels()).isEqualTo(panels);
        assertThat(kinds.examples()).hasSize(panels);
        assertThat(kinds.equal()).hasSize(chord(n, 0).web().struts().size() - struts);
        assertThat(new Kinds(chord(n, 0), 1).struts()).isEqualTo(1);
        assertThat(new Kinds(chord(n, 0), 1).pattern()).startsWith("0 0 0 ");
    }

    /** (4 2; 2 3) x = (2; 3) has the solution (0; 1); its damping must not show. */
    @Test
    void aSmallSystemIsSolved() {
        double[] x = Cholesky.solve(new double[][] {{4, 0}, {2, 3}}, new double[] {2, 3}, 1e-14);
        assertThat(x).containsExactly(new double[] {0, 1}, within(1e-12));
    }

    /** (1 1; 1 1) x = (2; 2) has many solutions, of which (1; 1) is the shortest. */
    @Test
    void aSingularSystemHasItsShortestSolution() {
        double[] x = Cholesky.solve(new double[][] {{1, 0}, {1, 1}}, new double[] {2, 2}, 1e-11);
        assertThat(x).containsExactly(new double[] {1, 1}, within(1e-4));
    }

    /** The least ratio of a 3V is that of equal arcs, and nothing is free to spoil it. */
    @Test
    void descentsEndAtTheirAim() {
        Pose pose = chord(3, 0);
        Pose least = Descent.from(pose, Aim.ratio());
        assertThat(StrictMath.exp(least.span())).isEqualTo(1.155613, within(1e-6));
        assertThat(Descent.repaired(pose, Aim.width(1.17)).orElseThrow().span())
                .isLessThan(StrictMath.log(1.17) + 1e-10);
        assertThat(Descent.repaired(pose, Aim.width(1.15))).isEmpty();
        assertThat(Descent.repaired(chord(2, 0), Aim.width(1.15))).isPresent();
        assertThat(Descent.repaired(chord(2, 0), Aim.width(1.13))).isEmpty();
        assertThat(Descent.from(chord(2, 0), Aim.ratio()).points()).isNotEmpty();
    }

    /** From the chord of a fine tetrahedron, whose panels are thin, a descent used to jam. */
    @Test
    void aDescentLeavesThinPanelsBehind() {
        Pose narrow = Descent.from(pose(Solid.TETRAHEDRON, 16, 0, Spacing.CHORD), Aim.width(2));
        assertThat(Aim.width(2).flaw(narrow)).isLessThan(1e-9);
        assertThat(narrow.widest()).isLessThan(StrictMath.log(0.13));
    }

    @Test
    void theStartCutsEdgesInEqualArcs() {
        Pose start = pose(Solid.OCTAHEDRON, 4, 0, Spacing.FITTED);
        Vector3D corner = start.points()[start.web().orbits().of(0)];
        double least = 2;
        for (Vector3D point : start.points()) {
            double angle = Vector3D.angle(corner, point);
            least = angle > 0 ? Math.min(least, angle) : least;
        }
        assertThat(least).isEqualTo(StrictMath.PI / 8, within(1e-14));
    }
}
