package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Strut;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Struts and panels of a dome, which may have openings, by the kinds of the whole dome. */
final class Remaining {

    final Recount<StrutKind> struts;
    final Recount<PanelKind> panels;

    private Remaining(Recount<StrutKind> struts, Recount<PanelKind> panels) {
        this.struts = struts;
        this.panels = panels;
    }

    static Remaining of(Dome dome, StrutSorting wholeStruts, PanelSorting wholePanels) {
        int[] strutKinds = IntStream.range(0, dome.struts().size())
                .map(s -> wholeStruts.number(dome.wholeStrut(s)) - 1)
                .toArray();
        int[] panelKinds = IntStream.range(0, dome.panels().size())
                .map(p -> wholePanels.kindOf[dome.wholePanel(p)])
                .toArray();
        if (dome.openings().isEmpty()) {
            return new Remaining(
                    new Recount<>(wholeStruts.kinds, strutKinds), new Recount<>(wholePanels.kinds, panelKinds));
        }
        return new Remaining(struts(dome, wholeStruts.kinds, strutKinds), panels(wholePanels.kinds, panelKinds));
    }

    private static Recount<StrutKind> struts(Dome dome, List<StrutKind> whole, int[] kindOf) {
        int[][] carried =
                whole.stream().map(kind -> new int[kind.dihedrals().size()]).toArray(int[][]::new);
        for (Strut strut : dome.struts()) {
            int kind = kindOf[strut.index()];
            List<StrutKind.Dihedral> dihedrals = whole.get(kind).dihedrals();
            strut.dihedralRad().ifPresent(angle -> carried[kind][group(dihedrals, angle)]++);
        }
        return new Recount<>(whole.size(), kindOf, (kind, count) -> counted(whole.get(kind), count, carried[kind]));
    }

    private static StrutKind counted(StrutKind whole, int count, int[] carried) {
        return whole.counted(
                count,
                IntStream.range(0, carried.length)
                        .filter(i -> carried[i] > 0)
                        .mapToObj(i ->
                                new StrutKind.Dihedral(whole.dihedrals().get(i).angleRad(), carried[i]))
                        .toList());
    }

    /** The angles stand for groups by their least value: the last that is not above the angle. */
    private static int group(List<StrutKind.Dihedral> dihedrals, double angleRad) {
        int group = 0;
        while (group + 1 < dihedrals.size() && dihedrals.get(group + 1).angleRad() <= angleRad) {
            group++;
        }
        return group;
    }

    private static Recount<PanelKind> panels(List<PanelKind> whole, int[] kindOf) {
        List<String> there = IntStream.of(kindOf)
                .distinct()
                .mapToObj(kind -> whole.get(kind).mark())
                .toList();
        return new Recount<>(whole.size(), kindOf, (kind, count) -> {
            Optional<String> twin = whole.get(kind).twin().filter(there::contains);
            return whole.get(kind).counted(count, twin);
        });
    }
}
