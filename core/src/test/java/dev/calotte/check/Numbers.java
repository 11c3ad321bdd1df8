package dev.calotte.check;

import dev.calotte.assembly.Accuracy;
import dev.calotte.assembly.PatchWay;
import dev.calotte.assembly.Patches;
import dev.calotte.assembly.SettingOut;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Leveling;
import dev.calotte.dome.Measures;
import dev.calotte.dome.Panel;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RiserWall;
import java.util.List;
import java.util.Locale;

/** What is recorded besides pieces, as the file of it would be read again. */
final class Numbers {

    private Numbers() {}

    static RecordedSize size(Dome dome) {
        Measures m = dome.measures();
        return new RecordedSize(
                m.floorDiameterMm(),
                m.floorAreaMm2() / 1e6,
                m.volumeMm3() / 1e9,
                m.baseSpreadMm(),
                dome.baseRing(),
                List.of(dome.spec().breakdown().b(), dome.spec().breakdown().c()),
                dome.spec().breakdown().frequency(),
                dome.spec().breakdown().triangulationNumber(),
                dome.leveling().map(Leveling::heightMm).orElse(Double.NaN));
    }

    static RecordedAccuracy accuracy(Parts parts) {
        Accuracy accuracy = Accuracy.of(parts, 2);
        return new RecordedAccuracy(
                accuracy.toleranceMm(),
                accuracy.dimples().stream()
                        .map(d -> new RecordedAccuracy.Dimple(d.mark(), d.factor(), d.heightMm()))
                        .toList(),
                accuracy.baseRadiusMm().orElse(Double.NaN));
    }

    static RecordedRiser riser(Dome dome) {
        RiserWall wall = RiserWall.of(dome, 900);
        double lowest = dome.whole().baseRing().stream()
                .mapToDouble(h -> dome.whole().hubs().get(h).position().getZ())
                .min()
                .orElse(0);
        return new RecordedRiser(
                wall.heightMm(),
                wall.totalHeightMm(),
                wall.baysLeftOut(),
                wall.walls().stream()
                        .map(w -> new RecordedRiser.Wall(
                                w.mark(),
                                w.hand().name().toLowerCase(Locale.ROOT),
                                w.count(),
                                w.widthMm(),
                                w.leftMm(),
                                w.rightMm(),
                                w.topMm()))
                        .toList(),
                wall.uprights().stream()
                        .map(u -> new RecordedRiser.Upright(u.mark(), u.count(), u.lengthMm()))
                        .toList(),
                dome.baseRing().stream()
                        .map(h -> dome.hubs().get(h).position().getZ() - lowest)
                        .toList());
    }

    static List<RecordedStake> base(Parts parts) {
        return SettingOut.of(parts).stakes().stream()
                .map(s -> new RecordedStake(
                        s.mark(),
                        s.fromAxisMm(),
                        StrictMath.toDegrees(s.bearingRad()),
                        s.aboveLowestMm(),
                        s.levelChordMm(),
                        s.straightChordMm()))
                .toList();
    }

    static RecordedPatches patches(Parts parts, PatchWay way) {
        return patches(parts, Patches.of(parts, way));
    }

    static RecordedPatches patches(Parts parts, Patches patches) {
        return new RecordedPatches(
                patches.way().name().toLowerCase(Locale.ROOT),
                patches.areExactStars(),
                patches.kinds().stream()
                        .map(kind -> new RecordedPatches.Kind(
                                kind.mark(),
                                kind.hand().name().toLowerCase(Locale.ROOT),
                                kind.twin().orElse(""),
                                kind.count(),
                                kind.panels(),
                                kind.seams().stream()
                                        .map(seam -> new RecordedPatches.Seam(seam.these(), seam.to(), seam.lengthMm()))
                                        .toList()))
                        .toList(),
                patches.patches().stream()
                        .map(patch -> new RecordedPatches.Patch(
                                patch.mark(),
                                patch.kind().mark(),
                                patch.panels().stream().map(Panel::index).toList()))
                        .toList(),
                patches.joins().stream()
                        .map(join -> new RecordedPatches.Join(join.patch(), join.to(), join.lengthMm()))
                        .toList(),
                patches.lastSeamMm(),
                parts.dome().panels().stream()
                        .map(panel -> patches.of(panel).mark())
                        .toList());
    }
}
