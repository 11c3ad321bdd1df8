package dev.calotte.cli.report;

import dev.calotte.choose.Fit;
import dev.calotte.choose.Mends;
import dev.calotte.choose.PatternFit;
import dev.calotte.choose.SeamSaving;
import dev.calotte.choose.StockCurve;
import dev.calotte.cli.CoverDesign;
import dev.calotte.cli.brief.Covering;
import dev.calotte.geometry.Polygon;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Hole;
import dev.calotte.pattern.Lap;
import dev.calotte.pattern.NotchedEdge;
import dev.calotte.pattern.Side;
import dev.calotte.stock.Stock;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The covers of a design in {@code dome.json}: an entry for each piece that is cut, whole patterns and parts alike. */
final class CoverJson {

    private final JsonWriter json;

    CoverJson(JsonWriter json) {
        this.json = json;
    }

    /** Both lists are of the same covers in the same order. */
    void write(List<CoverDesign> covers, List<Covering> asked) throws IOException {
        List<Integer> places = IntStream.range(0, covers.size()).boxed().toList();
        json.objects("covers", places, place -> cover(covers.get(place), asked.get(place)));
    }

    private void cover(CoverDesign cover, Covering asked) throws IOException {
        json.text("name", cover.fit().patterns().cover().name());
        json.number("plane", cover.fit().patterns().cover().sheeting().planeMm());
        json.number("spacing", asked.spacingMm());
        json.list("patterns", cover.fit().fits(), fit -> {
            for (CutPiece piece : fit.pieces()) {
                json.object(() -> piece(fit, piece, cover.fit().stocks()));
            }
        });
        if (cover.plan().isPresent()) {
            json.object("plan", () -> {
                new PlanJson(json).plan(cover.plan().get());
                steps(cover.curve());
                if (cover.byPatches().isPresent()) {
                    json.object(
                            "byPatches",
                            () -> new BatchJson(json, cover.byPatches().get()).write());
                }
            });
        }
        if (cover.saving().isPresent()) {
            json.object("seamSaving", () -> saving(cover.saving().get()));
        }
        if (cover.mends().isPresent()) {
            json.object("mends", () -> mends(cover.mends().get()));
        }
    }

    /** How much less stock is spent than with the fewest seams, and how much longer the seams are for it. */
    private void saving(SeamSaving saving) throws IOException {
        json.text("measure", StepJson.word(saving.measure()));
        json.number("saved", StepJson.amount(saving.measure(), saving.saved()));
        json.number("seams", saving.seamMm());
    }

    private void steps(Optional<StockCurve> curve) throws IOException {
        if (curve.isPresent()) {
            json.object("steps", () -> new StepJson(json, curve.get()).write());
        }
    }

    private void piece(PatternFit fit, CutPiece piece, List<Stock> stocks) throws IOException {
        Fit own = stocks.isEmpty() ? new Fit(0) : Fit.of(piece, stocks);
        json.text("mark", piece.mark());
        json.text("panelKind", fit.pattern().kind().mark());
        json.integer("count", fit.pattern().count());
        json.text("mirror", fit.pattern().mirror());
        corners("outline", piece.outline());
        corners("net", piece.net());
        if (fit.pattern().sides().stream().anyMatch(CoverJson::isNotched)) {
            corners("notchedOutline", new NotchedEdge(fit.pattern(), piece, 0).outline());
        }
        if (piece.outer().isPresent()) {
            corners("outerOutline", piece.outer().get());
        }
        json.list("holes", piece.holes(), this::hole);
        json.objects("sides", fit.pattern().sides(), this::side);
        numbers("netAltitudes", fit.pattern().netAltitudesMm());
        numbers("cutAltitudes", fit.pattern().cutAltitudesMm());
        optional("grain", degrees(piece.grainRad()));
        json.flag("fits", own.fits());
        json.number("overBy", own.fits() ? 0 : own.overByMm());
        numbers("seams", piece.seams());
    }

    private static boolean isNotched(Side side) {
        return side.notches().stream().anyMatch(notch -> notch.depthMm() > 0);
    }

    private void corners(String name, Polygon polygon) throws IOException {
        List<Integer> corners = IntStream.range(0, polygon.size()).boxed().toList();
        json.list(name, corners, c -> json.numbers(polygon.x(c), polygon.y(c)));
    }

    private void hole(Hole hole) throws IOException {
        json.numbers(hole.x(), hole.y(), hole.diameterMm());
    }

    private void side(Side side) throws IOException {
        json.text("strut", "S" + side.strut());
        json.number("length", side.lengthMm());
        optional("dihedral", degrees(side.dihedralRad()));
        json.number("bevel", StrictMath.toDegrees(side.bevelRad()));
        json.number("growth", side.growthMm());
        json.number("allowance", side.allowanceMm());
        json.text("lap", side.lap() == Lap.NONE ? "none" : side.lap().name().toLowerCase(Locale.ROOT));
        json.list("notches", side.notches(), notch -> json.numbers(notch.alongMm(), notch.depthMm()));
    }

    private void numbers(String name, List<Double> values) throws IOException {
        json.numbers(name, values.stream().mapToDouble(v -> v).toArray());
    }

    private void optional(String name, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.number(name, value.getAsDouble());
        } else {
            json.nothing(name);
        }
    }

    private static OptionalDouble degrees(OptionalDouble rad) {
        return rad.isPresent() ? OptionalDouble.of(StrictMath.toDegrees(rad.getAsDouble())) : rad;
    }

    private void mends(Mends mends) throws IOException {
        json.flag("turned", mends.turned());
        if (mends.seams().isPresent()) {
            json.integer("seams", mends.seams().get());
        }
        json.text("spacing", mends.spacing().map(s -> s.name().toLowerCase(Locale.ROOT)));
        if (mends.breakdown().isPresent()) {
            json.integers(
                    "breakdown",
                    List.of(mends.breakdown().get().b(), mends.breakdown().get().c()));
        }
        optional("radius", mends.radiusMm());
    }
}
