package dev.calotte.cli.report;

import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Locale;

/** A dome in a few letters, to tell it from others in a table. */
final class DomeName {

    private DomeName() {}

    /** For example {@code icosa 3V chord 5/9}, or with what is up where panels above a level stay. */
    static String of(DomeSpec spec) {
        return solid(spec.solid()) + " " + breakdown(spec.breakdown()) + " " + word(spec.spacing()) + keep(spec);
    }

    private static String solid(Solid solid) {
        return switch (solid) {
            case ICOSAHEDRON -> "icosa";
            case OCTAHEDRON -> "octa";
            case TETRAHEDRON -> "tetra";
        };
    }

    private static String breakdown(Breakdown breakdown) {
        return breakdown.classNumber() == 1
                ? breakdown.frequency() + "V"
                : "[" + breakdown.b() + "," + breakdown.c() + "]";
    }

    private static String keep(DomeSpec spec) {
        Keep keep = spec.keep();
        if (keep instanceof Keep.AboveHeight) {
            return " " + word(spec.up()) + " up";
        }
        return keep instanceof Keep.Whole ? "" : " " + keep;
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
