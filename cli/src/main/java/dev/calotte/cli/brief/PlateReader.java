package dev.calotte.cli.brief;

import dev.calotte.parts.ByHub;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.PlateBlank;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads {@code frame.hub-plate}: a disc, or files with outlines, for all hubs or by what they are. */
final class PlateReader {

    private static final String PLATE = "Write hub-plate: { diameter: 140 mm, hole: 10 mm, hole-circle: 100 mm }.";
    private static final String OUTLINES =
            "Write outline: plate.dxf, or outline: { base: half.dxf, 5: five.dxf, other: six.dxf }.";

    private final Fields fields;
    private final Function<Node, Double> above0;
    private final OutlineFiles outlines;
    private boolean sound = true;

    PlateReader(Fields fields, Function<Node, Double> above0, OutlineFiles outlines) {
        this.fields = fields;
        this.above0 = above0;
        this.outlines = outlines;
    }

    /** The plate; wherever a problem was noted it holds a stopgap. */
    HubPlate plate() {
        fields.notTogether(List.of("diameter", "outline"));
        boolean own = fields.has("outline");
        for (String key : own ? List.of("hole", "hole-circle") : List.of("diameter", "hole", "hole-circle")) {
            fields.require(key, PLATE);
            sound &= fields.has(key);
        }
        double cutter = read("cutter", 0);
        HubPlate disc = new HubPlate(
                read("diameter", 1),
                read("hole", 1),
                read("hole-circle", 1),
                read("slot", HubPlate.usualSlotMm(cutter)),
                cutter,
                Optional.empty());
        Optional<ByHub<PlateBlank>> blanks = blanks();
        fields.close();
        return blanks.map(disc::withBlanks).orElse(disc);
    }

    /** Whether all of it is as it should be. */
    boolean isSound() {
        return sound;
    }

    private double read(String key, double fallback) {
        double mm = fields.read(key, fallback, above0);
        sound &= fields.sound(key);
        return mm;
    }

    private Optional<ByHub<PlateBlank>> blanks() {
        if (fields.isSection("outline")) {
            ByHubReader<PlateBlank> byHub = ByHubReader.read(fields.section("outline"), outlines::blank, OUTLINES);
            sound &= byHub.sound();
            return Optional.of(byHub.given());
        }
        Optional<ByHub<PlateBlank>> all =
                fields.read("outline", Optional.empty(), node -> Optional.of(ByHub.all(outlines.blank(node))));
        sound &= fields.sound("outline");
        return all;
    }
}
