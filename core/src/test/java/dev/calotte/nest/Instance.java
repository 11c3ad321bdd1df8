package dev.calotte.nest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Parts and stock from the files beside this class; each names its source. */
record Instance(String name, List<Piece> pieces, Stock stock, double spacing, double best) {

    CutPlan plan(int steps, int threads) {
        return SheetPlan.of(pieces, List.of(stock), new Layout(spacing, steps, threads));
    }

    static JsonNode read(String file) {
        try (InputStream in = Instance.class.getResourceAsStream(file)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A dome of domes.json; its best is a number of sheets, or a length of roll in mm. */
    static Instance dome(String name) {
        for (JsonNode row : read("domes.json").required("rows")) {
            if (row.required("name").asText().equals(name)) {
                JsonNode best = row.required("best");
                return new Instance(
                        name,
                        pieces(row),
                        stock(row),
                        row.required("gap").asDouble(),
                        best.has("sheets")
                                ? best.get("sheets").asDouble()
                                : best.required("length").asDouble());
            }
        }
        throw new IllegalArgumentException(name);
    }

    private static List<Piece> pieces(JsonNode row) {
        List<Piece> pieces = new ArrayList<>();
        OptionalDouble grain = row.required("grain").asBoolean() ? OptionalDouble.of(0) : OptionalDouble.empty();
        boolean mirror = row.required("mirror").asBoolean();
        for (JsonNode piece : row.required("pieces")) {
            String mark = "P" + (pieces.size() + 1);
            int count = piece.required("count").asInt();
            pieces.add(new Piece(mark, polygon(piece.required("polygon")), count, mirror, grain));
        }
        return pieces;
    }

    private static Stock stock(JsonNode row) {
        double width = row.required("width").asDouble();
        double margin = row.required("margin").asDouble();
        return row.required("roll").asBoolean()
                ? new Roll(width, margin, OptionalDouble.empty(), Terms.OPEN)
                : new Sheet(row.required("length").asDouble(), width, margin, Terms.OPEN);
    }

    static ConvexPolygon polygon(JsonNode corners) {
        double[] xy = new double[2 * corners.size()];
        for (int c = 0; c < corners.size(); c++) {
            xy[2 * c] = corners.get(c).get(0).asDouble();
            xy[2 * c + 1] = corners.get(c).get(1).asDouble();
        }
        return ConvexPolygon.of(xy);
    }

    private static List<Piece> singles(JsonNode polygons) {
        List<Piece> pieces = new ArrayList<>();
        for (JsonNode polygon : polygons) {
            pieces.add(new Piece("P" + pieces.size(), polygon(polygon), 1, false, OptionalDouble.empty()));
        }
        return pieces;
    }

    static Instance fu() {
        JsonNode file = read("fu.json");
        Roll roll = new Roll(file.required("width").asDouble(), 0, OptionalDouble.empty(), Terms.OPEN);
        // the area of all parts, over the width and the best utilisation published
        return new Instance("fu", singles(file.required("pieces")), roll, 0, 1083 / 38.0 / 0.92396);
    }

    static List<Instance> terashima() {
        List<Instance> all = new ArrayList<>();
        for (JsonNode row : read("terashima.json").required("rows")) {
            Sheet bin = new Sheet(1000, 1000, 0, Terms.OPEN);
            List<Piece> pieces = singles(row.required("pieces"));
            all.add(new Instance(
                    row.required("name").asText(),
                    pieces,
                    bin,
                    0,
                    row.required("optimum").asDouble()));
        }
        return all;
    }
}
