package dev.calotte.cli.report;

import dev.calotte.assembly.Accuracy;
import dev.calotte.assembly.SettingOut;
import dev.calotte.units.Angle;
import java.io.IOException;

/**
 * Writes what a workshop and a site need to check by into {@code dome.json}: {@code base}, {@code baseDiagonals} and
 * {@code accuracy}.
 *
 * @param json where to write
 */
record BaseJson(JsonWriter json) {

    void write(SettingOut out, Accuracy accuracy) throws IOException {
        json.objects("base", out.stakes(), this::stake);
        json.objects("baseDiagonals", out.diagonals(), this::diagonal);
        json.object("accuracy", () -> accuracy(accuracy));
    }

    private void stake(SettingOut.Stake stake) throws IOException {
        json.text("mark", stake.mark());
        json.number("fromAxis", stake.fromAxisMm());
        json.number("bearing", Angle.degrees(stake.bearingRad()));
        json.number("aboveLowest", stake.aboveLowestMm());
        json.number("levelChord", stake.levelChordMm());
        json.number("straightChord", stake.straightChordMm());
    }

    private void diagonal(SettingOut.Diagonal diagonal) throws IOException {
        json.text("from", diagonal.from());
        json.text("to", diagonal.to());
        json.number("level", diagonal.levelMm());
        json.number("straight", diagonal.straightMm());
    }

    private void accuracy(Accuracy accuracy) throws IOException {
        json.number("tolerance", accuracy.toleranceMm());
        json.objects("dimples", accuracy.dimples(), this::dimple);
        if (accuracy.baseRadiusMm().isPresent()) {
            json.number("baseRadius", accuracy.baseRadiusMm().getAsDouble());
        } else {
            json.nothing("baseRadius");
        }
    }

    private void dimple(Accuracy.Dimple dimple) throws IOException {
        json.text("mark", dimple.mark());
        json.number("factor", dimple.factor());
        json.number("height", dimple.heightMm());
    }
}
