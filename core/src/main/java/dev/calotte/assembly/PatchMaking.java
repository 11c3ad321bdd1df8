package dev.calotte.assembly;

import dev.calotte.assembly.PatchKind.Seam;
import dev.calotte.dome.Dome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The order in which the panels of a patch are joined: round the hub of a star; else strip by strip, a strip being
 * connected panels of one row, and then strip to strip.
 */
final class PatchMaking {

    private final PanelNet net;
    private final double[] lengths;
    private final List<Integer> order = new ArrayList<>();
    private final List<Seam> seams = new ArrayList<>();
    private final Map<Integer, Integer> placeOf = new TreeMap<>();

    private PatchMaking(PanelNet net, double[] lengths) {
        this.net = net;
        this.lengths = lengths;
    }

    /** Of a star, its panels counter-clockwise round the hub, beginning behind a gap if there is one. */
    static PatchMaking ofStar(PanelNet net, double[] lengths, List<Integer> around) {
        PatchMaking making = new PatchMaking(net, lengths);
        making.strip(around);
        return making;
    }

    /** Of any connected panels. */
    static PatchMaking ofStrips(PanelNet net, double[] lengths, List<Integer> panels, Dome dome) {
        PatchMaking making = new PatchMaking(net, lengths);
        Map<Integer, Set<Integer>> rows = new TreeMap<>();
        panels.forEach(panel -> rows.computeIfAbsent(dome.panels().get(panel).row(), r -> new TreeSet<>())
                .add(panel));
        List<List<Integer>> strips = new ArrayList<>();
        rows.values().forEach(row -> strips.addAll(making.walks(row)));
        strips.forEach(making::strip);
        making.joinStrips(strips);
        return making;
    }

    List<Integer> order() {
        return order;
    }

    List<Seam> seams() {
        return seams;
    }

    /** Panels that follow one another: each is joined to the one before and then to earlier ones that it touches. */
    private void strip(List<Integer> panels) {
        int first = order.size() + 1;
        order.addAll(panels);
        for (int i = 0; i < panels.size(); i++) {
            int panel = panels.get(i);
            int place = first + i;
            neighbours(panel, placeOf.keySet()).stream()
                    .distinct()
                    .filter(other -> placeOf.get(other) >= first)
                    .sorted(Comparator.comparing(placeOf::get).reversed())
                    .forEach(other -> seam(List.of(place), List.of(placeOf.get(other)), shared(panel, other)));
            placeOf.put(panel, place);
        }
    }

    private void seam(List<Integer> these, List<Integer> to, double lengthMm) {
        seams.add(new Seam(these, to, lengthMm));
    }

    private double shared(int panel, int other) {
        return IntStream.range(3 * panel, 3 * panel + 3)
                .filter(side -> net.across(side) / 3 == other && net.across(side) != PanelNet.NONE)
                .mapToDouble(side -> lengths[net.strut(side)])
                .sum();
    }

    /** The panels of a row as walks from neighbour to neighbour, each from an end if it has one. */
    private List<List<Integer>> walks(Set<Integer> row) {
        List<List<Integer>> walks = new ArrayList<>();
        Set<Integer> left = new TreeSet<>(row);
        while (!left.isEmpty()) {
            Set<Integer> strip = connected(left);
            left.removeAll(strip);
            while (!strip.isEmpty()) {
                walks.add(walk(strip));
            }
        }
        return walks;
    }

    private Set<Integer> connected(Set<Integer> among) {
        List<Integer> found = new ArrayList<>(List.of(among.iterator().next()));
        Set<Integer> seen = new TreeSet<>(found);
        for (int i = 0; i < found.size(); i++) {
            for (int next : neighbours(found.get(i), among)) {
                if (seen.add(next)) {
                    found.add(next);
                }
            }
        }
        return seen;
    }

    /** Takes a walk out of what is left of a strip. */
    private List<Integer> walk(Set<Integer> left) {
        int here = left.stream()
                .filter(panel -> neighbours(panel, left).size() < 2)
                .findFirst()
                .orElse(left.iterator().next());
        List<Integer> walk = new ArrayList<>();
        while (here != PanelNet.NONE) {
            walk.add(here);
            left.remove(here);
            List<Integer> ahead = neighbours(here, left);
            here = ahead.isEmpty() ? PanelNet.NONE : ahead.get(0);
        }
        return walk;
    }

    private List<Integer> neighbours(int panel, Set<Integer> among) {
        return IntStream.range(3 * panel, 3 * panel + 3)
                .map(net::across)
                .filter(side -> side != PanelNet.NONE && among.contains(side / 3))
                .map(side -> side / 3)
                .boxed()
                .toList();
    }

    private void joinStrips(List<List<Integer>> strips) {
        List<List<Integer>> waiting = new ArrayList<>(strips);
        List<Integer> joined = new ArrayList<>(waiting.remove(0));
        while (!waiting.isEmpty()) {
            List<Integer> next = waiting.stream()
                    .filter(strip -> touching(strip, joined) > 0)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("the panels of a patch are not connected"));
            seam(places(next), places(joined), touching(next, joined));
            waiting.remove(next);
            joined.addAll(next);
        }
    }

    private double touching(List<Integer> strip, List<Integer> joined) {
        Set<Integer> others = new TreeSet<>(joined);
        return strip.stream()
                .flatMap(panel -> IntStream.range(3 * panel, 3 * panel + 3).boxed())
                .filter(side -> net.across(side) != PanelNet.NONE && others.contains(net.across(side) / 3))
                .mapToDouble(side -> lengths[net.strut(side)])
                .sum();
    }

    private List<Integer> places(List<Integer> panels) {
        return panels.stream().map(placeOf::get).sorted().toList();
    }
}
