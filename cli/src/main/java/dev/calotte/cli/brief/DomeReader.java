package dev.calotte.cli.brief;

import dev.calotte.dome.Base;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import dev.calotte.units.UnitSystem;
import java.util.Arrays;

/**
 * Reads the section {@code dome}.
 *
 * @param fields its keys
 * @param units what a bare number means
 */
record DomeReader(Fields fields, UnitSystem units) {

    /** All that the section says, together with a size. */
    DomeSpec spec(Size size) {
        Solid solid = fields.read("solid", Solid.ICOSAHEDRON, Words.of(Solid.values()));
        Breakdown breakdown = breakdown(solid);
        Spacing spacing = fields.read("spacing", Spacing.CHORD, Words.of(Spacing.values()));
        Fitting fitting = fitting();
        Up up = fields.read("up", Up.VERTEX, Words.of(Up.values()));
        Keep keep = keep();
        Base base = fields.read("base", Base.AS_IS, Words.of(Base.values()));
        fields.close();
        return DomeSpec.of(solid, breakdown, size)
                .withSpacing(spacing)
                .withFitting(fitting)
                .withUp(up)
                .withKeep(keep)
                .withBase(base);
    }

    /** The height of the wall under the base ring; to be asked for before the rest, which closes the section. */
    double riserMm() {
        return fields.read("riser", 0.0, Measured.notBelowZero(units));
    }

    private Fitting fitting() {
        Fitting usual = Fitting.DEFAULT;
        Fitting.Goal goal = fields.read("fit", usual.goal(), Words.of(Fitting.Goal.values()));
        return new Fitting(goal, fields.read("strut-ratio", usual.strutRatio(), Numbers::strutRatio));
    }

    private Breakdown breakdown(Solid solid) {
        fields.require("breakdown", "Write for example breakdown: 3 below dome:.");
        return fields.read("breakdown", Breakdown.of(1), new BreakdownReader(faces(solid)));
    }

    /** When it is not known which solid is meant, it is given the benefit of the doubt. */
    private int faces(Solid solid) {
        return fields.sound("solid")
                ? solid.faceCount()
                : Arrays.stream(Solid.values()).mapToInt(Solid::faceCount).min().orElseThrow();
    }

    private Keep keep() {
        if (!fields.isSection("keep")) {
            return fields.read("keep", new Keep.Whole(), Numbers::keep);
        }
        Fields keep = fields.section("keep");
        double heightMm = keep.read("above", 0.0, Measured.ofEitherSign(units));
        keep.require("above", "Write for example keep: { above: 300 mm }.");
        keep.close();
        return new Keep.AboveHeight(heightMm);
    }
}
