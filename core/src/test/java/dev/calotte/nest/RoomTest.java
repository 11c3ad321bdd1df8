package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** What stock lacks for a part, all by hand. */
class RoomTest {

    private static final Terms ONE = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(1));
    private static final Sheet SHEET = new Sheet(1020, 520, 10, Terms.OPEN);
    private static final Field FIELD = Field.of(0, SHEET);

    private static ConvexPolygon rectangle(double length, double width) {
        return ConvexPolygon.of(0, 0, length, 0, length, width, 0, width);
    }

    private static Piece piece(ConvexPolygon outline, OptionalDouble grain) {
        return new Piece("A", outline, 1, false, grain);
    }

    private static double lacking(ConvexPolygon outline, OptionalDouble grain, Field field) {
        return Room.lackingMm(new Kinds(List.of(piece(outline, grain))), 0, field);
    }

    @Test
    void aPartWithAGrainLacksWhatItIsLongerOrWider() {
        OptionalDouble along = OptionalDouble.of(0);
        assertThat(lacking(rectangle(1030, 300), along, FIELD)).isCloseTo(30, within(1e-9));
        assertThat(lacking(rectangle(300, 570), along, FIELD)).isCloseTo(70, within(1e-9));
        assertThat(lacking(rectangle(900, 450), along, FIELD)).isCloseTo(-50, within(1e-9));
        assertThat(lacking(rectangle(300, 570), OptionalDouble.of(Math.PI / 2), FIELD))
                .isCloseTo(-200, within(1e-9));
    }

    @Test
    void aPartWithoutAGrainIsTurnedAsItHasMostRoom() {
        assertThat(lacking(rectangle(300, 570), OptionalDouble.empty(), FIELD)).isCloseTo(-200, within(1e-6));
        Field endless = Field.of(0, new Roll(520, 10, OptionalDouble.empty(), Terms.OPEN));
        assertThat(lacking(rectangle(530, 3000), OptionalDouble.empty(), endless))
                .isCloseTo(30, within(1e-9));
    }

    @Test
    void whatTouchesTheEdgesIsHeldAndLiesMidway() {
        assertThat(Room.beyondMm(500, 500)).isZero();
        assertThat(Room.beyondMm(499, 500)).isZero();
        assertThat(Room.beyondMm(500 + 8e-7, 500)).isCloseTo(4e-7, within(1e-12));
        assertThat(Room.beyondMm(500 + 2e-6, 500)).isInfinite();
        assertThat(Room.holds(FIELD, rectangle(1000 + 8e-7, 500 + 8e-7))).isTrue();
        assertThat(Room.holds(FIELD, rectangle(1000 + 2e-6, 400))).isFalse();
        assertThat(Room.holds(FIELD, rectangle(900, 500 + 2e-6))).isFalse();
    }

    /** A strip on the diagonal, which is 1118 mm: turned either way, its ends stay inside. */
    @Test
    void whatHasRoomAtASlantOnlyIsLaidSo() {
        Kinds kinds = new Kinds(List.of(piece(rectangle(1080, 20), OptionalDouble.empty())));
        List<Stand> stands = Room.askew(kinds, 0, FIELD);
        assertThat(stands).hasSize(2);
        assertThat(stands.get(1).turnRad() - stands.get(0).turnRad()).isCloseTo(Math.PI, within(1e-12));
        assertThat(stands).allSatisfy(stand -> {
            ConvexPolygon laid = kinds.outline(0, stand, 0, 0);
            assertThat(laid.extent(new Vector2D(1, 0))).isLessThan(1000);
            assertThat(laid.extent(new Vector2D(0, 1))).isLessThan(500);
        });
    }

    private static double over(ConvexPolygon outline, OptionalDouble grain, Polygon border, double margin) {
        return OutlineRoom.overMm(piece(outline, grain), new Outline("o", border, margin, ONE));
    }

    @Test
    void onAnOutlineAPartLacksWhatItIsTooLargeForItsHollows() {
        // an angle of strips 100 mm wide: narrower by 20 of 120, and long enough for any
        Polygon angle = Polygon.of(0, 0, 800, 0, 800, 100, 100, 100, 100, 800, 0, 800);
        OptionalDouble along = OptionalDouble.of(0);
        assertThat(over(rectangle(300, 120), along, angle, 0)).isCloseTo(20, within(1e-3));
        assertThat(over(rectangle(300, 120), OptionalDouble.empty(), angle, 0)).isCloseTo(20, within(1e-3));
        assertThat(over(rectangle(300, 90), along, angle, 0)).isCloseTo(-500, within(1e-9));
        assertThat(over(rectangle(300, 90), along, angle, 10)).isCloseTo(10, within(1e-3));
        assertThat(over(rectangle(900, 90), along, angle, 0)).isCloseTo(100, within(1e-9));
    }
}
