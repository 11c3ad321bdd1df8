package dev.calotte.cli.report;

import dev.calotte.parts.BoltStack;
import dev.calotte.parts.FlatEnds;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Parts;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.RailKind;
import dev.calotte.parts.StrutKind;
import java.io.IOException;
import java.util.Optional;

/**
 * The part of {@code dome.json} that tells how struts are cut and hubs are bolted.
 *
 * @param json where to write
 * @param parts the parts
 */
record JoineryJson(JsonWriter json, Parts parts) {

    /** What a kind of struts has besides its size: its gaps, and how to mark out flattened ends. */
    void strutKind(StrutKind kind) throws IOException {
        json.numbers("gaps", kind.gapsMm().get(0), kind.gapsMm().get(1));
        json.number("mergeError", kind.mergeErrorMm());
        Optional<FlatEnds> ends = kind.flatEnds();
        if (ends.isPresent()) {
            FlatEnds flat = ends.get();
            json.number("holeToHole", flat.holeToHoleMm());
            json.number("holeFromEnd", flat.holeFromEndMm());
            json.number("bendFromEnd", flat.bendFromEndMm());
            json.number("bendAngle", StrictMath.toDegrees(flat.bendAngleRad()));
            json.number("outsideChord", flat.outsideMm());
        }
    }

    /** The plate of a kind of hubs if it has one, and the bolt if one bolt holds all its struts. */
    void hubKind(HubKind kind) throws IOException {
        Optional<HubPlate> plate = parts.plateArms(kind).map(PlateArms::plate);
        if (plate.isPresent()) {
            json.object("plate", () -> plate(plate.get()));
        }
        Optional<BoltStack> stack = parts.boltStack(kind);
        if (stack.isPresent()) {
            BoltStack bolt = stack.get();
            json.object("boltStack", () -> {
                json.integer("struts", bolt.struts());
                json.number("diameter", bolt.diameterMm());
                json.number("grip", bolt.gripMm());
                json.number("length", bolt.lengthMm());
            });
        }
    }

    private void plate(HubPlate plate) throws IOException {
        json.number("hole", plate.holeMm());
        json.number("holeCircle", plate.holeCircleMm());
        if (plate.blanks().isEmpty()) {
            json.number("diameter", plate.diameterMm());
        }
    }

    /** The rails, if the ends are mitred. */
    void rails() throws IOException {
        if (!parts.railKinds().isEmpty()) {
            json.objects("rails", parts.railKinds(), this::rail);
        }
    }

    private void rail(RailKind rail) throws IOException {
        json.text("mark", rail.mark());
        json.text("panelKind", rail.panel());
        json.text("strutKind", rail.strut());
        json.integer("count", rail.count());
        json.number("longPoint", rail.longMm());
        json.number("shortPoint", rail.shortMm());
        json.numbers(
                "arrises",
                rail.arrisesMm().stream().mapToDouble(Double::doubleValue).toArray());
        json.number("tilt", StrictMath.toDegrees(rail.tiltRad()));
        json.object("start", () -> end(rail.start()));
        json.object("end", () -> end(rail.end()));
    }

    private void end(RailKind.End end) throws IOException {
        json.number("bladeTilt", StrictMath.toDegrees(end.bladeTiltRad()));
        json.number("gauge", StrictMath.toDegrees(end.gaugeRad()));
    }
}
