package dev.calotte.compare;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RankingTest {

    private static final Compared REAL = real();

    private static Compared real() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(3000))
                .withKeep(new Keep.Rows(1, 2));
        Request request =
                new Request(spec, Joinery.nodeToNode(), List.of(), List.of(), new InCommon.OfSize(spec.size()));
        Parts parts = Parts.of(Dome.of(spec), request.joinery());
        Draft draft = new Draft(new Candidate(spec, 0, true), spec, parts, List.of(), Optional.empty());
        return Compared.of(request, draft, List.of(), true);
    }

    /** A row of few different values, so that many are equal. */
    private static Compared row(Random random, int place) {
        Counts counts = new Counts(1, 1 + random.nextInt(4), 0, 1, 1, 1 + random.nextInt(4), 1);
        double price = random.nextInt(5);
        boolean fits = random.nextInt(6) > 0;
        Work work = new Work(
                fits ? Work.Fits.WHOLE : Work.Fits.NO, 1, OptionalDouble.empty(), OptionalDouble.empty(), 1, 1, 0);
        StockUse use = new StockUse("glazing", 1, 0, 1e6, 1e6, OptionalDouble.of(price));
        return new Compared(
                new Candidate(REAL.spec(), place, place == 0),
                REAL.spec(),
                REAL.measures(),
                1e9 * (1 + random.nextInt(3)),
                counts,
                work,
                Optional.empty(),
                fits ? List.of(use) : List.of(),
                true,
                OptionalDouble.empty(),
                false);
    }

    private static List<Compared> rows(Random random, int count) {
        List<Compared> rows = new ArrayList<>();
        for (int place = 0; place < count; place++) {
            rows.add(row(random, place));
        }
        return rows;
    }

    /** The front peeled off by sorting: what no row before it in lexical order equals or beats in the other two. */
    @Test
    void theBestAreThoseThatNoneBeats() {
        Cases.each(200, (random, size) -> {
            List<Compared> rows = rows(random, 1 + size % 40);
            Ranking ranking = Ranking.of(new InCommon.StockOf("glazing"), rows);
            if (rows.stream().noneMatch(Compared::fits)) {
                return;
            }
            assertThat(ranking.criteria()).containsExactly(Column.PER_ROOM, Column.KINDS, Column.ROOM);
            for (Compared row : rows) {
                boolean beaten = false;
                for (Compared other : rows) {
                    if (other.fits()) {
                        double[] mine = figures(row);
                        double[] theirs = figures(other);
                        int worse = 0;
                        int better = 0;
                        for (int i = 0; i < 3; i++) {
                            worse += theirs[i] > mine[i] ? 1 : 0;
                            better += theirs[i] < mine[i] ? 1 : 0;
                        }
                        beaten |= worse == 0 && better > 0;
                    }
                }
                assertThat(ranking.isBest(row, rows)).isEqualTo(row.fits() && !beaten);
            }
        });
    }

    /** Price over room^2/3, kinds, and the room turned round: less is better in all. */
    private static double[] figures(Compared row) {
        double price = row.stocks().stream()
                .mapToDouble(use -> use.price().getAsDouble())
                .sum();
        double spent = price / Math.cbrt(row.roomMm3() / 1e9) / Math.cbrt(row.roomMm3() / 1e9);
        double rounded = Math.rint(spent * 1e9) / 1e9;
        return new double[] {rounded, row.counts().panelKinds() + row.counts().strutKinds(), -row.roomMm3()};
    }

    @Test
    void aBestThatFitsIsAlwaysThere() {
        Cases.each(50, (random, size) -> {
            List<Compared> rows = rows(random, 1 + size % 30);
            Ranking ranking = Ranking.of(new InCommon.OfSize(REAL.spec().size()), rows);
            boolean any = rows.stream().anyMatch(Compared::fits);
            assertThat(rows.stream().anyMatch(row -> ranking.isBest(row, rows))).isEqualTo(any);
        });
    }

    @Test
    void rowsRiseOrFallAndWhatDoesNotFitComesLast() {
        List<Compared> rows = rows(new Random(7), 40);
        for (Column column : Column.values()) {
            List<Compared> sorted = rows.stream().sorted(Ranking.by(column)).toList();
            long fitting = rows.stream().filter(Compared::fits).count();
            assertThat(sorted.subList(0, (int) fitting)).allMatch(Compared::fits);
            assertThat(sorted.subList((int) fitting, 40)).noneMatch(Compared::fits);
            for (int i = 1; i < fitting; i++) {
                assertThat(column.rank(sorted.get(i - 1))).isLessThanOrEqualTo(column.rank(sorted.get(i)));
            }
        }
        Compared dear = rows.stream()
                .filter(Compared::fits)
                .max(Ranking.by(Column.PRICE))
                .orElseThrow();
        assertThat(rows)
                .filteredOn(Compared::fits)
                .allSatisfy(row -> assertThat(row.price().getAsDouble())
                        .isLessThanOrEqualTo(dear.price().getAsDouble()));
        Compared roomiest = rows.stream().min(Ranking.by(Column.ROOM)).orElseThrow();
        assertThat(rows)
                .filteredOn(Compared::fits)
                .allSatisfy(row -> assertThat(row.roomMm3()).isLessThanOrEqualTo(roomiest.roomMm3()));
    }

    @Test
    void whatIsNotKnownIsNoCriterion() {
        assertThat(Ranking.of(new InCommon.OfSize(REAL.spec().size()), List.of(REAL))
                        .criteria())
                .containsExactly(Column.KINDS, Column.HUBS, Column.ROOM);
        assertThat(Ranking.of(new InCommon.OfSize(REAL.spec().size()), List.of())
                        .usual())
                .isEqualTo(Column.KINDS);
    }

    @Test
    void namesAreThoseThatTheCommandTakes() {
        assertThat(Column.PER_ROOM).hasToString("per-room");
        assertThat(Column.HEIGHT).hasToString("height");
    }
}
