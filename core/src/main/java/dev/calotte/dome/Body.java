package dev.calotte.dome;

import dev.calotte.geometry.Triangle;
import dev.calotte.geometry.TriangleNet;
import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The pieces of a dome before any is left out for an opening, kept as plain arrays. */
final class Body {

    private final Cap cap;
    private final double radiusMm;
    private final Measures measures;
    private final int[] strutEdge;
    private final int[] edgeStrut;
    private final int[] strutRows;
    private final int[] strutPlaces;
    private final double[] chords;
    private final double[] dihedrals;

    Body(Cap cap, double radiusMm) {
        this.cap = cap;
        this.radiusMm = radiusMm;
        CapMeasures unit = new CapMeasures(cap);
        double[] normals = unit.normals();
        this.measures = measures(unit, normals, radiusMm);
        int[] rows = edgeRows();
        RowOrder order = new RowOrder(rows, edgeMiddles());
        this.strutEdge = order.order;
        this.strutPlaces = order.places;
        this.strutRows = Arrays.stream(strutEdge).map(e -> rows[e]).toArray();
        this.edgeStrut = new int[strutEdge.length];
        this.chords = new double[strutEdge.length];
        this.dihedrals = new double[strutEdge.length];
        Crew.forMany(strutEdge.length).along(strutEdge.length, (from, to) -> {
            for (int s = from; s < to; s++) {
                int half = cap.net.half(strutEdge[s]);
                edgeStrut[strutEdge[s]] = s;
                chords[s] = unit.chord(half);
                dihedrals[s] = cap.net.twin(half) < 0 ? Double.NaN : unit.dihedralRad(half, normals);
            }
        });
    }

    private static Measures measures(CapMeasures unit, double[] normals, double r) {
        return new Measures(
                r,
                2 * unit.floorRadius() * r,
                unit.height() * r,
                unit.floorArea() * r * r,
                unit.surfaceArea(normals) * r * r,
                unit.volume(normals) * r * r * r,
                unit.baseSpread() * r);
    }

    private int[] edgeRows() {
        return IntStream.range(0, cap.net.edgeCount())
                .map(cap.net::half)
                .map(h -> Math.max(cap.hubRows[cap.net.start(h)], cap.hubRows[cap.net.end(h)]))
                .toArray();
    }

    private double[] edgeMiddles() {
        double[] middles = new double[3 * cap.net.edgeCount()];
        for (int e = 0; e < cap.net.edgeCount(); e++) {
            int p = 3 * cap.net.start(cap.net.half(e));
            int q = 3 * cap.net.end(cap.net.half(e));
            for (int k = 0; k < 3; k++) {
                middles[3 * e + k] = (cap.xyz[p + k] + cap.xyz[q + k]) / 2;
            }
        }
        return middles;
    }

    Measures measures() {
        return measures;
    }

    TriangleNet net() {
        return cap.net;
    }

    int hubCount() {
        return cap.origin.length;
    }

    int strutCount() {
        return strutEdge.length;
    }

    int panelCount() {
        return cap.net.triangleCount();
    }

    int[] baseRing() {
        return cap.baseRing;
    }

    /** The strut that a half-edge is a side of. */
    int strutOf(int half) {
        return edgeStrut[cap.net.edge(half)];
    }

    /** A half-edge of a strut; the other, if any, is its twin. */
    int half(int strut) {
        return cap.net.half(strutEdge[strut]);
    }

    int otherEnd(int strut, int hub) {
        int half = half(strut);
        return cap.net.start(half) == hub ? cap.net.end(half) : cap.net.start(half);
    }

    double lengthMm(int strut) {
        return chords[strut] * radiusMm;
    }

    /** Not a number without two panels. */
    double dihedralRad(int strut) {
        return dihedrals[strut];
    }

    Hub hub(int i) {
        return new Hub(
                i, position(i), cap.ball.mesh.site(cap.origin[i]), cap.hubRows[i], cap.hubPlaces[i], cap.net.isOpen(i));
    }

    Strut strut(int i) {
        int half = cap.net.half(strutEdge[i]);
        int from = Math.min(cap.net.start(half), cap.net.end(half));
        int to = Math.max(cap.net.start(half), cap.net.end(half));
        OptionalDouble dihedral = Double.isNaN(dihedrals[i]) ? OptionalDouble.empty() : OptionalDouble.of(dihedrals[i]);
        double axialAngle = StrictMath.asin(chords[i] / 2);
        return new Strut(i, from, to, strutRows[i], strutPlaces[i], lengthMm(i), axialAngle, dihedral);
    }

    Panel panel(int i) {
        TriangleNet net = cap.net;
        return new Panel(
                i,
                List.of(net.start(3 * i), net.start(3 * i + 1), net.start(3 * i + 2)),
                List.of(edgeStrut[net.edge(3 * i)], edgeStrut[net.edge(3 * i + 1)], edgeStrut[net.edge(3 * i + 2)]),
                cap.panelRows[i],
                cap.panelPlaces[i]);
    }

    double areaMm2(int panel) {
        int h = 3 * panel;
        double r = radiusMm;
        return new Triangle(chords[strutOf(h)] * r, chords[strutOf(h + 1)] * r, chords[strutOf(h + 2)] * r).area();
    }

    private Vector3D position(int hub) {
        return new Vector3D(
                cap.xyz[3 * hub] * radiusMm, cap.xyz[3 * hub + 1] * radiusMm, cap.xyz[3 * hub + 2] * radiusMm);
    }

    /** What leaves a hub, counter-clockwise seen from outside. */
    List<Spoke> around(int hub) {
        List<Spoke> spokes = new ArrayList<>(6);
        int first = cap.net.spoke(hub);
        int h = first;
        do {
            int next = TriangleNet.before(h);
            double gap = gapRad(hub, cap.net.end(h), cap.net.start(next));
            int opposite = edgeStrut[cap.net.edge(TriangleNet.after(h))];
            spokes.add(new Spoke(edgeStrut[cap.net.edge(h)], OptionalDouble.of(gap), h / 3, opposite));
            h = cap.net.twin(next);
            if (h < 0) {
                spokes.add(new Spoke(edgeStrut[cap.net.edge(next)], OptionalDouble.empty(), Spoke.NONE, Spoke.NONE));
            }
        } while (h >= 0 && h != first);
        return spokes;
    }

    /** The angle at a hub from one neighbour to another, counter-clockwise, on the plane that touches the sphere. */
    private double gapRad(int hub, int neighbour, int next) {
        Vector3D n = unit(hub);
        Vector3D u = unit(neighbour).subtract(n);
        Vector3D v = unit(next).subtract(n);
        u = u.subtract(n.scalarMultiply(u.dotProduct(n)));
        v = v.subtract(n.scalarMultiply(v.dotProduct(n)));
        double angle = StrictMath.atan2(n.dotProduct(u.crossProduct(v)), u.dotProduct(v));
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    private Vector3D unit(int hub) {
        return new Vector3D(cap.xyz[3 * hub], cap.xyz[3 * hub + 1], cap.xyz[3 * hub + 2]);
    }
}
