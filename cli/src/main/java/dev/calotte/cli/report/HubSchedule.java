package dev.calotte.cli.report;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Spoke;
import dev.calotte.parts.BoltStack;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What meets at each hub: a row for every hub, its struts counter-clockwise seen from outside from the first strut of
 * its kind, which the tick of a hub plate marks, and its panels from the one that follows that strut.
 *
 * @param parts the parts
 */
record HubSchedule(Parts parts) {

    @Override
    public String toString() {
        PieceMarks marks = new PieceMarks(parts);
        Csv csv = new Csv()
                .row(
                        "mark",
                        "kind",
                        "row",
                        "place",
                        "base",
                        "strut_count",
                        "struts_ccw",
                        "gaps_deg",
                        "axial_angles_deg",
                        "panels_ccw",
                        "bolt_length_mm");
        parts.dome().hubs().forEach(hub -> csv.row(row(hub, marks)));
        return csv.toString();
    }

    private List<String> row(Hub hub, PieceMarks marks) {
        HubKind kind = parts.kindOf(hub);
        List<Spoke> spokes = parts.around(hub);
        return List.of(
                marks.of(hub),
                kind.mark(),
                Integer.toString(hub.row()),
                Integer.toString(hub.place()),
                kind.open() ? "yes" : "no",
                Integer.toString(spokes.size()),
                joined(spokes, spoke -> marks.of(parts.dome().struts().get(spoke.strut()))),
                joined(kind.gapsRad(), Tables::degrees),
                joined(kind.axialAnglesRad(), Tables::degrees),
                joined(
                        spokes.stream()
                                .filter(spoke -> spoke.panel() != Spoke.NONE)
                                .toList(),
                        spoke -> marks.of(parts.dome().panels().get(spoke.panel()))),
                parts.boltStack(kind).map(BoltStack::lengthMm).map(Tables::mm).orElse(""));
    }

    private static <T> String joined(List<T> list, Function<T, String> text) {
        return list.stream().map(text).collect(Collectors.joining(" "));
    }
}
