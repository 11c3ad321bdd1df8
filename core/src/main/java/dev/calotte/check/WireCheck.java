package dev.calotte.check;

import dev.calotte.document.Wireframe;
import dev.calotte.document.Wireframe.Sort;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Compares the frame in space with the record: a point for each hub, a line for each strut, a face for each panel. */
public final class WireCheck {

    /** Elements stand in the order of the record; of a frame that lies elsewhere altogether not every one is searched for. */
    private static final int MOST_MISSING = 1000;

    private final RecordedDome dome;
    private final Findings findings;
    private final Map<String, Deque<double[]>> seen = new TreeMap<>();
    private final double withinMm;
    private int missing;

    private WireCheck(RecordedDome dome, List<Wireframe.Layer> layers, double withinMm, Findings findings) {
        this.dome = dome;
        this.findings = findings;
        this.withinMm = withinMm;
        for (Wireframe.Layer layer : layers) {
            Deque<double[]> elements = seen.computeIfAbsent(layer.name(), name -> new ArrayDeque<>());
            for (int i = 0; i < layer.size(); i++) {
                elements.add(element(layer, i));
            }
        }
    }

    private static double[] element(Wireframe.Layer layer, int element) {
        double[] xyz = new double[3 * layer.sort().corners()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = layer.at(element, i / 3, i % 3);
        }
        return xyz;
    }

    /**
     * Compares a frame.
     *
     * @param dome the dome
     * @param layers what the file has
     * @param withinMm how exact the file is
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, List<Wireframe.Layer> layers, double withinMm, Findings findings) {
        new WireCheck(dome, layers, withinMm, findings).check();
    }

    private void check() {
        if (isScaled()) {
            return;
        }
        dome.hubs().forEach(hub -> take("HUBS-" + hub.kind(), Sort.POINTS, hub.mark(), List.of(hub.vertex())));
        dome.struts()
                .forEach(strut ->
                        take("STRUTS-" + strut.kind(), Sort.LINES, strut.mark(), List.of(strut.from(), strut.to())));
        dome.panels().forEach(panel -> take("PANELS-" + panel.kind(), Sort.FACES, panel.mark(), panel.vertices()));
        seen.forEach((layer, elements) -> elements.forEach(xyz -> findings.add(
                Fault.FOREIGN,
                "layer " + layer,
                "what stands at x " + Findings.text(xyz[0]) + ", y " + Findings.text(xyz[1]) + ", z "
                        + Findings.text(xyz[2]) + " is no hub, strut or panel, or stands there twice.")));
    }

    /** By the point that is furthest from the centre. */
    private boolean isScaled() {
        double most = seen.entrySet().stream()
                .filter(layer -> layer.getKey().startsWith("HUBS-"))
                .flatMap(layer -> layer.getValue().stream())
                .mapToDouble(p -> Math.sqrt(p[0] * p[0] + p[1] * p[1] + p[2] * p[2]))
                .max()
                .orElse(0);
        double scale = most / dome.figures().radius();
        boolean scaled = most > 0 && Math.abs(scale - 1) > 1e-5;
        if (scaled) {
            findings.add(Fault.SCALED, "", "the file is " + Findings.text(scale) + " times its size.");
        }
        return scaled;
    }

    private void take(String layer, Sort sort, String mark, List<Integer> vertices) {
        Deque<double[]> elements = seen.getOrDefault(layer, new ArrayDeque<>());
        for (Iterator<double[]> each = elements.iterator(); missing <= MOST_MISSING && each.hasNext(); ) {
            if (same(each.next(), sort, vertices)) {
                each.remove();
                return;
            }
        }
        missing++;
        findings.add(Fault.MISSING, mark, "it is not at its place in the layer " + layer + ".");
    }

    private boolean same(double[] xyz, Sort sort, List<Integer> vertices) {
        boolean same = xyz.length == 3 * sort.corners();
        boolean back = same && sort == Sort.LINES && at(xyz, 0, vertices.get(1));
        for (int i = 0; same && i < vertices.size(); i++) {
            same = at(xyz, i, vertices.get(back ? 1 - i : i));
        }
        return same;
    }

    private boolean at(double[] xyz, int corner, int vertex) {
        double[] place = dome.vertex(vertex).toArray();
        for (int axis = 0; axis < 3; axis++) {
            if (Math.abs(xyz[3 * corner + axis] - place[axis]) > withinMm) {
                return false;
            }
        }
        return true;
    }
}
