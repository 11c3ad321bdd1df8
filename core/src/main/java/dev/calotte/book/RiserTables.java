package dev.calotte.book;

import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.parts.RiserWall;
import dev.calotte.parts.RiserWall.BottomPlate;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;

/** The wall under the base ring. */
final class RiserTables {

    private final Desk desk;
    private final RiserWall wall;
    private final List<Row> rows = new ArrayList<>();

    RiserTables(Desk desk, RiserWall wall) {
        this.desk = desk;
        this.wall = wall;
    }

    Table table() {
        wall.walls()
                .forEach(bay -> add(
                        bay.mark(),
                        "bay, from outside",
                        bay.count(),
                        bay.widthMm(),
                        "left " + desk.length(bay.leftMm()) + ", right " + desk.length(bay.rightMm())));
        wall.uprights().forEach(upright -> add(upright.mark(), "upright", upright.count(), upright.lengthMm(), ""));
        wall.bottomPlates()
                .forEach(plate ->
                        add(plate.mark(), "bottom plate", plate.count(), plate.lengthMm(), "mitres " + mitres(plate)));
        wall.topPlates()
                .forEach(plate -> add(
                        plate.mark(),
                        "top plate, the base strut",
                        plate.count(),
                        plate.lengthMm(),
                        "slopes by " + Angle.text(plate.slopeRad(), 1)));
        return new Table(
                "The wall under it, " + desk.length(wall.heightMm()) + " high at its lowest",
                List.of(
                        Desk.text("Mark"),
                        Desk.text("What"),
                        Desk.number("Count"),
                        Desk.number("Length"),
                        Desk.text("More")),
                rows);
    }

    private void add(String mark, String what, int count, double lengthMm, String more) {
        rows.add(Desk.row("", mark, what, Integer.toString(count), desk.length(lengthMm), more));
    }

    private static String mitres(BottomPlate plate) {
        return Angle.text(BottomPlate.mitreRad(plate.smallInsideRad()), 1) + " and "
                + Angle.text(BottomPlate.mitreRad(plate.largeInsideRad()), 1);
    }
}
