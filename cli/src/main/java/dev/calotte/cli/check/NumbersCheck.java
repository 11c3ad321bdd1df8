package dev.calotte.cli.check;

import dev.calotte.check.AccuracyCheck;
import dev.calotte.check.BaseCheck;
import dev.calotte.check.Findings;
import dev.calotte.check.PatchCheck;
import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.RecordedPatches;
import dev.calotte.check.RecordedRiser;
import dev.calotte.check.RecordedSize;
import dev.calotte.check.RecordedSteps;
import dev.calotte.check.RecordedSupply;
import dev.calotte.check.RiserCheck;
import dev.calotte.check.SideCheck;
import dev.calotte.check.SizeCheck;
import dev.calotte.check.StepCheck;
import dev.calotte.check.SupplyCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the record says besides the pieces: sizes, patches, the wall below, what is used of stock.
 *
 * @param root the record
 * @param dome what it says of the dome, which refers to nothing that is not there
 * @param covers what it says of its covers
 */
record NumbersCheck(Json root, RecordedDome dome, List<RecordedCover> covers) {

    void whole(Findings list) throws RecordException {
        SiteRecord record = new SiteRecord(root);
        RecordedSize size = record.size();
        SizeCheck.of(dome, size, list);
        AccuracyCheck.of(dome, record.accuracy(), size.baseRing().size(), list);
        BaseCheck.of(dome, size.baseRing(), record.base(), list);
        Optional<RecordedRiser> riser = record.riser();
        if (riser.isPresent()) {
            RiserCheck.of(dome, riser.get(), size.baseRing(), list);
        }
        Optional<RecordedPatches> patches = record.patches();
        if (patches.isPresent()) {
            PatchCheck.of(dome, patches.get(), list);
        }
    }

    void stock(Findings list) throws RecordException {
        StockRecord record = new StockRecord(root);
        List<Json> recorded = root.list("covers");
        List<RecordedSupply> supplies = record.covers(covers);
        int planned = 0;
        for (int i = 0; i < covers.size(); i++) {
            SideCheck.of(dome, covers.get(i), record.sides(i), list);
            if (covers.get(i).planned()) {
                supply(supplies.get(planned++), recorded.get(i).at("plan"), list);
            }
        }
        Optional<RecordedSupply> bars = record.bars();
        if (bars.isPresent()) {
            supply(bars.get(), root.at("bars"), list);
        }
    }

    private void supply(RecordedSupply supply, Json plan, Findings list) throws RecordException {
        SupplyCheck.of(supply, list);
        Optional<RecordedSteps> steps = StockRecord.steps(supply.place(), plan);
        if (steps.isPresent()) {
            double spent = supply.spent(steps.get().measure());
            StepCheck.of(steps.get(), new RecordedSteps.Own(size(steps.get().by()), spent, cut()), list);
        }
    }

    /** Not a number where openings may have taken what it was measured by. */
    private double size(String by) throws RecordException {
        Json figures = root.at("dome");
        return switch (by) {
            case "radius" -> figures.number("radius");
            case "height" -> figures.number("height");
            case "floor-diameter" -> figures.number("floorDiameter");
            case "floor-area" -> figures.number("floorArea");
            case "longest-strut" -> dome.opened() ? Double.NaN : dome.longestStrutMm();
            default ->
                throw new RecordException(
                        "steps are by " + by + ", not by radius, height, floor-diameter, floor-area or longest-strut");
        };
    }

    private List<String> cut() throws RecordException {
        List<String> marks = new ArrayList<>();
        for (Json rail : root.listIfAny("rails")) {
            marks.add(rail.text("mark"));
        }
        dome.strutKinds().forEach(kind -> marks.add(kind.mark()));
        return marks;
    }
}
