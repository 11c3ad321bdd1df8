package dev.calotte.check;

import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.Strut;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Puts the frame and the faces of a dome together again from its record alone. */
public final class RecordCheck {

    private final RecordedDome dome;
    private final Findings findings;

    private RecordCheck(RecordedDome dome, Findings findings) {
        this.dome = dome;
        this.findings = findings;
    }

    /**
     * Looks a record through: hubs stand on the sphere, struts join the hubs that they name at their lengths, panels lie
     * between theirs with the right face outwards, every edge belongs to one or two panels, struts meet at hubs in the order
     * of the hub's kind, marks are counted round the dome, and kinds have as many pieces as they say.
     *
     * @param dome what was recorded
     * @param findings takes what is wrong
     * @return the largest distance between a hub and where a strut or a panel has it
     */
    public static Mismatch of(RecordedDome dome, Findings findings) {
        return new RecordCheck(dome, findings).check();
    }

    private Mismatch check() {
        if (!refersToWhatIsThere()) {
            return Mismatch.NONE;
        }
        Edges edges = new Edges(dome.panels());
        onSphere();
        edges.against.forEach(panel -> findings.add(
                Fault.DOUBLED,
                dome.panels().get(panel).mark(),
                "another panel lies on the same side of one of its edges."));
        Mismatch struts = new StrutCheck(dome, edges, findings).check();
        Mismatch panels = new PanelCheck(dome, findings).check();
        new HubCheck(dome, findings).check();
        new MarkCheck(dome, findings).check();
        closed(edges);
        return struts.or(panels);
    }

    /** Whether every vertex that is named is there, and three of a panel differ. */
    private boolean refersToWhatIsThere() {
        int before = findings.list().size();
        for (Strut strut : dome.struts()) {
            named(strut.mark(), List.of(strut.from(), strut.to()), 2);
        }
        for (Panel panel : dome.panels()) {
            named(panel.mark(), panel.vertices(), 3);
        }
        for (Hub hub : dome.hubs()) {
            named(hub.mark(), List.of(hub.vertex()), 1);
        }
        if (findings.list().size() == before) {
            dome.panels().forEach(this::hasAPlane);
            dome.hubs().forEach(this::hasADirection);
        }
        return findings.list().size() == before;
    }

    private void hasAPlane(Panel panel) {
        double twice = PanelCheck.normal(dome, panel).getNorm();
        if (!(twice > 0 && Double.isFinite(twice))) {
            nowhere(panel.mark(), panel.vertices(), "which span no panel");
        }
    }

    private void hasADirection(Hub hub) {
        double radius = dome.vertex(hub.vertex()).getNorm();
        if (!(radius > 0 && Double.isFinite(radius))) {
            nowhere(hub.mark(), List.of(hub.vertex()), "which is at the centre or nowhere");
        }
    }

    private void nowhere(String mark, List<Integer> vertices, String what) {
        findings.add(Fault.DIFFERENT, mark, "it names the vertices " + vertices + ", " + what + ".");
    }

    private void named(String mark, List<Integer> vertices, int count) {
        boolean there =
                vertices.stream().allMatch(v -> v >= 0 && v < dome.vertices().size());
        if (!there || new TreeSet<>(vertices).size() != count || vertices.size() != count) {
            findings.add(
                    Fault.DIFFERENT,
                    mark,
                    "it names the vertices " + vertices + ", which are not " + count + " of the dome.");
        }
    }

    private void onSphere() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < dome.vertices().size(); i++) {
            Vector3D vertex = dome.vertex(i);
            least = Math.min(least, vertex.getZ());
            most = Math.max(most, vertex.getZ());
            findings.same(
                    "vertex " + i,
                    "the distance from the centre",
                    vertex.getNorm(),
                    dome.figures().radius(),
                    Printed.RECORD_MM);
        }
        // an opening can take the highest hub
        if (!dome.opened() || dome.figures().height() < most - least) {
            findings.same("dome.height", "the height", dome.figures().height(), most - least, Printed.RECORD_MM);
        }
    }

    /**
     * Euler's formula for a part of a sphere: vertices less edges plus panels are 2 less the number of its borders. An
     * opening can touch a border in one vertex, where borders cannot be told apart.
     */
    private void closed(Edges edges) {
        Map<Integer, Integer> next = new TreeMap<>();
        Set<Integer> used = new TreeSet<>();
        for (Map.Entry<Long, List<Integer>> edge : edges.all().entrySet()) {
            int from = Edges.from(edge.getKey());
            int to = Edges.to(edge.getKey());
            used.add(from);
            used.add(to);
            if (edge.getValue().size() > 2) {
                findings.add(
                        Fault.DOUBLED,
                        "vertices " + from + " and " + to,
                        "more than two panels meet in the edge there.");
            } else if (edge.getValue().size() == 1) {
                boolean forwards = runs(edge.getValue().get(0), from, to);
                next.put(forwards ? from : to, forwards ? to : from);
            }
        }
        int euler = used.size() - edges.all().size() + dome.panels().size();
        if (!dome.opened() && euler != 2 - loops(next)) {
            findings.add(
                    Fault.MISSING,
                    "panels",
                    "vertices less edges plus panels are " + euler + ", the panels do not make one surface.");
        }
        if (!dome.opened() && loops(next) > 1) {
            findings.add(Fault.MISSING, "panels", "there is a hole in the surface, and no opening.");
        }
    }

    private boolean runs(int panel, int from, int to) {
        List<Integer> corners = dome.panels().get(panel).vertices();
        return corners.get((corners.indexOf(from) + 1) % 3) == to;
    }

    private static int loops(Map<Integer, Integer> next) {
        Set<Integer> left = new TreeSet<>(next.keySet());
        int loops = 0;
        while (!left.isEmpty()) {
            loops++;
            Integer at = left.iterator().next();
            while (at != null && left.remove(at)) {
                at = next.get(at);
            }
        }
        return loops;
    }
}
