package dev.calotte.assembly;

import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;

/**
 * The marks of single pieces: the mark of the kind, the row counted from the crown, and the place in the row counted
 * counter-clockwise from the start ray seen from above, for example {@code P4L-3.07}. Row and place alone are unique
 * among pieces of one sort.
 *
 * <pre>{@code
 * String mark = new PieceMarks(parts).of(dome.panels().get(0));
 * }</pre>
 *
 * @param parts the parts whose pieces are marked
 */
public record PieceMarks(Parts parts) {

    /**
     * The mark of a panel.
     *
     * @param panel a panel of the dome
     * @return for example {@code P4L-3.07}
     */
    public String of(Panel panel) {
        return mark(parts.kindOf(panel).mark(), panel.row(), panel.place());
    }

    /**
     * The mark of a strut.
     *
     * @param strut a strut of the dome
     * @return for example {@code S2-1.03}
     */
    public String of(Strut strut) {
        return mark(parts.kindOf(strut).mark(), strut.row(), strut.place());
    }

    /**
     * The mark of a hub.
     *
     * @param hub a hub of the dome
     * @return for example {@code H1-0.01}
     */
    public String of(Hub hub) {
        return mark(parts.kindOf(hub).mark(), hub.row(), hub.place());
    }

    private static String mark(String kind, int row, int place) {
        return kind + "-" + row + (place < 10 ? ".0" : ".") + place;
    }
}
