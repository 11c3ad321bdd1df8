package dev.calotte.tables;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;

/** A row of a table: what was put in, what must come out, and where that is known from. Values are for radius 1. */
final class Row {

    /** Not 1, so that a forgotten radius shows. */
    static final double RADIUS_MM = 2000;

    /** For lengths and areas over radius. */
    static final Offset<Double> LENGTH = Offset.offset(1e-9);

    static final Offset<Double> DEGREES = Offset.offset(1e-6);

    private final JsonNode json;

    Row(JsonNode json) {
        json.required("source");
        this.json = json;
    }

    JsonNode input(String name) {
        return json.required("inputs").required(name);
    }

    JsonNode value() {
        return json.required("value");
    }

    double number(String name) {
        return value().required(name).asDouble();
    }

    int count(String name) {
        return value().required(name).asInt();
    }

    /** The dome that the inputs describe; the whole sphere where they name no cut. */
    DomeSpec spec() {
        return spec(Spacing.valueOf(upper("spacing", "")));
    }

    private DomeSpec spec(Spacing spacing) {
        JsonNode inputs = json.required("inputs");
        Breakdown breakdown = new Breakdown(input("b").asInt(), inputs.path("c").asInt());
        return DomeSpec.of(solid(), breakdown, Size.radius(RADIUS_MM))
                .withSpacing(spacing)
                .withUp(Up.valueOf(upper("up", "vertex")))
                .withKeep(keep(inputs));
    }

    private String upper(String name, String otherwise) {
        return json.required("inputs").path(name).asText(otherwise).toUpperCase(Locale.ROOT);
    }

    private Keep keep(JsonNode inputs) {
        if (!inputs.has("cut")) {
            return new Keep.Whole();
        }
        if (!inputs.get("cut").asText().equals("rows")) {
            return new Keep.AboveHeight(0);
        }
        int all = solid().rowsPerFrequency() * input("b").asInt();
        return new Keep.Rows(input("rows_kept").asInt(), all);
    }

    private Solid solid() {
        return Solid.valueOf(upper("solid", ""));
    }

    Dome dome() {
        return Dome.of(spec());
    }

    Parts parts() {
        return Parts.of(dome(), Joinery.nodeToNode());
    }

    /** The parts with another spacing than the inputs name. */
    Parts parts(Spacing spacing) {
        return Parts.of(Dome.of(spec(spacing)), Joinery.nodeToNode());
    }

    static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    static List<Integer> integers(JsonNode array) {
        return list(array).stream().map(JsonNode::asInt).toList();
    }

    static List<Double> numbers(JsonNode array) {
        return list(array).stream().map(JsonNode::asDouble).toList();
    }

    @Override
    public String toString() {
        return json.required("inputs").toString();
    }
}
