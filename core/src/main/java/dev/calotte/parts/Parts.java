package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import java.util.List;

/**
 * The parts of a dome: its struts, panels and hubs gathered into kinds.
 *
 * <p>Lengths that differ by no more than 1e-9 of the radius are one kind: that is rounding, far below the smallest real
 * difference known (2.5e-5 at a frequency of 8). What a workshop can tell apart is another question.
 */
public final class Parts {

    private final Dome dome;
    private final Joinery joinery;
    private final StrutSorting struts;
    private final PanelSorting panels;
    private final HubSorting hubs;

    private Parts(Dome dome, Joinery joinery) {
        this.dome = dome;
        this.joinery = joinery;
        this.struts = new StrutSorting(dome, joinery);
        this.panels = new PanelSorting(dome, struts);
        this.hubs = new HubSorting(dome, struts);
    }

    /**
     * Gathers the parts of a dome.
     *
     * @param dome the dome
     * @param joinery how struts meet hubs
     * @return its parts
     * @throws CalotteException if a strut would be used up by its hub gaps
     */
    public static Parts of(Dome dome, Joinery joinery) {
        return new Parts(dome, joinery);
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
        return struts.kinds;
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
        return panels.kinds;
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
     * The kind of a strut.
     *
     * @param strut a strut of the dome
     * @return its kind
     */
    public StrutKind kindOf(Strut strut) {
        return struts.kinds.get(struts.number(strut.index()) - 1);
    }

    /**
     * The kind of a panel.
     *
     * @param panel a panel of the dome
     * @return its kind
     */
    public PanelKind kindOf(Panel panel) {
        return panels.kinds.get(panels.kindOf[panel.index()]);
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
}
