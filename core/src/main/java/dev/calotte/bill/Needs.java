package dev.calotte.bill;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.nest.BarPlan;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RiserWall;
import java.util.List;
import java.util.Optional;

/**
 * What is to be counted.
 *
 * @param parts the parts of the dome
 * @param riser the wall under its base ring, if there is one
 * @param bars how struts or rails are cut from bars, if that is planned
 * @param covers the covers and what is cut for them
 * @param plans how covers are laid on their stock, as far as they are
 * @param spareShare how much more of everything is advised, as a part of what is needed, for example 0.05
 */
public record Needs(
        Parts parts,
        Optional<RiserWall> riser,
        Optional<BarPlan> bars,
        List<CoverFit> covers,
        List<CoverPlan> plans,
        double spareShare) {

    /**
     * Copies the lists.
     *
     * @param parts the parts of the dome
     * @param riser the wall under its base ring
     * @param bars how struts or rails are cut
     * @param covers the covers
     * @param plans how covers are laid
     * @param spareShare from 0 to 1
     * @throws IllegalArgumentException if the share of spares is not from 0 to 1
     */
    public Needs {
        covers = List.copyOf(covers);
        plans = List.copyOf(plans);
        if (!(spareShare >= 0 && spareShare <= 1)) {
            throw new IllegalArgumentException("no share of spares is " + spareShare);
        }
    }

    /** Spare pieces, at least one where anything is spared at all. */
    double sparePieces(double needed) {
        return Math.ceil(needed * spareShare - 1e-9);
    }
}
