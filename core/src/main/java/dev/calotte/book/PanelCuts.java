package dev.calotte.book;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.PatternFit;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.pattern.CutPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Panels: their kinds with dimensions, and for each cover its patterns. */
final class PanelCuts {

    private final Desk desk;

    PanelCuts(Desk desk) {
        this.desk = desk;
    }

    List<Block> blocks() {
        List<Block> blocks =
                new ArrayList<>(desk.beside("panels", "All kinds of panels side by side, seen from outside.", kinds()));
        desk.matter.needs().covers().forEach(cover -> blocks.add(patterns(cover)));
        return blocks;
    }

    private Table kinds() {
        List<Row> rows = new ArrayList<>();
        for (PanelKind kind : desk.parts.panelKinds()) {
            Triangle t = kind.triangle();
            rows.add(Desk.row(
                    kind.mark(),
                    kind.mark(),
                    Integer.toString(kind.count()),
                    hand(kind),
                    Stream.of(t.a(), t.b(), t.c()).map(desk::cut).collect(Collectors.joining(", ")),
                    IntStream.range(0, 3)
                            .mapToObj(side -> desk.cut(t.altitude(side)))
                            .collect(Collectors.joining(", "))));
        }
        return new Table(
                "Panels, net, between hub centres",
                List.of(
                        Desk.text("Panel"),
                        Desk.number("Count"),
                        Desk.text("Hand"),
                        Desk.text("Short, middle, long side"),
                        Desk.text("Altitudes on them")),
                rows);
    }

    static String hand(PanelKind kind) {
        return kind.hand() == Hand.NONE
                ? "none"
                : kind.hand() == Hand.LEFT ? "left: short, middle, long" : "right: short, long, middle";
    }

    private Table patterns(CoverFit cover) {
        List<Row> rows = new ArrayList<>();
        for (PatternFit fit : cover.fits()) {
            for (CutPiece piece : fit.pieces()) {
                rows.add(Desk.row(
                        fit.pattern().kind().mark(),
                        piece.mark(),
                        Integer.toString(fit.pattern().count()),
                        fit.pattern().kind().mark(),
                        fit.pattern().mirror().orElse(""),
                        altitudes(fit),
                        desk.cut(piece.blank().narrowestWidth()),
                        Integer.toString(piece.holes().size())));
            }
        }
        return new Table(
                "Patterns of cover " + cover.patterns().cover().name() + ", after allowances",
                List.of(
                        Desk.text("Pattern"),
                        Desk.number("Count"),
                        Desk.text("Panel"),
                        Desk.text("Mirror image"),
                        Desk.text("Altitudes of the blank"),
                        Desk.number("Narrowest width"),
                        Desk.number("Holes")),
                rows);
    }

    private String altitudes(PatternFit fit) {
        return fit.pieces().size() > 1
                ? "in " + fit.pieces().size() + " parts"
                : fit.pattern().cutAltitudesMm().stream().map(desk::cut).collect(Collectors.joining(", "));
    }
}
