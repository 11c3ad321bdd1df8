package dev.calotte.check;

import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What meets at each vertex of a dome, counter-clockwise seen from outside, found by where it points. */
public final class Around {

    private final RecordedDome dome;
    private final Edges edges;
    private final List<List<Strut>> strutsAt = new ArrayList<>();

    /**
     * Sorts struts by their ends.
     *
     * @param dome a dome that refers to nothing that is not there
     */
    public Around(RecordedDome dome) {
        this.dome = dome;
        this.edges = new Edges(dome.panels());
        dome.vertices().forEach(vertex -> strutsAt.add(new ArrayList<>()));
        for (Strut strut : dome.struts()) {
            strutsAt.get(strut.from()).add(strut);
            strutsAt.get(strut.to()).add(strut);
        }
    }

    /**
     * A strut as it leaves a vertex.
     *
     * @param strut the strut
     * @param bearing where it points on the plane that touches the sphere, counter-clockwise in degrees
     */
    public record Spoke(Strut strut, double bearing) {}

    /**
     * The struts at a vertex.
     *
     * @param vertex its number
     * @return counter-clockwise seen from outside, from wherever
     */
    public List<Spoke> struts(int vertex) {
        Vector3D out = dome.vertex(vertex).normalize();
        Vector3D x = out.orthogonal();
        Vector3D y = out.crossProduct(x);
        return strutsAt.get(vertex).stream()
                .map(strut -> {
                    Vector3D way = dome.vertex(other(strut, vertex)).subtract(dome.vertex(vertex));
                    double bearing = StrictMath.atan2(way.dotProduct(y), way.dotProduct(x));
                    return new Spoke(strut, Angle.degrees(bearing));
                })
                .sorted(Comparator.comparingDouble(Spoke::bearing))
                .toList();
    }

    private static int other(Strut strut, int vertex) {
        return strut.from() == vertex ? strut.to() : strut.from();
    }

    /**
     * The panel between two struts that leave a vertex.
     *
     * @param vertex where both begin
     * @param one a strut
     * @param next the one that follows counter-clockwise
     * @return the mark of the panel, if there is one
     */
    public Optional<String> panel(int vertex, Strut one, Strut next) {
        return edges.panels(one.from(), one.to()).stream()
                .map(dome.panels()::get)
                .filter(panel -> follows(panel.vertices(), vertex, other(one, vertex), other(next, vertex)))
                .map(RecordedDome.Panel::mark)
                .findFirst();
    }

    private static boolean follows(List<Integer> corners, int vertex, int one, int next) {
        int at = corners.indexOf(vertex);
        return at >= 0 && corners.get((at + 1) % 3) == one && corners.get((at + 2) % 3) == next;
    }

    /**
     * The kinds of the struts along the sides of a panel.
     *
     * @param panel the panel
     * @return the marks of three kinds, none for a side without a strut
     */
    public List<String> kinds(RecordedDome.Panel panel) {
        List<String> kinds = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            int from = panel.vertices().get(k);
            int to = panel.vertices().get((k + 1) % 3);
            strutsAt.get(from).stream()
                    .filter(strut -> other(strut, from) == to)
                    .forEach(strut -> kinds.add(strut.kind()));
        }
        return kinds;
    }
}
