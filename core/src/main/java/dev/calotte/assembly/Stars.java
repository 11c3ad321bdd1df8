package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Spoke;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Groups panels by hubs of which every panel has exactly one, if there are such hubs. One star decides all others: its
 * outer hubs are no centres, so the hub across each outer strut has to be one. The three hubs of the first panel are
 * tried, those first that lie on corners of the solid; each attempt spreads over the dome until it closes or meets a
 * panel with two centres or none.
 *
 * <p>On a class I sphere of n divisible by 3 the stars round the corners close, on one of class II those with 2b + c
 * divisible by 3, as they do round the crown of many domes that hold one corner only.
 */
final class Stars {

    private final Dome dome;
    private final PanelNet net;

    Stars(Dome dome, PanelNet net) {
        this.dome = dome;
        this.net = net;
    }

    /** For each panel the hub in the middle of its star, if stars cover the dome exactly. */
    Optional<int[]> exact() {
        return dome.panels().get(0).hubs().stream()
                .sorted((a, b) -> Boolean.compare(isCorner(b), isCorner(a)))
                .map(this::spread)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private boolean isCorner(int hub) {
        return dome.hubs().get(hub).site() instanceof dev.calotte.sphere.Site.Corner;
    }

    private Optional<int[]> spread(int centre) {
        int[] centreOf = new int[net.panels()];
        Arrays.fill(centreOf, PanelNet.NONE);
        Deque<Integer> waiting = new ArrayDeque<>();
        int side = sideAt(0, centre);
        centreOf[0] = centre;
        waiting.add(side);
        while (!waiting.isEmpty()) {
            int here = waiting.remove();
            // the two sides that meet at the centre lead to panels of the same star, the third to another star
            if (!reach(here, centreOf, waiting, Turn.SAME_AFTER)
                    || !reach(PanelNet.before(here), centreOf, waiting, Turn.SAME_BEFORE)
                    || !reach(PanelNet.after(here), centreOf, waiting, Turn.OTHER)) {
                return Optional.empty();
            }
        }
        return Arrays.stream(centreOf).allMatch(c -> c != PanelNet.NONE) ? Optional.of(centreOf) : Optional.empty();
    }

    private enum Turn {
        SAME_AFTER,
        SAME_BEFORE,
        OTHER
    }

    /** Settles the centre of the panel across a side; false if it has another one already. */
    private boolean reach(int side, int[] centreOf, Deque<Integer> waiting, Turn turn) {
        int there = net.across(side);
        if (there == PanelNet.NONE) {
            return true;
        }
        int begins = switch (turn) {
            case SAME_AFTER -> PanelNet.after(there);
            case SAME_BEFORE -> there;
            case OTHER -> PanelNet.before(there);
        };
        int panel = there / 3;
        if (centreOf[panel] == PanelNet.NONE) {
            centreOf[panel] = net.hub(begins);
            waiting.add(begins);
            return true;
        }
        return centreOf[panel] == net.hub(begins);
    }

    private int sideAt(int panel, int hub) {
        for (int side = 3 * panel; side < 3 * panel + 3; side++) {
            if (net.hub(side) == hub) {
                return side;
            }
        }
        throw new IllegalArgumentException("panel " + panel + " has no hub " + hub);
    }

    /**
     * Groups panels by stars as far as they go: hub after hub from the crown takes all panels round it if none is
     * taken; corners of the solid first. What stays between them is grouped by neighbourhood.
     */
    int[] asFarAsTheyGo() {
        int[] groupOf = new int[net.panels()];
        Arrays.fill(groupOf, PanelNet.NONE);
        List<Hub> hubs = new ArrayList<>(dome.hubs());
        hubs.sort((a, b) -> Boolean.compare(isCorner(b.index()), isCorner(a.index())));
        for (Hub hub : hubs) {
            take(hub, groupOf);
        }
        return fillBetween(groupOf);
    }

    private void take(Hub hub, int[] groupOf) {
        List<Integer> panels = dome.around(hub.index()).stream()
                .map(Spoke::panel)
                .filter(panel -> panel != Spoke.NONE)
                .toList();
        boolean whole = !hub.open() && panels.size() == dome.around(hub.index()).size();
        if (whole && panels.stream().allMatch(panel -> groupOf[panel] == PanelNet.NONE)) {
            panels.forEach(panel -> groupOf[panel] = hub.index());
        }
    }

    /** Numbers above those of hubs for connected panels between the stars. */
    private int[] fillBetween(int[] groupOf) {
        int next = dome.hubs().size();
        for (Panel panel : dome.panels()) {
            if (groupOf[panel.index()] == PanelNet.NONE) {
                flood(panel.index(), next++, groupOf);
            }
        }
        return groupOf;
    }

    private void flood(int start, int group, int[] groupOf) {
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        groupOf[start] = group;
        while (!waiting.isEmpty()) {
            int panel = waiting.remove();
            for (int side = 3 * panel; side < 3 * panel + 3; side++) {
                int there = net.across(side);
                if (there != PanelNet.NONE && groupOf[there / 3] == PanelNet.NONE) {
                    groupOf[there / 3] = group;
                    waiting.add(there / 3);
                }
            }
        }
    }
}
