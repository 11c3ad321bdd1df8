package dev.calotte.dome;

import dev.calotte.geometry.TriangleNet;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What remains of a dome when panels are left out. */
final class Remains {

    private static final String WHERE = "openings";

    final Renumbering hubs;
    final Renumbering struts;
    final Renumbering panels;

    private Remains(Renumbering hubs, Renumbering struts, Renumbering panels) {
        this.hubs = hubs;
        this.struts = struts;
        this.panels = panels;
    }

    /** Everything. */
    static Remains of(Body body) {
        return new Remains(
                Renumbering.all(body.hubCount()),
                Renumbering.all(body.strutCount()),
                Renumbering.all(body.panelCount()));
    }

    /**
     * What the openings leave. A strut goes if all its panels went, each with an opening that removes struts; a hub goes
     * with its last strut.
     */
    static Remains of(Body body, List<Opening> openings) {
        int[] openingOf = openingOf(body.panelCount(), openings);
        boolean[] panels = new boolean[openingOf.length];
        boolean[] struts = new boolean[body.strutCount()];
        boolean[] hubs = new boolean[body.hubCount()];
        for (int p = 0; p < openingOf.length; p++) {
            panels[p] = openingOf[p] < 0;
            if (panels[p] || !openings.get(openingOf[p]).removesStruts()) {
                for (int half = 3 * p; half < 3 * p + 3; half++) {
                    struts[body.strutOf(half)] = true;
                    hubs[body.net().start(half)] = true;
                }
            }
        }
        Remains remains = new Remains(new Renumbering(hubs), new Renumbering(struts), new Renumbering(panels));
        remains.check(body);
        return remains;
    }

    private static int[] openingOf(int panelCount, List<Opening> openings) {
        int[] openingOf = new int[panelCount];
        Arrays.fill(openingOf, Spoke.NONE);
        for (int i = 0; i < openings.size(); i++) {
            for (int panel : openings.get(i).panels()) {
                if (openingOf[panel] >= 0) {
                    throw new CalotteException(
                            Code.CONFLICT,
                            WHERE,
                            "a panel is removed twice, by "
                                    + openings.get(openingOf[panel]).name() + " and by "
                                    + openings.get(i).name() + ".",
                            "Remove each panel once.");
                }
                openingOf[panel] = i;
            }
        }
        return openingOf;
    }

    private void check(Body body) {
        if (panels.count() == 0) {
            throw new CalotteException(Code.IMPOSSIBLE, WHERE, "the openings leave no panel.", "Remove fewer panels.");
        }
        int reached = reached(body);
        if (reached < hubs.count()) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    WHERE,
                    "the openings split the frame: of " + hubs.count() + " hubs that remain only " + reached
                            + " hang together.",
                    "Remove fewer panels, or write struts: keep.");
        }
    }

    /** How many hubs hang together over struts with the first one. */
    private int reached(Body body) {
        boolean[] found = new boolean[body.hubCount()];
        int[] queue = new int[hubs.count()];
        int end = 0;
        queue[end++] = hubs.old[0];
        found[hubs.old[0]] = true;
        for (int next = 0; next < end; next++) {
            for (Spoke spoke : body.around(queue[next])) {
                int there = body.otherEnd(spoke.strut(), queue[next]);
                if (struts.stays(spoke.strut()) && !found[there]) {
                    found[there] = true;
                    queue[end++] = there;
                }
            }
        }
        return end;
    }

    Hub hub(Hub old) {
        return new Hub(hubs.here(old.index()), old.position(), old.site(), old.row(), old.place(), old.open());
    }

    Strut strut(Strut old, TriangleNet net, int half) {
        boolean closed = panels.stays(half / 3) && net.twin(half) >= 0 && panels.stays(net.twin(half) / 3);
        return new Strut(
                struts.here(old.index()),
                hubs.here(old.from()),
                hubs.here(old.to()),
                old.row(),
                old.place(),
                old.lengthMm(),
                old.axialAngleRad(),
                closed ? old.dihedralRad() : OptionalDouble.empty());
    }

    Panel panel(Panel old) {
        return new Panel(
                panels.here(old.index()),
                old.hubs().stream().map(hubs::here).toList(),
                old.struts().stream().map(struts::here).toList(),
                old.row(),
                old.place());
    }

    /** The spokes that remain, each with the angle to the next of them. */
    List<Spoke> around(List<Spoke> all) {
        List<Spoke> left = new ArrayList<>(all.size());
        for (int i = 0; i < all.size(); i++) {
            if (struts.stays(all.get(i).strut())) {
                left.add(spoke(all, i));
            }
        }
        return left;
    }

    private Spoke spoke(List<Spoke> all, int first) {
        Spoke from = all.get(first);
        int strut = struts.here(from.strut());
        double gap = 0;
        int next = first;
        do {
            OptionalDouble step = all.get(next % all.size()).gapRad();
            if (step.isEmpty()) {
                return new Spoke(strut, step, Spoke.NONE, Spoke.NONE);
            }
            gap += step.getAsDouble();
            next++;
        } while (!struts.stays(all.get(next % all.size()).strut()));
        // a panel that stays keeps its struts, so the next one is then the next that remains
        boolean closed = panels.stays(from.panel());
        return new Spoke(
                strut,
                OptionalDouble.of(gap),
                closed ? panels.here(from.panel()) : Spoke.NONE,
                closed ? struts.here(from.opposite()) : Spoke.NONE);
    }
}
