package dev.calotte.cli;

import dev.calotte.choose.BatchedCover;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.Mends;
import dev.calotte.choose.SeamSaving;
import dev.calotte.choose.StockCurve;
import java.util.Optional;

/**
 * A cover of a design.
 *
 * @param fit how it is cut and how that fits its stock
 * @param mends what would help, if it does not fit
 * @param plan how it is laid on its stock, if that is known and everything fits
 * @param saving what seams bring that panels need not have, if the brief allows them
 * @param curve what it takes in sizes nearby, if it is laid in any order and small enough to try them
 *     quickly
 * @param byPatches what it costs that its plan is patch by patch, if that was asked for
 */
public record CoverDesign(
        CoverFit fit,
        Optional<Mends> mends,
        Optional<CoverPlan> plan,
        Optional<SeamSaving> saving,
        Optional<StockCurve> curve,
        Optional<BatchedCover> byPatches) {}
