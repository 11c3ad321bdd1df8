package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.testing.Cases;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Two bodies that move about, against the distances of the JTS Topology Suite. */
class PartingTest {

    private static final double SPACING = 5;

    private static ConvexPolygon polygon(Random random) {
        int n = 3 + random.nextInt(4);
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
            xy[2 * i] = 60 * Math.cos(angle);
            xy[2 * i + 1] = 40 * Math.sin(angle);
        }
        return ConvexPolygon.of(xy);
    }

    private static Bodies bodies(Random random) {
        Bodies bodies = new Bodies(2);
        bodies.set(0, polygon(random));
        bodies.set(1, polygon(random));
        return bodies;
    }

    private static Geometry at(Standing standing, int body, double shift) {
        double[] xy = new double[2 * standing.x[body].length];
        for (int c = 0; c < standing.x[body].length; c++) {
            xy[2 * c] = standing.x[body][c] + shift;
            xy[2 * c + 1] = standing.y[body][c];
        }
        return KnownPlan.polygon(ConvexPolygon.of(xy));
    }

    /** In small steps, so that the side that kept them apart does so again or only just no longer. */
    @Test
    void bodiesThatAreApartAreAsFarAsTheirSpacingAndOthersAsFarAsTheySay() {
        Cases.each(40, (random, size) -> {
            Standing standing = new Standing(bodies(random));
            Parting parting = new Parting(standing, SPACING);
            double shift = 20 * random.nextDouble() - 10;
            double turn = 0;
            for (double x = -160; x <= 160; x += 2.5) {
                turn += 8 * random.nextDouble();
                standing.place(0, 0, 0, turn / 2);
                standing.place(1, x, 30 * random.nextDouble(), turn);
                double distance = at(standing, 0, 0).distance(at(standing, 1, shift));
                boolean apart = parting.apart(0, 1, shift);
                if (apart) {
                    assertThat(distance).isGreaterThan(SPACING - 1e-9);
                } else if (parting.gap() > 0) {
                    boolean own = parting.own();
                    double told = parting.distance(own ? 0 : 1, own ? 1 : 0, own ? shift : -shift);
                    assertThat(told).isCloseTo(distance, within(1e-9));
                } else {
                    assertThat(distance).isLessThan(1e-9);
                }
                assertThat(new Parting(standing, SPACING).apart(0, 1, shift))
                        .as("asked for the first time")
                        .isEqualTo(apart);
            }
        });
    }

    /** Nearly touching, where what is known and what is looked for differ by rounding alone. */
    @Test
    void nearestPointsOfBodiesThatAllButTouchAreTold() {
        Cases.each(200, (random, size) -> {
            Standing standing = new Standing(bodies(random));
            Parting parting = new Parting(standing, SPACING);
            double turn = 100 * random.nextDouble();
            standing.place(0, 0, 0, turn);
            double over = 0;
            double clear = 200;
            for (int step = 0; step < 60; step++) {
                double x = (over + clear) / 2;
                standing.place(1, x, 3, 2 * turn);
                if (parting.apart(0, 1, 0) || parting.gap() > 0) {
                    clear = x;
                } else {
                    over = x;
                }
            }
            standing.place(1, clear, 3, 2 * turn);
            assertThat(parting.apart(0, 1, 0)).isFalse();
            assertThat(parting.gap()).isBetween(0.0, 1e-6);
            double told = parting.distance(parting.own() ? 0 : 1, parting.own() ? 1 : 0, 0);
            double between = Math.hypot(parting.toX() - parting.fromX(), parting.toY() - parting.fromY());
            assertThat(between).isCloseTo(told, within(1e-12));
            assertThat(told).isLessThan(1e-6);
        });
    }

    @Test
    void aPlaceThatIsNoNumberIsNotFarAway() {
        Standing standing = new Standing(bodies(new Random(1)));
        Parting parting = new Parting(standing, SPACING);
        standing.place(0, 0, 0, 0);
        standing.place(1, 500, 0, 0);
        assertThat(parting.apart(0, 1, 0)).isTrue();
        standing.place(1, Double.NaN, 0, 0);
        assertThat(parting.apart(0, 1, 0)).isFalse();
        standing.place(1, 500, 0, Double.NaN);
        assertThat(parting.apart(0, 1, 0)).isFalse();
    }
}
