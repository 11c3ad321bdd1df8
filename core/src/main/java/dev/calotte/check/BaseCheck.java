package dev.calotte.check;

import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.units.Angle;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The base hubs on the ground: those of the base ring in its order, each where its place has it. */
public final class BaseCheck {

    /** A hub nearer to the axis than this, in millimetres, has no bearing that its printed place would tell. */
    private static final double AXIS_MM = 1;

    private final RecordedDome dome;
    private final List<Integer> ring;
    private final Findings findings;
    private final double lowest;

    private BaseCheck(RecordedDome dome, List<Integer> ring, Findings findings) {
        this.dome = dome;
        this.ring = ring;
        this.findings = findings;
        this.lowest = ring.stream()
                .mapToDouble(vertex -> dome.vertex(vertex).getZ())
                .min()
                .orElse(0);
    }

    /**
     * Sets the base out anew.
     *
     * @param dome a dome that refers to nothing that is not there
     * @param ring the vertices of its base hubs
     * @param stakes what is said of them
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, List<Integer> ring, List<RecordedStake> stakes, Findings findings) {
        boolean there =
                ring.stream().allMatch(v -> v >= 0 && v < dome.vertices().size());
        if (there && stakes.size() == ring.size()) {
            new BaseCheck(dome, ring, findings).check(stakes);
        } else {
            findings.add(Fault.DIFFERENT, "base", "its hubs are not those of the base ring.");
        }
    }

    private void check(List<RecordedStake> stakes) {
        Map<Integer, String> marks = new TreeMap<>();
        for (Hub hub : dome.hubs()) {
            marks.put(hub.vertex(), hub.mark());
        }
        for (int i = 0; i < ring.size(); i++) {
            findings.same(
                    "base " + stakes.get(i).mark(),
                    "the mark of the hub",
                    stakes.get(i).mark(),
                    marks.getOrDefault(ring.get(i), "nothing"));
            stake(i, stakes.get(i));
        }
    }

    private void stake(int i, RecordedStake stake) {
        Vector3D at = dome.vertex(ring.get(i));
        Vector3D way = dome.vertex(ring.get((i + 1) % ring.size())).subtract(at);
        String place = "base " + stake.mark();
        findings.same(place, "the distance from the axis", stake.fromAxis(), level(at), Printed.RECORD_MM);
        findings.same(place, "the level distance to the next", stake.levelChord(), level(way), Printed.RECORD_MM);
        findings.same(
                place, "the straight distance to the next", stake.straightChord(), way.getNorm(), Printed.RECORD_MM);
        double bearing = Angle.degrees(StrictMath.atan2(at.getY(), at.getX()));
        double off = Math.abs(Math.IEEEremainder(stake.bearing() - bearing, 360));
        if (level(at) > AXIS_MM && !(off <= Printed.RECORD_DEG)) {
            findings.same(place, "the bearing, in degrees,", stake.bearing(), bearing, Printed.RECORD_DEG);
        }
        // with openings the lowest base hub may be gone
        if (!dome.opened() || stake.aboveLowest() < at.getZ() - lowest) {
            findings.same(
                    place, "the height over the lowest", stake.aboveLowest(), at.getZ() - lowest, Printed.RECORD_MM);
        }
    }

    private static double level(Vector3D way) {
        return Math.sqrt(way.getX() * way.getX() + way.getY() * way.getY());
    }
}
