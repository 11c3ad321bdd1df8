package dev.calotte.check;

import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.Strut;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Marks of single pieces: that each is there once, begins with the mark of its kind, and that rows and places are
 * counted on round the dome from the start ray.
 */
final class MarkCheck {

    /** Bearings nearer to each other than this, in radians, are the same; the places they come from are rounded to 1e-9. */
    private static final double SAME = 1e-7;

    private static final Pattern MARK = Pattern.compile("(.+)-(\\d{1,6})\\.(\\d{2,7})");

    private final RecordedDome dome;
    private final Findings findings;
    private final Set<String> seen = new TreeSet<>();
    private int row;
    private int place;
    private double bearing;

    MarkCheck(RecordedDome dome, Findings findings) {
        this.dome = dome;
        this.findings = findings;
    }

    void check() {
        begin();
        for (Hub hub : dome.hubs()) {
            piece(hub.mark(), hub.kind(), hub.row(), dome.vertex(hub.vertex()));
        }
        begin();
        for (Strut strut : dome.struts()) {
            piece(strut.mark(), strut.kind(), -1, dome.vertex(strut.from()).add(dome.vertex(strut.to())));
        }
        begin();
        for (Panel panel : dome.panels()) {
            Vector3D middle = Vector3D.ZERO;
            for (int vertex : panel.vertices()) {
                middle = middle.add(dome.vertex(vertex));
            }
            piece(panel.mark(), panel.kind(), panel.row(), middle);
        }
    }

    private void begin() {
        row = -1;
        place = 0;
        bearing = 0;
    }

    private void piece(String mark, String kind, int itsRow, Vector3D at) {
        Matcher matcher = MARK.matcher(mark);
        if (!seen.add(mark)) {
            findings.add(Fault.DOUBLED, mark, "this mark stands on two pieces.");
        } else if (!matcher.matches()) {
            findings.add(Fault.DIFFERENT, mark, "this is no mark of a piece.");
        } else {
            findings.same(mark, "the kind", kind, matcher.group(1));
            int row = Integer.parseInt(matcher.group(2));
            if (itsRow >= 0) {
                findings.same(mark, "the row", itsRow, row, 0);
            }
            counted(mark, row, Integer.parseInt(matcher.group(3)), at);
        }
    }

    private void counted(String mark, int itsRow, int itsPlace, Vector3D at) {
        double its = bearing(at);
        boolean same = itsRow == row;
        if (itsRow < row || (same && (itsPlace <= place || its < bearing - SAME))) {
            findings.add(
                    Fault.DIFFERENT,
                    mark,
                    "it stands where the places of its row, counted round the dome from the start ray, have another"
                            + " mark.");
        }
        row = itsRow;
        place = itsPlace;
        bearing = its;
    }

    private double bearing(Vector3D at) {
        double flat = Math.max(Math.abs(at.getX()), Math.abs(at.getY()));
        double angle = flat < SAME * dome.figures().radius() ? 0 : StrictMath.atan2(at.getY(), at.getX());
        double turned = angle < -SAME ? angle + 2 * Math.PI : Math.max(0, angle);
        return turned > 2 * Math.PI - SAME ? 0 : turned;
    }
}
