package dev.calotte.dome;

import dev.calotte.problem.CalotteException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A dome in its finished geometry: hubs, struts and panels in the order in which they are counted, row by row from the
 * crown and counter-clockwise from the start ray, each with its angles. Lengths are millimetres; z points up, the
 * origin is the centre of the sphere and the x axis is the start ray.
 *
 * <p>For example {@code Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)));}
 *
 * <pre>{@code
 * Dome dome = Dome.of(spec);
 * double longestMm = dome.struts().stream().mapToDouble(Strut::lengthMm).max().orElseThrow();
 * }</pre>
 */
public final class Dome {

    private final DomeSpec spec;
    private final Body body;
    private final Optional<Leveling> leveling;
    private final List<String> notes;
    private final List<Opening> openings;
    private final Optional<Dome> unopened;
    private final Remains remains;
    private final Measures measures;

    private Dome(DomeSpec spec, Sizing sizing) {
        this.spec = spec.withKeep(sizing.keep());
        this.body = new Body(sizing.cap(), sizing.radiusMm());
        this.leveling = sizing.leveling();
        this.notes = Stream.concat(sizing.note().stream(), leveling.map(Leveling::note).stream())
                .toList();
        this.openings = List.of();
        this.unopened = Optional.empty();
        this.remains = Remains.of(body);
        this.measures = body.measures();
    }

    private Dome(Dome whole, List<Opening> openings) {
        this.spec = whole.spec;
        this.body = whole.body;
        this.leveling = whole.leveling;
        this.notes = whole.notes;
        this.openings = List.copyOf(openings);
        this.unopened = Optional.of(whole);
        this.remains = Remains.of(body, openings);
        this.measures = whole.measures.less(areaMm2(openings));
    }

    private double areaMm2(List<Opening> gone) {
        return gone.stream()
                .flatMap(opening -> opening.panels().stream())
                .mapToDouble(body::areaMm2)
                .sum();
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

    /**
     * The same dome with openings. They take the place of those that it has.
     *
     * @param others what is left out, by panels of the dome without openings
     * @return a copy; its lists leave out what is gone, so that indices change, while rows and places do not
     * @throws CalotteException if a panel is removed twice, if no panel is left, or if the frame falls into pieces
     * @throws IndexOutOfBoundsException if there is no such panel
     */
    public Dome withOpenings(List<Opening> others) {
        return others.isEmpty() ? whole() : new Dome(whole(), others);
    }

    /**
     * The dome without its openings.
     *
     * @return the whole dome; this one if it has none
     */
    public Dome whole() {
        return unopened.orElse(this);
    }

    /**
     * What is left out.
     *
     * @return the openings, in the order in which they were given; unmodifiable
     */
    public List<Opening> openings() {
        return openings;
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
        return measures.radiusMm();
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
        return pieces(remains.hubs, body::hub, remains::hub);
    }

    /**
     * The struts.
     *
     * @return by row and place; unmodifiable, elements are made when asked for
     */
    public List<Strut> struts() {
        return pieces(remains.struts, body::strut, this::strut);
    }

    /**
     * The panels.
     *
     * @return by row and place; unmodifiable, elements are made when asked for
     */
    public List<Panel> panels() {
        return pieces(remains.panels, body::panel, remains::panel);
    }

    /**
     * The dome without its openings in plain numbers.
     *
     * @return the hubs, struts and panels of {@link #whole()}
     */
    public Skeleton skeleton() {
        return new Skeleton(body);
    }

    /** Pieces as they are, or those that openings left, by their new numbers. */
    private <T> List<T> pieces(Renumbering numbers, IntFunction<T> whole, UnaryOperator<T> renumbered) {
        return openings.isEmpty()
                ? Views.of(numbers.count(), whole)
                : Views.of(numbers.count(), i -> renumbered.apply(whole.apply(numbers.old[i])));
    }

    private Strut strut(Strut old) {
        return remains.strut(old, body.net(), body.half(old.index()));
    }

    /**
     * The index that a hub has in the dome without openings.
     *
     * @param hub the index of a hub
     * @return its index among the hubs of {@link #whole()}
     */
    public int wholeHub(int hub) {
        return remains.hubs.old[hub];
    }

    /**
     * The index that a strut has in the dome without openings.
     *
     * @param strut the index of a strut
     * @return its index among the struts of {@link #whole()}
     */
    public int wholeStrut(int strut) {
        return remains.struts.old[strut];
    }

    /**
     * The index that a panel has in the dome without openings.
     *
     * @param panel the index of a panel
     * @return its index among the panels of {@link #whole()}
     */
    public int wholePanel(int panel) {
        return remains.panels.old[panel];
    }

    /**
     * The hubs of the base ring.
     *
     * @return the indices of those that remain, counter-clockwise seen from above; empty for a whole sphere
     */
    public List<Integer> baseRing() {
        return Arrays.stream(body.baseRing())
                .filter(remains.hubs::stays)
                .map(remains.hubs::here)
                .boxed()
                .toList();
    }

    /**
     * What leaves a hub, counter-clockwise seen from outside. A hub of the base ring begins with the strut that has
     * all its panels on the left and ends with the last before the open side. Where an opening has taken a panel, the
     * angle to the next strut that remains is given without a panel; a single strut has a full turn to itself.
     *
     * @param hub the index of a hub
     * @return its spokes
     */
    public List<Spoke> around(int hub) {
        List<Spoke> all = body.around(remains.hubs.old[hub]);
        return openings.isEmpty() ? all : remains.around(all);
    }
}
