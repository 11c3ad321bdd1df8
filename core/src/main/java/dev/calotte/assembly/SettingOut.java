package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.parts.Parts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Where the base hubs go on the ground: by distance and bearing from a peg on the axis, checked by the chords from hub to
 * hub and by a few long diagonals. Common practice, no source.
 *
 * <pre>{@code
 * SettingOut pegs = SettingOut.of(parts);
 * int holes = pegs.stakes().size();
 * }</pre>
 *
 * @param stakes the base hubs that remain, counter-clockwise seen from above; none for a whole sphere
 * @param diagonals long distances to check by; none for fewer than four hubs
 */
public record SettingOut(List<Stake> stakes, List<Diagonal> diagonals) {

    private static final double SAME_RAD = 1e-9;

    /**
     * Copies the lists.
     *
     * @param stakes the base hubs
     * @param diagonals long distances to check by
     */
    public SettingOut {
        stakes = List.copyOf(stakes);
        diagonals = List.copyOf(diagonals);
    }

    /**
     * A base hub on the ground.
     *
     * @param mark the mark of the hub
     * @param fromAxisMm from the axis, along the level
     * @param bearingRad counter-clockwise from the start ray seen from above, from 0 to below a full turn
     * @param aboveLowestMm over the lowest base hub of the dome without openings
     * @param levelChordMm to the next base hub, along the level
     * @param straightChordMm to the next base hub, from node to node
     */
    public record Stake(
            String mark,
            double fromAxisMm,
            double bearingRad,
            double aboveLowestMm,
            double levelChordMm,
            double straightChordMm) {}

    /**
     * A distance between two base hubs that lie about opposite each other.
     *
     * @param from the mark of the one
     * @param to the mark of the other
     * @param levelMm along the level
     * @param straightMm from node to node
     */
    public record Diagonal(String from, String to, double levelMm, double straightMm) {}

    /**
     * Sets out the base of a dome.
     *
     * @param parts the parts of the dome
     * @return the table
     */
    public static SettingOut of(Parts parts) {
        Dome dome = parts.dome();
        PieceMarks marks = new PieceMarks(parts);
        List<Hub> ring = dome.baseRing().stream().map(dome.hubs()::get).toList();
        Dome whole = dome.whole();
        double lowest = whole.baseRing().stream()
                .mapToDouble(h -> whole.hubs().get(h).position().getZ())
                .min()
                .orElse(0);
        List<Stake> stakes = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Vector3D at = ring.get(i).position();
            Vector3D next = ring.get((i + 1) % ring.size()).position();
            stakes.add(new Stake(
                    marks.of(ring.get(i)),
                    level(at, Vector3D.ZERO),
                    bearingRad(at),
                    at.getZ() - lowest,
                    level(at, next),
                    at.distance(next)));
        }
        return new SettingOut(stakes, diagonals(ring, marks));
    }

    private static List<Diagonal> diagonals(List<Hub> ring, PieceMarks marks) {
        int size = ring.size();
        if (size < 4) {
            return List.of();
        }
        return IntStream.range(0, 3)
                .map(k -> k * size / 6)
                .distinct()
                .mapToObj(i -> diagonal(ring.get(i), ring.get((i + size / 2) % size), marks))
                .toList();
    }

    private static Diagonal diagonal(Hub from, Hub to, PieceMarks marks) {
        return new Diagonal(
                marks.of(from),
                marks.of(to),
                level(from.position(), to.position()),
                from.position().distance(to.position()));
    }

    private static double level(Vector3D one, Vector3D other) {
        double x = other.getX() - one.getX();
        double y = other.getY() - one.getY();
        return Math.sqrt(x * x + y * y);
    }

    private static double bearingRad(Vector3D at) {
        double bearing = StrictMath.atan2(at.getY(), at.getX());
        double turned = bearing < 0 ? bearing + 2 * Math.PI : bearing;
        return turned > 2 * Math.PI - SAME_RAD ? 0 : turned;
    }
}
