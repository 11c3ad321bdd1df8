package dev.calotte.cli.check;

import dev.calotte.check.RecordedAccuracy;
import dev.calotte.check.RecordedPatches;
import dev.calotte.check.RecordedRiser;
import dev.calotte.check.RecordedSize;
import dev.calotte.check.RecordedStake;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Understands what {@code dome.json} says of the whole: its size, its patches, the wall below it, how exact it gets.
 *
 * @param root the whole text
 */
record SiteRecord(Json root) {

    RecordedSize size() throws RecordException {
        Json dome = root.at("dome");
        return new RecordedSize(
                dome.number("floorDiameter"),
                dome.number("floorArea"),
                dome.number("volume"),
                dome.number("baseSpread"),
                wholes(dome, "baseRing"),
                wholes(dome, "breakdown"),
                dome.whole("frequency"),
                (long) dome.number("triangulation"),
                dome.has("leveling") ? dome.at("leveling").number("height") : Double.NaN);
    }

    private static List<Integer> wholes(Json json, String name) throws RecordException {
        List<Integer> wholes = new ArrayList<>();
        for (Json each : json.list(name)) {
            wholes.add(each.whole());
        }
        return wholes;
    }

    RecordedAccuracy accuracy() throws RecordException {
        Json json = root.at("accuracy");
        List<RecordedAccuracy.Dimple> dimples = new ArrayList<>();
        for (Json each : json.list("dimples")) {
            dimples.add(new RecordedAccuracy.Dimple(each.text("mark"), each.number("factor"), each.number("height")));
        }
        return new RecordedAccuracy(
                json.number("tolerance"), dimples, json.has("baseRadius") ? json.number("baseRadius") : Double.NaN);
    }

    List<RecordedStake> base() throws RecordException {
        List<RecordedStake> stakes = new ArrayList<>();
        for (Json stake : root.list("base")) {
            stakes.add(new RecordedStake(
                    stake.text("mark"),
                    stake.number("fromAxis"),
                    stake.number("bearing"),
                    stake.number("aboveLowest"),
                    stake.number("levelChord"),
                    stake.number("straightChord")));
        }
        return stakes;
    }

    Optional<RecordedRiser> riser() throws RecordException {
        if (!root.has("riser")) {
            return Optional.empty();
        }
        Json json = root.at("riser");
        List<RecordedRiser.Wall> walls = new ArrayList<>();
        for (Json wall : json.list("walls")) {
            walls.add(new RecordedRiser.Wall(
                    wall.text("mark"),
                    wall.text("hand"),
                    wall.whole("count"),
                    wall.number("width"),
                    wall.number("left"),
                    wall.number("right"),
                    wall.number("top")));
        }
        List<RecordedRiser.Upright> uprights = new ArrayList<>();
        for (Json each : json.list("uprights")) {
            uprights.add(new RecordedRiser.Upright(each.text("mark"), each.whole("count"), each.number("length")));
        }
        List<Double> above = new ArrayList<>();
        for (Json stake : root.list("base")) {
            above.add(stake.number("aboveLowest"));
        }
        return Optional.of(new RecordedRiser(
                json.number("height"), json.number("totalHeight"), json.whole("baysLeftOut"), walls, uprights, above));
    }

    Optional<RecordedPatches> patches() throws RecordException {
        if (!root.has("patches")) {
            return Optional.empty();
        }
        Json json = root.at("patches");
        List<RecordedPatches.Kind> kinds = new ArrayList<>();
        for (Json kind : json.list("kinds")) {
            kinds.add(kind(kind));
        }
        List<RecordedPatches.Patch> patches = new ArrayList<>();
        for (Json patch : json.list("patches")) {
            patches.add(new RecordedPatches.Patch(patch.text("mark"), patch.text("kind"), wholes(patch, "panels")));
        }
        List<RecordedPatches.Join> joins = new ArrayList<>();
        for (Json join : json.list("joins")) {
            joins.add(new RecordedPatches.Join(join.text("patch"), join.text("to"), join.number("length")));
        }
        List<String> patchOf = new ArrayList<>();
        for (Json panel : root.list("panels")) {
            patchOf.add(panel.textIfAny("patch"));
        }
        return Optional.of(new RecordedPatches(
                json.text("way"), json.flag("exactStars"), kinds, patches, joins, json.number("lastSeam"), patchOf));
    }

    private static RecordedPatches.Kind kind(Json json) throws RecordException {
        List<RecordedPatches.Seam> seams = new ArrayList<>();
        for (Json seam : json.list("seams")) {
            seams.add(new RecordedPatches.Seam(wholes(seam, "these"), wholes(seam, "to"), seam.number("length")));
        }
        return new RecordedPatches.Kind(
                json.text("mark"),
                json.text("hand"),
                json.textIfAny("mirror"),
                json.whole("count"),
                json.texts("panels"),
                seams);
    }
}
