package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Spoke;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The parts of a dome: its struts, panels and hubs gathered into kinds.
 *
 * <p>Lengths that differ by no more than 1e-9 of the radius are one kind: that is rounding, far below the smallest real
 * difference known (2.5e-5 at a frequency of 8). What a workshop can tell apart is another question, which
 * {@link Joinery#mergeWithinMm()} and {@link #closeKinds()} answer.
 *
 * <pre>{@code
 * Parts parts = Parts.of(dome, Joinery.gap(45));
 * int struts = parts.strutKinds().get(0).count();
 * }</pre>
 */
public final class Parts {

    private final Dome dome;
    private final Joinery joinery;
    private final Optional<Parts> unopened;
    private final StrutSorting struts;
    private final PanelSorting panels;
    private final HubSorting hubs;
    private final Remaining remaining;
    private final List<RailKind> rails;

    private Parts(Dome whole, Joinery joinery) {
        List<Problem> problems = joinery.problems();
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
        this.dome = whole;
        this.joinery = joinery;
        this.unopened = Optional.empty();
        this.struts = new StrutSorting(dome, joinery);
        this.panels = new PanelSorting(dome, struts);
        this.hubs = new HubSorting(dome, struts);
        this.remaining = Remaining.of(dome, struts, panels);
        this.rails = rails();
        checkPlates(hubs.kinds);
    }

    private Parts(Dome dome, Parts whole) {
        this.dome = dome;
        this.joinery = whole.joinery;
        this.unopened = Optional.of(whole);
        this.struts = whole.struts;
        this.panels = whole.panels;
        this.hubs = new HubSorting(dome, struts, whole.hubs);
        this.remaining = Remaining.of(dome, struts, panels);
        this.rails = rails();
        checkPlates(hubs.kinds);
    }

    private List<RailKind> rails() {
        return joinery.ends() instanceof Ends.Mitred section
                ? new RailSorting(section, dome, struts, panels).kinds()
                : List.of();
    }

    /**
     * Gathers the parts of a dome. With openings, struts and panels keep the kinds and numbers of the whole dome; kinds
     * of which nothing remains are left out.
     *
     * @param dome the dome
     * @param joinery how struts meet hubs
     * @return its parts
     * @throws CalotteException if the joinery contradicts itself, names no gap for a hub of this dome, or leaves nothing
     *     of a strut, of a rail or of an arm of a hub plate
     */
    public static Parts of(Dome dome, Joinery joinery) {
        Parts whole = new Parts(dome.whole(), joinery);
        return dome.openings().isEmpty() ? whole : new Parts(dome, whole);
    }

    /**
     * The parts of the dome without its openings.
     *
     * @return the parts of the whole dome; these if it has no openings
     */
    public Parts whole() {
        return unopened.orElse(this);
    }

    /**
     * The dome that the parts belong to.
     *
     * @return the dome
     */
    public Dome dome() {
        return dome;
    }

    /**
     * How struts meet hubs.
     *
     * @return the joinery
     */
    public Joinery joinery() {
        return joinery;
    }

    /**
     * The kinds of struts.
     *
     * @return by number; unmodifiable
     */
    public List<StrutKind> strutKinds() {
        return remaining.struts.kinds;
    }

    /**
     * A kind of struts.
     *
     * @param number its number, from 1
     * @return the kind
     */
    public StrutKind strutKind(int number) {
        return struts.kinds.get(number - 1);
    }

    /**
     * The kinds of panels.
     *
     * @return by number, left before right; unmodifiable
     */
    public List<PanelKind> panelKinds() {
        return remaining.panels.kinds;
    }

    /**
     * The kinds of hubs.
     *
     * @return by number, left before right; unmodifiable
     */
    public List<HubKind> hubKinds() {
        return hubs.kinds;
    }

    /**
     * What the reader should know about how the parts came out.
     *
     * @return sentences, possibly none
     */
    public List<String> notes() {
        return LevelNote.of(dome).stream().toList();
    }

    /**
     * The kind of a strut.
     *
     * @param strut a strut of the dome
     * @return its kind
     */
    public StrutKind kindOf(Strut strut) {
        return remaining.struts.kinds.get(remaining.struts.kindOf[strut.index()]);
    }

    /**
     * The kind of a panel.
     *
     * @param panel a panel of the dome
     * @return its kind
     */
    public PanelKind kindOf(Panel panel) {
        return remaining.panels.kinds.get(remaining.panels.kindOf[panel.index()]);
    }

    /**
     * The kind of a hub.
     *
     * @param hub a hub of the dome
     * @return its kind
     */
    public HubKind kindOf(Hub hub) {
        return hubs.kinds.get(hubs.kindOf[hub.index()]);
    }

    /**
     * What leaves a hub, counter-clockwise seen from outside, beginning with the first strut of the hub's kind.
     *
     * @param hub a hub of the dome
     * @return its spokes, in the order of {@link HubKind#struts()}
     */
    public List<Spoke> around(Hub hub) {
        return hubs.around(hub.index());
    }

    /**
     * How far a strut may be from the length that it has in its kind, because unequal lengths are one kind.
     *
     * @return the largest error of all kinds in millimetres; 0 unless the joinery merges
     */
    public double mergeErrorMm() {
        return struts.kinds.stream().mapToDouble(StrutKind::mergeErrorMm).max().orElse(0);
    }

    /**
     * Kinds that a workshop may take for each other: struts that follow each other by cut length and panels, that differ
     * by less than three times what it holds.
     *
     * @return the pairs, struts by rising cut length, then panels by their shorter sides, the first thousand of these; a
     *     panel and its mirror image are no pair, nor are struts that are cut alike
     */
    public List<CloseKinds> closeKinds() {
        return CloseKinds.of(strutKinds(), panelKinds(), joinery.cutToleranceMm());
    }

    /**
     * The rails of the panels' frames.
     *
     * @return by number; empty unless the ends are mitred
     */
    public List<RailKind> railKinds() {
        return rails;
    }

    /**
     * The bolt through the flattened ends of a hub, where one bolt holds them all.
     *
     * @param kind a kind of hubs
     * @return the bolt; nothing if the ends are not flattened or are not all on one bolt, if the wall is not known, or
     *     if the hole takes no usual bolt
     */
    public Optional<BoltStack> boltStack(HubKind kind) {
        boolean together = joinery.hubGaps().isEmpty() && joinery.hubPlate().isEmpty();
        return together && joinery.ends() instanceof Ends.Flattened flat
                ? BoltStack.of(flat, kind.struts().size())
                : Optional.empty();
    }

    /**
     * The plate of a kind of hubs.
     *
     * @param kind a kind of hubs
     * @return its arms; nothing if the joinery has no plates
     */
    public Optional<PlateArms> plateArms(HubKind kind) {
        return joinery.hubPlate().map(plate -> PlateArms.of(kind, joinery, plate));
    }

    /** Tells of all kinds of hubs at once that cannot have their plate. */
    private void checkPlates(List<HubKind> kinds) {
        List<Problem> problems = new ArrayList<>();
        for (HubKind kind : kinds) {
            try {
                plateArms(kind);
            } catch (CalotteException wrong) {
                problems.addAll(wrong.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
    }
}
