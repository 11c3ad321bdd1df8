package dev.calotte.cli.report;

import dev.calotte.parts.RiserWall;
import dev.calotte.parts.RiserWall.BottomPlate;
import dev.calotte.parts.RiserWall.TopPlate;
import dev.calotte.parts.RiserWall.Upright;
import dev.calotte.parts.RiserWall.Wall;
import dev.calotte.units.Angle;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes {@code riser} of {@code dome.json}: the wall under the base ring, or nothing.
 *
 * @param json where to write
 */
record RiserJson(JsonWriter json) {

    void write(Optional<RiserWall> riser) throws IOException {
        if (riser.isEmpty()) {
            json.nothing("riser");
        } else {
            json.object("riser", () -> wall(riser.get()));
        }
    }

    private void wall(RiserWall riser) throws IOException {
        json.number("height", riser.heightMm());
        json.number("totalHeight", riser.totalHeightMm());
        json.integer("baysLeftOut", riser.baysLeftOut());
        json.objects("walls", riser.walls(), this::bay);
        json.objects("uprights", riser.uprights(), this::upright);
        json.objects("plates", riser.bottomPlates(), this::plate);
        json.objects("topPlates", riser.topPlates(), this::topPlate);
    }

    private void bay(Wall wall) throws IOException {
        json.text("mark", wall.mark());
        json.text("hand", wall.hand().name().toLowerCase(Locale.ROOT));
        json.integer("count", wall.count());
        json.number("width", wall.widthMm());
        json.number("left", wall.leftMm());
        json.number("right", wall.rightMm());
        json.number("top", wall.topMm());
    }

    private void upright(Upright upright) throws IOException {
        json.text("mark", upright.mark());
        json.integer("count", upright.count());
        json.number("length", upright.lengthMm());
    }

    private void plate(BottomPlate plate) throws IOException {
        double small = plate.smallInsideRad();
        double large = plate.largeInsideRad();
        json.text("mark", plate.mark());
        json.integer("count", plate.count());
        json.number("length", plate.lengthMm());
        json.numbers("insideAngles", Angle.degrees(small), Angle.degrees(large));
        json.numbers("mitres", Angle.degrees(BottomPlate.mitreRad(small)), Angle.degrees(BottomPlate.mitreRad(large)));
    }

    private void topPlate(TopPlate plate) throws IOException {
        json.text("mark", plate.mark());
        json.integer("count", plate.count());
        json.number("length", plate.lengthMm());
        json.number("slope", Angle.degrees(plate.slopeRad()));
    }
}
