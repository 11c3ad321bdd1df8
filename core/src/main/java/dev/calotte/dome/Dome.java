package dev.calotte.dome;

import dev.calotte.geometry.TriangleNet;
import dev.calotte.problem.CalotteException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A dome in its finished geometry: hubs, struts and panels in the order in which they are counted, row by row from the
 * crown and counter-clockwise from the start ray, each with its angles. Lengths are millimetres; z points up, the
 * origin is the centre of the sphere and the x axis is the start ray.
 *
 * <p>For example {@code Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)));}
 */
public final class Dome {

    private final DomeSpec spec;
    private final Cap cap;
    private final double radiusMm;
    private final Optional<Leveling> leveling;
    private final List<String> notes;
    private final Measures measures;
    private final int[] strutEdge;
    private final int[] edgeStrut;
    private final int[] strutRows;
    private final int[] strutPlaces;
    private final double[] chords;
    private final double[] dihedrals;

    private Dome(DomeSpec spec, Sizing sizing) {
        this.spec = spec.withKeep(sizing.keep());
        this.cap = sizing.cap();
        this.radiusMm = sizing.radiusMm();
        this.leveling = sizing.leveling();
        this.notes = Stream.concat(sizing.note().stream(), leveling.map(Leveling::note).stream())
                .toList();
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
        for (int s = 0; s < strutEdge.length; s++) {
            int half = cap.net.half(strutEdge[s]);
            edgeStrut[strutEdge[s]] = s;
            chords[s] = unit.chord(half);
            dihedrals[s] = cap.net.twin(half) < 0 ? Double.NaN : unit.dihedralRad(half, normals);
        }
    }

    /**
     * Computes a dome.
     *
     * @param spec what decides its geometry
     * @return the dome
     * @throws CalotteException if the parts of the specification exclude each other, if no dome has the size, or if
     *     what stays of the sphere is not one piece with one border
     */
    public static Dome of(DomeSpec spec) {
        return new Dome(spec, Sizing.of(spec));
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

    /**
     * What decided the geometry.
     *
     * @return the specification; what is kept is given as it was built, a fraction in lowest terms
     */
    public DomeSpec spec() {
        return spec;
    }

    /**
     * From the centre of the sphere to the hubs.
     *
     * @return the radius in millimetres
     */
    public double radiusMm() {
        return radiusMm;
    }

    /**
     * The dome in numbers.
     *
     * @return radius, floor, height, areas and volume
     */
    public Measures measures() {
        return measures;
    }

    /**
     * What the reader should know about how the specification was understood.
     *
     * @return sentences, possibly none
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * What a level base changed.
     *
     * @return the change, or nothing if the base is as it is
     */
    public Optional<Leveling> leveling() {
        return leveling;
    }

    /**
     * The hubs.
     *
     * @return by row and place; unmodifiable, elements are made when asked for
     */
    public List<Hub> hubs() {
        return Views.of(cap.origin.length, this::hub);
    }

    /**
     * The struts.
     *
     * @return by row and place; unmodifiable, elements are made when asked for
     */
    public List<Strut> struts() {
        return Views.of(strutEdge.length, this::strut);
    }

    /**
     * The panels.
     *
     * @return by row and place; unmodifiable, elements are made when asked for
     */
    public List<Panel> panels() {
        return Views.of(cap.net.triangleCount(), this::panel);
    }

    private Hub hub(int i) {
        return new Hub(
                i, position(i), cap.ball.mesh.site(cap.origin[i]), cap.hubRows[i], cap.hubPlaces[i], cap.net.isOpen(i));
    }

    private Strut strut(int i) {
        int half = cap.net.half(strutEdge[i]);
        int from = Math.min(cap.net.start(half), cap.net.end(half));
        int to = Math.max(cap.net.start(half), cap.net.end(half));
        OptionalDouble dihedral = Double.isNaN(dihedrals[i]) ? OptionalDouble.empty() : OptionalDouble.of(dihedrals[i]);
        double axialAngle = StrictMath.asin(chords[i] / 2);
        return new Strut(i, from, to, strutRows[i], strutPlaces[i], chords[i] * radiusMm, axialAngle, dihedral);
    }

    private Panel panel(int i) {
        TriangleNet net = cap.net;
        return new Panel(
                i,
                List.of(net.start(3 * i), net.start(3 * i + 1), net.start(3 * i + 2)),
                List.of(edgeStrut[net.edge(3 * i)], edgeStrut[net.edge(3 * i + 1)], edgeStrut[net.edge(3 * i + 2)]),
                cap.panelRows[i],
                cap.panelPlaces[i]);
    }

    private Vector3D position(int hub) {
        return new Vector3D(
                cap.xyz[3 * hub] * radiusMm, cap.xyz[3 * hub + 1] * radiusMm, cap.xyz[3 * hub + 2] * radiusMm);
    }

    /**
     * The hubs of the base ring.
     *
     * @return their indices, counter-clockwise seen from above; empty for a whole sphere
     */
    public List<Integer> baseRing() {
        return Arrays.stream(cap.baseRing).boxed().toList();
    }

    /**
     * What leaves a hub, counter-clockwise seen from outside. A hub of the base ring begins with the strut that has
     * all its panels on the left and ends with the last before the open side.
     *
     * @param hub the index of a hub
     * @return its spokes
     */
    public List<Spoke> around(int hub) {
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
