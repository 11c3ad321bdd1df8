package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowCutTest {

    private static DomeSpec spec(Solid solid, int b, int c) {
        return DomeSpec.of(solid, new Breakdown(b, c), Size.radius(1000));
    }

    private static RowCut cut(DomeSpec spec, int kept, int of) {
        return RowCut.of(spec, new Keep.Rows(kept, of));
    }

    private static Problem refusal(DomeSpec spec, int kept, int of) {
        return catchThrowableOfType(CalotteException.class, () -> cut(spec, kept, of))
                .problems()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "ICOSAHEDRON, 3, 4, 9, 4, 9",
        "ICOSAHEDRON, 3, 1, 3, 3, 9",
        "ICOSAHEDRON, 8, 5, 8, 15, 24",
        "ICOSAHEDRON, 8, 3, 8, 9, 24",
        "ICOSAHEDRON, 4, 12, 12, 12, 12",
        "OCTAHEDRON, 3, 1, 2, 3, 6",
        "TETRAHEDRON, 4, 1, 2, 2, 4"
    })
    void fractionsKeepTheirRows(Solid solid, int n, int kept, int of, int rows, int all) {
        RowCut cut = cut(spec(solid, n, 0), kept, of);
        assertThat(cut.rows()).isEqualTo(rows);
        assertThat(cut.of()).isEqualTo(all);
        assertThat(cut.note()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"3, 4", "5, 5"})
    void nicknamesOfThe3VAreTakenAndTold(int kept, int rows) {
        DomeSpec spec = spec(Solid.ICOSAHEDRON, 3, 0);
        RowCut cut = cut(spec, kept, 8);
        assertThat(cut.rows()).isEqualTo(rows);
        assertThat(cut.of()).isEqualTo(9);
        assertThat(cut.note())
                .contains("keep: " + kept + "/8 is the trade's name for " + rows + "/9 of a 3V; it is built as " + rows
                        + "/9.");
        Dome nicknamed = Dome.of(spec.withKeep(new Keep.Rows(kept, 8)));
        Dome named = Dome.of(spec.withKeep(new Keep.Rows(rows, 9)));
        assertThat(nicknamed.panels()).isEqualTo(named.panels());
        assertThat(nicknamed.notes()).containsExactly(cut.note().orElseThrow());
        assertThat(named.notes()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "ICOSAHEDRON, 3, 1, 8, Use 1/9 (1 rows) or 2/9 (2 rows).",
        "ICOSAHEDRON, 3, 7, 8, Use 7/9 (7 rows) or 8/9 (8 rows).",
        "ICOSAHEDRON, 4, 5, 8, Use 7/12 (7 rows) or 2/3 (8 rows).",
        "ICOSAHEDRON, 4, 3, 8, Use 1/3 (4 rows) or 5/12 (5 rows).",
        "OCTAHEDRON, 3, 3, 8, Use 1/3 (2 rows) or 1/2 (3 rows).",
        "OCTAHEDRON, 1, 1, 3, Use 1/2 (1 rows).",
        "TETRAHEDRON, 2, 2, 3, Use 1/2 (1 rows) or whole (2 rows).",
        "ICOSAHEDRON, 6, 3, 8, Use 1/3 (6 rows) or 7/18 (7 rows)."
    })
    void fractionsBetweenRowsAreRefused(Solid solid, int n, int kept, int of, String mend) {
        Problem problem = refusal(spec(solid, n, 0), kept, of);
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("dome.keep");
        assertThat(problem.what())
                .isEqualTo(kept + "/" + of + " of " + n * solid.rowsPerFrequency()
                        + " rows is not a whole number of rows.");
        assertThat(problem.mend()).isEqualTo(mend);
    }

    @Test
    void nicknamesAreOnlyTheIcosahedrons() {
        DomeSpec nineRows = spec(Solid.TETRAHEDRON, 9, 0);
        assertThat(refusal(nineRows, 5, 8).code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(refusal(spec(Solid.ICOSAHEDRON, 3, 0), 5, 7).code()).isEqualTo(Code.IMPOSSIBLE);
    }

    @ParameterizedTest
    @CsvSource({"2, 0, EDGE", "2, 0, FACE", "2, 2, VERTEX", "2, 1, VERTEX"})
    void rowsNeedClassOneAndAVertexUp(int b, int c, Up up) {
        Problem problem = refusal(spec(Solid.ICOSAHEDRON, b, c).withUp(up), 1, 2);
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.where()).isEqualTo("dome.keep");
        assertThat(problem.what())
                .contains("1/2 has no meaning for [" + b + ", " + c + "] with "
                        + up.name().toLowerCase(java.util.Locale.ROOT) + " up");
    }

    @ParameterizedTest
    @CsvSource({"0, 3", "-1, 3", "4, 3", "1, 0"})
    void wrongFractionsAreRefused(int kept, int of) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Keep.Rows(kept, of))
                .withMessageContaining(kept + "/" + of);
    }
}
