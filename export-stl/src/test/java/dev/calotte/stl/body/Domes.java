package dev.calotte.stl.body;

import dev.calotte.document.Jig;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import dev.calotte.solid.Jigs;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Jigs of domes, as the library makes them. */
final class Domes {

    static final JigSpec TUBE =
            new JigSpec(Optional.of(StrutSection.round(23.4)), 0.3, 2.4, Bed.USUAL, Optional.empty());

    static final JigSpec TIMBER =
            new JigSpec(Optional.of(StrutSection.rectangle(38, 89)), 0.5, 3, new Bed(400, 400, 300), Optional.empty());

    static final JigSpec SOCKETS = new JigSpec(
            Optional.of(StrutSection.round(23.4)),
            0.2,
            1.6,
            Bed.USUAL,
            Optional.of(new JigSpec.Sockets(StrutSection.round(16), 40, 4)));

    static final JigSpec SMALL_SOCKETS = new JigSpec(
            Optional.of(StrutSection.round(23.4)),
            0.2,
            1.6,
            Bed.USUAL,
            Optional.of(new JigSpec.Sockets(StrutSection.round(6), 12, 10)));

    private Domes() {}

    static Dome dome(int frequency) {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000)));
    }

    static Dome halfDome() {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000))
                .withKeep(new Keep.Rows(5, 9)));
    }

    static Parts gapped(int frequency, double gapMm) {
        return Parts.of(dome(frequency), Joinery.gap(gapMm));
    }

    static Parts flattened(int frequency) {
        return Parts.of(
                dome(frequency),
                Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 8.5, 20, OptionalDouble.of(1.25))));
    }

    static Parts mitred(int frequency) {
        return Parts.of(dome(frequency), Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95)));
    }

    static PrintPlate plate(Parts parts, JigSpec spec) {
        return Jigs.of("dome", parts, List.of(), spec);
    }

    static <T extends Jig> List<T> jigs(PrintPlate plate, Class<T> sort) {
        return plate.jigs().stream().filter(sort::isInstance).map(sort::cast).toList();
    }
}
