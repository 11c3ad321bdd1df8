package dev.calotte.parts;

import dev.calotte.units.Angle;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a reader should mind about how struts are cut and hubs are made, in sentences. */
public final class JoineryNotes {

    private static final int MOST_PAIRS = 3;
    /** Nearer to the end of a tube a hole tears out; common practice, no source, and near the least that codes allow. */
    private static final double LEAST_EDGE = 1.5;
    /** Lengths of the brief are texts, so only the rounding of sums may come between two that agree. */
    private static final double SAME_MM = 1e-6;
    /** Common practice, no source. */
    private static final double SAW_LIMIT_RAD = Math.PI / 4;

    private final Parts parts;
    private final Joinery joinery;
    private final UnitSystem units;
    private final List<String> notes = new ArrayList<>();

    private JoineryNotes(Parts parts, UnitSystem units) {
        this.parts = parts;
        this.joinery = parts.joinery();
        this.units = units;
    }

    /**
     * Words what the parts give reason to say.
     *
     * @param parts the parts
     * @param units how lengths are written
     * @return sentences, possibly none
     */
    public static List<String> of(Parts parts, UnitSystem units) {
        JoineryNotes notes = new JoineryNotes(parts, units);
        notes.addMerging();
        notes.addCloseKinds();
        notes.addHoles();
        notes.addPlates();
        notes.addSaw();
        return List.copyOf(notes.notes);
    }

    private void addMerging() {
        if (joinery.mergeWithinMm() > 0) {
            String error = units.length(parts.mergeErrorMm(), 1);
            notes.add("Struts that differ by no more than " + units.length(joinery.mergeWithinMm(), 1)
                    + " are one kind: a strut is up to " + error + " off its own length.");
        }
    }

    private void addCloseKinds() {
        List<CloseKinds> close = parts.closeKinds();
        close.stream()
                .limit(MOST_PAIRS)
                .forEach(pair -> notes.add(pair.first() + " and " + pair.second()
                        + " differ by " + units.length(pair.differenceMm(), 1) + " only" + lengths(pair)
                        + ": keep them apart by colour, or set merge-within."));
        if (close.size() > MOST_PAIRS) {
            notes.add((close.size() - MOST_PAIRS)
                    + " more pairs of kinds differ by less than three times the cut tolerance.");
        }
    }

    private String lengths(CloseKinds pair) {
        List<String> lengths = Stream.of(pair.first(), pair.second())
                .flatMap(mark ->
                        parts.strutKinds().stream().filter(kind -> kind.mark().equals(mark)))
                .map(kind -> units.length(kind.cutLengthMm(), 1))
                .toList();
        return lengths.isEmpty() ? "" : " (" + String.join(" and ", lengths) + ")";
    }

    private void addHoles() {
        if (joinery.ends() instanceof Ends.Flattened flat) {
            addEdge("The holes", flat.holeEdgeMm(), flat.holeMm());
        } else {
            joinery.hubPlate().ifPresent(plate -> {
                double furthest = parts.strutKinds().stream()
                        .flatMap(kind -> kind.gapsMm().stream())
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(0);
                addEdge("The holes of the hub plates", plate.holeCircleMm() / 2 - furthest, plate.holeMm());
            });
        }
    }

    private void addEdge(String holes, double edgeMm, double holeMm) {
        if (edgeMm < LEAST_EDGE * holeMm) {
            notes.add(holes + " stand " + units.length(edgeMm, 1)
                    + " from the ends of the struts, less than one and a half times their diameter ("
                    + units.length(LEAST_EDGE * holeMm, 1) + "); twice the diameter is common practice.");
        }
    }

    private void addPlates() {
        if (joinery.hubPlate().isPresent() && joinery.ends() instanceof Ends.Flattened flat) {
            notes.add("Hub plates stay flat: the struts are bent where their flattened ends begin.");
            addHoleCircle(joinery.hubPlate().get(), flat);
        }
    }

    /** A gap given beside a plate decides where the struts end, and with them their holes. */
    private void addHoleCircle(HubPlate plate, Ends.Flattened flat) {
        joinery.gapsMm()
                .map(gap -> 2 * (gap + flat.holeEdgeMm()))
                .filter(circle -> Math.abs(circle - plate.holeCircleMm()) > SAME_MM)
                .findFirst()
                .ifPresent(circle -> notes.add("hub-gap and hole-edge set the holes of the struts on a circle of "
                        + units.length(circle, 1) + ", and hub-plate.hole-circle those of the plates on one of "
                        + units.length(plate.holeCircleMm(), 1)
                        + ": they do not meet. Change one of them, or leave hub-gap out."));
    }

    private void addSaw() {
        Optional<Double> steepest =
                parts.railKinds().stream().map(RailKind::steepestRad).max(Double::compare);
        steepest.filter(tilt -> tilt > SAW_LIMIT_RAD)
                .ifPresent(tilt -> notes.add("The saw's blade is tilted by up to " + Angle.text(tilt, 1)
                        + " for the ends of the rails; usual saws stop at 45 to 50 degrees, so mind a jig."));
    }
}
