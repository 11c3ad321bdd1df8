package dev.calotte.drawing;

import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Picture;
import dev.calotte.nest.BarPlan;
import dev.calotte.units.UnitSystem;
import java.util.List;

/** Pictures of what lies where on bars, sheets and rolls, for people who cut by them; not at full size. */
public final class StockPictures {

    private StockPictures() {}

    /**
     * The ways in which bars are cut, each once with how many bars are cut so, longest cuts first.
     *
     * @param plan how bars are cut
     * @param units how lengths are written
     * @return pictures {@code stock/bars-01} and so on
     */
    public static List<Picture> ofBars(BarPlan plan, UnitSystem units) {
        return new BarPicture(plan, units).pictures();
    }

    /**
     * Each sheet, and a roll in stretches, with the marks of the panels; sheets that are laid alike in one picture.
     *
     * @param plan how the pieces of a cover are laid
     * @param units how lengths are written
     * @return pictures {@code stock/COVER-01} and so on
     */
    public static List<StockPicture> ofCover(CoverPlan plan, UnitSystem units) {
        return new SheetPicture(plan, units).pictures();
    }
}
