package dev.calotte.cli.brief;

import dev.calotte.caution.Material;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Corner;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Sheeting;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Outline;
import dev.calotte.units.UnitSystem;
import java.util.Optional;
import java.util.function.Function;

/** Reads one item of {@code covers}. */
final class CoverReader {

    private enum Faces {
        ONE,
        BOTH
    }

    private enum Grain {
        FREE,
        ALONG
    }

    private enum Notches {
        NONE,
        CODED
    }

    private enum CutBy {
        STOCK,
        PATCHES
    }

    private enum EdgeCut {
        SQUARE,
        BEVELLED
    }

    private final Fields fields;
    private final UnitSystem units;
    private final OutlineFiles outlines;

    CoverReader(Fields fields, UnitSystem units, OutlineFiles outlines) {
        this.fields = fields;
        this.units = units;
        this.outlines = outlines;
    }

    Covering covering() {
        fields.require("name", "Write for example name: glazing.");
        Cover cover = Cover.of(fields.read("name", "cover", CoverReader::name))
                .with(sheeting())
                .with(allowances())
                .with(treatment());
        Optional<Fasteners> fasteners = fasteners();
        Covering covering = new Covering(
                fasteners.map(cover::with).orElse(cover),
                new StockReader(fields, units, outlines).stocks(),
                fields.read("spacing", 0.0, Measured.notBelowZero(units)),
                fields.offers("material")
                        ? Optional.ofNullable(fields.read("material", null, Words.of(Material.values())))
                        : Optional.empty(),
                fields.read("cut-by", CutBy.STOCK, Words.of(CutBy.values())) == CutBy.PATCHES);
        if (covering.byPatches() && covering.stocks().stream().anyMatch(Outline.class::isInstance)) {
            fields.refuse(
                    "cut-by",
                    new Refusal(
                            Code.CONFLICT,
                            "irregular outlines are filled with what fits them best, not patch by patch.",
                            "Write cut-by: stock, or leave the outline out."));
        }
        fields.close();
        return covering;
    }

    private static String name(Node node) {
        String name = Values.text(node);
        if (!name.matches("[A-Za-z0-9._-]{1,40}") || name.startsWith(".")) {
            throw Refusal.wrong(
                    Seen.text(name) + " cannot be part of a file's name.",
                    "Use up to 40 letters, digits, points, hyphens and underscores.");
        }
        return name;
    }

    private Sheeting sheeting() {
        return new Sheeting(
                fields.read("plane", 0.0, Measured.ofEitherSign(units)),
                fields.read("thickness", 0.0, Measured.notBelowZero(units)),
                fields.read("edge-cut", EdgeCut.SQUARE, Words.of(EdgeCut.values())) == EdgeCut.BEVELLED);
    }

    private Allowances allowances() {
        Function<Node, Double> either = Measured.ofEitherSign(units);
        double narrow = 0;
        double wide = 0;
        if (fields.isSection("edge")) {
            Fields edge = fields.section("edge");
            narrow = edge.read("narrow", 0.0, either);
            wide = edge.read("wide", 0.0, either);
            edge.require("narrow", "Write for example edge: { narrow: 8 mm, wide: 18 mm }.");
            edge.require("wide", "Write for example edge: { narrow: 8 mm, wide: 18 mm }.");
            edge.close();
        } else {
            narrow = fields.read("edge", 0.0, either);
            wide = narrow;
        }
        if (wide < narrow) {
            fields.refuse(
                    "edge",
                    new Refusal(Code.IMPOSSIBLE, "the wide allowance is below the narrow one.", "Change them round."));
        }
        return new Allowances(
                narrow,
                Math.max(narrow, wide),
                fields.read("base-edge", 0.0, either),
                fields.read("corner", Corner.POINTED, Words.of(Corner.values())),
                fields.read("hub-relief", 0.0, Measured.notBelowZero(units)));
    }

    private Treatment treatment() {
        return new Treatment(
                fields.read("faces", Faces.ONE, Words.of(Faces.values())) == Faces.BOTH,
                fields.read("grain", Grain.FREE, Words.of(Grain.values())) == Grain.ALONG,
                fields.read("split", Splitting.NEVER, Words.of(Splitting.values())),
                fields.read("notches", Notches.NONE, Words.of(Notches.values())) == Notches.CODED);
    }

    private Optional<Fasteners> fasteners() {
        if (!fields.offers("fasteners")) {
            return Optional.empty();
        }
        Fields section = fields.section("fasteners");
        String example = "Write for example fasteners: { hole: 6.5 mm, edge-distance: 40 mm, pitch: 400 mm }.";
        double hole = size(section, "hole", example, 1);
        double distance = size(section, "edge-distance", example, hole);
        double pitch = size(section, "pitch", example, 2 * hole);
        section.close();
        try {
            return Optional.of(new Fasteners(hole, distance, pitch));
        } catch (IllegalArgumentException impossible) {
            fields.refuse(
                    "fasteners",
                    new Refusal(
                            Code.IMPOSSIBLE,
                            "the holes would reach over the edge or into one another.",
                            "Let edge-distance be more than half of hole, and pitch more than hole."));
            return Optional.empty();
        }
    }

    private double size(Fields section, String key, String example, double stopgap) {
        section.require(key, example);
        return section.read(key, stopgap, Measured.size(units));
    }
}
