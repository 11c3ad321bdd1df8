package dev.calotte.compare;

import dev.calotte.dome.DomeSpec;
import dev.calotte.parts.Joinery;
import dev.calotte.stock.Bar;
import java.util.List;

/**
 * What is compared, and what all domes of the comparison have in common.
 *
 * @param own the dome in whose place others could stand, in its size
 * @param joinery how struts meet hubs
 * @param bars what struts are cut from; none if that is not known
 * @param covers the covers
 * @param common by what the domes are sized
 */
public record Request(DomeSpec own, Joinery joinery, List<Bar> bars, List<Cladding> covers, InCommon common) {

    /**
     * Copies the lists.
     *
     * @param own the dome in whose place others could stand
     * @param joinery how struts meet hubs
     * @param bars what struts are cut from
     * @param covers the covers
     * @param common by what the domes are sized
     */
    public Request {
        bars = List.copyOf(bars);
        covers = List.copyOf(covers);
    }

    /** Whether there is anything to lay on stock. */
    boolean hasStock() {
        return covers.stream().anyMatch(cladding -> !cladding.stocks().isEmpty());
    }
}
