package dev.calotte.compare;

import dev.calotte.parts.Hand;
import dev.calotte.parts.Parts;

/**
 * How many pieces and kinds a dome has.
 *
 * @param panels how many panels
 * @param panelKinds of how many kinds, mirror images counted apart
 * @param handedKinds how many of these kinds are not their own mirror image
 * @param struts how many struts
 * @param strutKinds of how many kinds
 * @param hubs how many hubs
 * @param hubKinds of how many kinds
 */
public record Counts(int panels, int panelKinds, int handedKinds, int struts, int strutKinds, int hubs, int hubKinds) {

    static Counts of(Parts parts) {
        return new Counts(
                parts.dome().panels().size(),
                parts.panelKinds().size(),
                (int) parts.panelKinds().stream()
                        .filter(kind -> kind.hand() != Hand.NONE)
                        .count(),
                parts.dome().struts().size(),
                parts.strutKinds().size(),
                parts.dome().hubs().size(),
                parts.hubKinds().size());
    }
}
