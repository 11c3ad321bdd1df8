package dev.calotte.parts;

import dev.calotte.geometry.Boundary;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Where slots of a hub plate run out of it. */
interface PlateRim {

    /**
     * How far out the walls of a slot meet the rim, the nearer of the two.
     *
     * @param angleRad where the slot points
     * @param fromMm how far from the centre it would begin
     * @return the distance from the centre; less than where it begins if nothing is left there to be slotted; absent if the
     *     rim comes across its way more than once
     */
    OptionalDouble wallEndMm(double angleRad, double fromMm);

    static PlateRim of(HubPlate plate, Optional<PlateBlank> blank) {
        return blank.<PlateRim>map(own -> new Own(own.rim().boundary(), plate.slotMm() / 2))
                .orElseGet(() -> new Disc(plate.diameterMm() / 2, plate.slotMm() / 2));
    }

    /**
     * A round plate.
     *
     * @param radius of the disc
     * @param half of the slots' width
     */
    record Disc(double radius, double half) implements PlateRim {

        @Override
        public OptionalDouble wallEndMm(double angleRad, double fromMm) {
            return OptionalDouble.of(half < radius ? Math.sqrt(radius * radius - half * half) : 0);
        }
    }

    /**
     * A plate of someone's own shape.
     *
     * @param boundary its outline
     * @param half of the slots' width
     */
    record Own(Boundary boundary, double half) implements PlateRim {

        @Override
        public OptionalDouble wallEndMm(double angleRad, double fromMm) {
            Vector2D along = new Vector2D(StrictMath.cos(angleRad), StrictMath.sin(angleRad));
            Vector2D left = new Vector2D(-along.getY(), along.getX());
            List<Vector2D> begins = Stream.of(-half, half)
                    .map(aside -> new Vector2D(fromMm, along, aside, left))
                    .toList();
            if (!begins.stream().allMatch(boundary::holds)) {
                return OptionalDouble.of(0);
            }
            List<List<Double>> ends = begins.stream()
                    .map(begin -> boundary.crossings(begin, along))
                    .toList();
            return ends.stream().allMatch(crossings -> crossings.size() == 1)
                    ? OptionalDouble.of(
                            fromMm + Math.min(ends.get(0).get(0), ends.get(1).get(0)))
                    : OptionalDouble.empty();
        }
    }
}
