package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.RiserWall.BottomPlate;
import dev.calotte.parts.RiserWall.TopPlate;
import dev.calotte.parts.RiserWall.Upright;
import dev.calotte.parts.RiserWall.Wall;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RiserWallTest {

    private static final double R = 3000;
    private static final double H = 600;

    private static DomeSpec spec(int n, int kept, int of) {
        return DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(n), Size.radius(R)).withKeep(new Keep.Rows(kept, of));
    }

    /** Half a 2V: ten base hubs evenly round the circle, so sides of 2 R sin 18° and mitres of 180° / 10. */
    @Test
    void aRegularRingHasOneKindOfEach() {
        RiserWall wall = RiserWall.of(Dome.of(spec(2, 1, 2)), H);
        double side = 2 * R * Math.sin(Math.toRadians(18));
        assertThat(wall.walls()).singleElement().satisfies(w -> {
            assertThat(w.mark()).isEqualTo("W1");
            assertThat(w.widthMm()).isCloseTo(side, within(1e-9 * R));
            assertThat(w.leftMm()).isCloseTo(H, within(1e-9 * R));
            assertThat(w.rightMm()).isCloseTo(H, within(1e-9 * R));
            assertThat(w.topMm()).isCloseTo(side, within(1e-9 * R));
            assertThat(w.count()).isEqualTo(10);
        });
        assertThat(wall.uprights()).singleElement().satisfies(u -> {
            assertThat(u.mark()).isEqualTo("U1");
            assertThat(u.lengthMm()).isCloseTo(H, within(1e-9 * R));
            assertThat(u.count()).isEqualTo(10);
        });
        assertThat(wall.bottomPlates()).singleElement().satisfies(b -> {
            assertThat(b.mark()).isEqualTo("B1");
            assertThat(b.lengthMm()).isCloseTo(side, within(1e-9 * R));
            assertThat(Math.toDegrees(b.smallInsideRad())).isCloseTo(144, within(1e-7));
            assertThat(Math.toDegrees(b.largeInsideRad())).isCloseTo(144, within(1e-7));
            assertThat(Math.toDegrees(BottomPlate.mitreRad(b.smallInsideRad()))).isCloseTo(18, within(1e-7));
            assertThat(b.count()).isEqualTo(10);
        });
        assertThat(wall.topPlates()).singleElement().satisfies(t -> {
            assertThat(t.mark()).isEqualTo("T1");
            assertThat(t.slopeRad()).isCloseTo(0, within(1e-9));
            assertThat(t.lengthMm()).isCloseTo(side, within(1e-9 * R));
            assertThat(t.count()).isEqualTo(10);
        });
        assertThat(wall.heightMm()).isEqualTo(H);
        assertThat(wall.totalHeightMm()).isCloseTo(R + H, within(1e-9 * R));
        assertThat(wall.baysLeftOut()).isZero();
        assertThat(wall.notes()).isEmpty();
    }

    /** Five base hubs of a 3V at one height and ten at another: reference geometry, section on truncation. */
    @Test
    void aRingOfTwoHeightsHasHandedBays() {
        Dome dome = Dome.of(spec(3, 5, 9));
        RiserWall wall = RiserWall.of(dome, H);
        double spread = dome.measures().baseSpreadMm();
        assertThat(wall.totalHeightMm()).isCloseTo(dome.measures().heightMm() + H, within(1e-9 * R));
        assertThat(wall.uprights()).extracting(Upright::mark).containsExactly("U1", "U2");
        assertThat(wall.uprights().get(0).lengthMm()).isCloseTo(H, within(1e-9 * R));
        assertThat(wall.uprights().get(1).lengthMm()).isCloseTo(H + spread, within(1e-9 * R));
        assertThat(wall.uprights()).extracting(Upright::count).containsExactlyInAnyOrder(5, 10);
        Wall left = wall.walls().stream()
                .filter(w -> w.hand() == Hand.LEFT)
                .findFirst()
                .orElseThrow();
        Wall right = wall.walls().stream()
                .filter(w -> w.hand() == Hand.RIGHT)
                .findFirst()
                .orElseThrow();
        Wall even = wall.walls().stream()
                .filter(w -> w.hand() == Hand.NONE)
                .findFirst()
                .orElseThrow();
        assertThat(wall.walls()).hasSize(3);
        assertThat(left.number()).isEqualTo(right.number()).isNotEqualTo(even.number());
        assertThat(left.mark()).endsWith("L");
        assertThat(List.of(left.count(), right.count(), even.count())).containsExactly(5, 5, 5);
        assertThat(left.leftMm()).isEqualTo(right.rightMm()).isCloseTo(H, within(1e-9 * R));
        assertThat(left.rightMm()).isEqualTo(right.leftMm()).isCloseTo(H + spread, within(1e-9 * R));
        assertThat(left.topMm()).isCloseTo(Math.hypot(left.widthMm(), spread), within(1e-9 * R));
        assertThat(wall.topPlates()).extracting(TopPlate::count).containsExactlyInAnyOrder(5, 10);
        TopPlate sloping = wall.topPlates().stream()
                .filter(t -> t.count() == 10)
                .findFirst()
                .orElseThrow();
        assertThat(sloping.slopeRad()).isCloseTo(Math.atan(spread / left.widthMm()), within(1e-9));
        assertThat(sloping.lengthMm()).isCloseTo(left.topMm(), within(1e-9 * R));
    }

    /** The top of each bay is a base strut, and the corners of a ring turn once round. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6})
    void topPlatesAreTheBaseStrutsAndMitresAddUpToAHalfTurn(int n) {
        Dome dome = Dome.of(spec(n, 3 * n / 2, 3 * n));
        RiserWall wall = RiserWall.of(dome, H);
        int ring = dome.baseRing().size();
        assertThat(wall.walls().stream().mapToInt(Wall::count).sum()).isEqualTo(ring);
        assertThat(wall.uprights().stream().mapToInt(Upright::count).sum()).isEqualTo(ring);
        assertThat(wall.bottomPlates().stream().mapToInt(BottomPlate::count).sum())
                .isEqualTo(ring);
        double mitres = wall.bottomPlates().stream()
                .mapToDouble(b -> b.count()
                        * (BottomPlate.mitreRad(b.smallInsideRad()) + BottomPlate.mitreRad(b.largeInsideRad())))
                .sum();
        assertThat(mitres).isCloseTo(2 * Math.PI, within(1e-7));
        double struts = dome.struts().stream()
                .filter(s -> s.dihedralRad().isEmpty())
                .mapToDouble(s -> s.lengthMm())
                .sum();
        assertThat(wall.topPlates().stream()
                        .mapToDouble(t -> t.count() * t.lengthMm())
                        .sum())
                .isCloseTo(struts, within(1e-7 * R));
        assertThat(wall.walls().stream().mapToDouble(w -> w.count() * w.topMm()).sum())
                .isCloseTo(struts, within(1e-7 * R));
    }

    @Test
    void overALevelBaseAllUprightsAreEqual() {
        RiserWall wall = RiserWall.of(Dome.of(spec(3, 5, 9).withBase(Base.LEVEL)), H);
        assertThat(wall.uprights()).hasSize(1);
        assertThat(wall.walls()).allMatch(w -> w.hand() == Hand.NONE);
        assertThat(wall.topPlates()).allSatisfy(t -> assertThat(t.slopeRad()).isCloseTo(0, within(1e-9)));
    }

    @Test
    void aBayWithoutItsBaseStrutIsLeftOut() {
        Dome whole = Dome.of(spec(2, 1, 2));
        List<Integer> standing = whole.panels().stream()
                .filter(p -> p.hubs().stream()
                                .filter(h -> whole.hubs().get(h).open())
                                .count()
                        == 2)
                .map(Panel::index)
                .limit(1)
                .toList();
        RiserWall gone = RiserWall.of(whole.withOpenings(List.of(new Opening("door", standing, true))), H);
        assertThat(gone.walls().get(0).count()).isEqualTo(9);
        assertThat(gone.bottomPlates().get(0).count()).isEqualTo(9);
        assertThat(gone.topPlates().get(0).count()).isEqualTo(9);
        assertThat(gone.uprights().get(0).count()).isEqualTo(10);
        assertThat(gone.bottomPlates().get(0).smallInsideRad()).isCloseTo(Math.toRadians(144), within(1e-9));
        assertThat(gone.notes()).containsExactly("Riser: 1 bay is left out where an opening took the base strut.");
        RiserWall kept = RiserWall.of(whole.withOpenings(List.of(new Opening("door", standing, false))), H);
        assertThat(kept.walls().get(0).count()).isEqualTo(10);
    }

    /** Seen from outside the ring runs from left to right: a bay from a low hub to a high one is a left one. */
    @Test
    void theHandOfABayIsSeenFromOutside() {
        Dome whole = Dome.of(spec(3, 5, 9));
        List<Integer> ring = whole.baseRing();
        int i = 0;
        while (height(whole, ring.get(i + 1)) - height(whole, ring.get(i)) < 1) {
            i++;
        }
        int low = ring.get(i);
        int high = ring.get(i + 1);
        List<Integer> standing = whole.panels().stream()
                .filter(p -> p.hubs().contains(low) && p.hubs().contains(high))
                .map(Panel::index)
                .toList();
        RiserWall wall = RiserWall.of(whole.withOpenings(List.of(new Opening("door", standing, true))), H);
        assertThat(wall.walls())
                .filteredOn(w -> w.hand() == Hand.LEFT)
                .singleElement()
                .satisfies(w -> assertThat(w.count()).isEqualTo(4));
        assertThat(wall.walls())
                .filteredOn(w -> w.hand() == Hand.RIGHT)
                .singleElement()
                .satisfies(w -> assertThat(w.count()).isEqualTo(5));
    }

    private static double height(Dome dome, int hub) {
        return dome.hubs().get(hub).position().getZ();
    }

    /** All panels at one base hub: it goes with its struts, and its two bays. */
    @Test
    void anUprightGoesWithItsHub() {
        Dome whole = Dome.of(spec(3, 4, 9));
        Hub foot = whole.hubs().get(whole.baseRing().get(0));
        List<Integer> panels = whole.panels().stream()
                .filter(p -> p.hubs().contains(foot.index()))
                .map(Panel::index)
                .toList();
        RiserWall wall = RiserWall.of(whole.withOpenings(List.of(new Opening("door", panels, true))), H);
        assertThat(wall.uprights().stream().mapToInt(Upright::count).sum()).isEqualTo(14);
        assertThat(wall.walls().stream().mapToInt(Wall::count).sum()).isEqualTo(13);
        assertThat(wall.baysLeftOut()).isEqualTo(2);
        assertThat(wall.notes()).containsExactly("Riser: 2 bays are left out where an opening took the base strut.");
    }

    @Test
    void aWholeSphereStandsOnNoWall() {
        Dome sphere = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(R)));
        Problem problem = catchThrowableOfType(CalotteException.class, () -> RiserWall.of(sphere, H))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.where()).isEqualTo("dome.riser");
        assertThat(problem.what()).isEqualTo("a whole sphere has no base ring to put a wall under.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aWallOfNoHeightIsRefused(double height) {
        Dome dome = Dome.of(spec(2, 1, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> RiserWall.of(dome, height));
    }
}
