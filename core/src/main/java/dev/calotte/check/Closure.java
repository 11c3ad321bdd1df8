package dev.calotte.check;

import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.PanelKind;
import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Lays the finished shapes of a cover on the frame: each in the plane of its panel, as far outside as the cover lies, with
 * its first corner at the hub where it fits best. Two neighbours must then meet along the whole of their common side, and a
 * shape whose hand is wrong fits nowhere.
 */
public final class Closure {

    private final RecordedDome dome;
    private final RecordedCover cover;
    private final Findings findings;
    private final double withinMm;
    private final Map<String, List<Piece>> patterns = new LinkedHashMap<>();
    private final Map<String, Ring> nets = new TreeMap<>();
    private final Map<String, String> patternOf = new TreeMap<>();
    private final Vector3D[][] placed;

    private Closure(RecordedDome dome, RecordedCover cover, Findings findings) {
        this.dome = dome;
        this.cover = cover;
        this.findings = findings;
        this.withinMm = 4 * dome.mergeError() + 10 * Printed.RECORD_MM;
        this.placed = new Vector3D[dome.panels().size()][];
    }

    /**
     * Puts a cover together.
     *
     * @param dome the frame, which refers to nothing that is not there
     * @param cover the cover
     * @param findings takes what is wrong
     * @return the largest distance between a side and the neighbour's that it should meet
     */
    public static Mismatch of(RecordedDome dome, RecordedCover cover, Findings findings) {
        return new Closure(dome, cover, findings).check();
    }

    private Mismatch check() {
        cover.pieces()
                .forEach(piece -> patterns.computeIfAbsent(piece.pattern(), mark -> new ArrayList<>())
                        .add(piece));
        Map<String, Piece> known = new TreeMap<>();
        cover.pieces().forEach(piece -> known.put(piece.mark(), piece));
        cover.sheets().stream()
                .flatMap(sheet -> sheet.parts().stream())
                .filter(part -> known.containsKey(part.mark()))
                .forEach(part ->
                        patternOf.put(part.panel(), known.get(part.mark()).pattern()));
        patterns.forEach(this::net);
        counts();
        Edges edges = new Edges(dome.panels());
        for (int panel = 0; panel < placed.length; panel++) {
            place(panel, edges);
        }
        return joints(edges);
    }

    /** The finished shape of a pattern; of one that is divided, its parts together. */
    private void net(String mark, List<Piece> pieces) {
        String name = cover.name() + " " + mark;
        List<Vector2D> corners = new ArrayList<>();
        double area = 0;
        for (Piece piece : pieces) {
            corners.addAll(piece.net().corners());
            area += piece.net().area();
            if (!(piece.net().area() > 0) || !(piece.outline().area() > 0)) {
                findings.add(Fault.MIRRORED, name, "its outline runs clockwise, as the mirror image would.");
            }
        }
        Ring net = pieces.size() == 1
                ? pieces.get(0).net()
                : new Ring(ConvexPolygon.round(corners).corners());
        if (net.size() != 3) {
            findings.add(Fault.DIFFERENT, name, "its net shape has " + net.size() + " corners, a panel has three.");
        } else if (Math.abs(net.area() - area) > Printed.RECORD_MM * net.length()) {
            findings.add(Fault.DIFFERENT, name, "its parts together are not the whole.");
        } else {
            nets.put(mark, net);
        }
    }

    private void counts() {
        for (PanelKind kind : dome.panelKinds()) {
            int count = patterns.values().stream()
                    .map(pieces -> pieces.get(0))
                    .filter(piece -> piece.panelKind().equals(kind.mark()))
                    .mapToInt(Piece::count)
                    .sum();
            findings.same(cover.name() + " " + kind.mark(), "the count of all its patterns", count, kind.count(), 0);
        }
    }

    private void place(int index, Edges edges) {
        Panel panel = dome.panels().get(index);
        String given = patternOf.get(panel.mark());
        List<String> candidates = given != null
                ? List.of(given)
                : patterns.entrySet().stream()
                        .filter(p -> p.getValue().get(0).panelKind().equals(panel.kind()))
                        .map(Map.Entry::getKey)
                        .toList();
        Seat seat = Seat.of(dome, index, edges, cover.plane());
        double best = Double.POSITIVE_INFINITY;
        double mirrored = Double.POSITIVE_INFINITY;
        for (String mark : candidates) {
            Ring net = nets.get(mark);
            for (int turn = 0; net != null && turn < 3; turn++) {
                double off = seat.off(net, turn);
                if (off < best) {
                    best = off;
                    placed[index] = seat.corners(net, turn);
                }
                mirrored = Math.min(mirrored, seat.off(net.mirrored().reversed(), turn));
            }
        }
        if (best > withinMm && best < Double.POSITIVE_INFINITY) {
            report(panel, String.join(" or ", candidates), best, mirrored);
        }
    }

    private void report(Panel panel, String pattern, double best, double mirrored) {
        String name = cover.name() + " " + pattern;
        if (mirrored <= withinMm) {
            findings.add(
                    Fault.MIRRORED, name, "it is the mirror image of panel " + panel.mark() + ", for which it is.");
        } else {
            findings.add(
                    Fault.GAPING,
                    name,
                    "laid on panel " + panel.mark() + " a corner of it lies " + Findings.text(best)
                            + " mm from where its neighbours have it.");
        }
    }

    private Mismatch joints(Edges edges) {
        Mismatch worst = Mismatch.NONE;
        for (Map.Entry<Long, List<Integer>> edge : edges.all().entrySet()) {
            List<Integer> panels = edge.getValue();
            if (panels.size() == 2 && placed[panels.get(0)] != null && placed[panels.get(1)] != null) {
                worst = worst.or(joint(panels.get(0), panels.get(1), edge.getKey()));
            }
        }
        return worst;
    }

    private Mismatch joint(int one, int other, long edge) {
        Vector3D[] line = side(other, edge);
        Vector3D along = line[1].subtract(line[0]).normalize();
        double most = 0;
        for (Vector3D point : side(one, edge)) {
            most = Math.max(most, point.subtract(line[0]).crossProduct(along).getNorm());
        }
        return new Mismatch(
                most,
                cover.name() + " " + dome.panels().get(one).mark() + " against "
                        + dome.panels().get(other).mark());
    }

    /** The ends of the side of a shape that lies along an edge. */
    private Vector3D[] side(int panel, long edge) {
        List<Integer> corners = dome.panels().get(panel).vertices();
        int k = 0;
        while (Edges.key(corners.get(k), corners.get((k + 1) % 3)) != edge) {
            k++;
        }
        return new Vector3D[] {placed[panel][k], placed[panel][(k + 1) % 3]};
    }
}
