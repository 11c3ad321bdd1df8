package dev.calotte.check;

import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.export.Facets;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Tells a solid model from its mirror image. Models are neither turned nor mirrored, whatever their scale and into however
 * many pieces they are cut: of a body or a shell some facet looks the way of each panel, of a frame some edge runs the
 * way of each strut.
 */
public final class ModelCheck {

    /** Of all panels or struts: what narrow cuts leave out is less. */
    private static final double NEARLY_ALL = 0.98;

    private static final List<UnaryOperator<Vector3D>> MIRRORS = List.of(
            way -> new Vector3D(-way.getX(), way.getY(), way.getZ()),
            way -> new Vector3D(way.getX(), -way.getY(), way.getZ()),
            way -> new Vector3D(way.getX(), way.getY(), -way.getZ()));

    private final RecordedDome dome;
    private final Directions normals = new Directions();
    private final Directions edges = new Directions();

    /**
     * Of no piece yet.
     *
     * @param dome the dome of which it is a model
     */
    public ModelCheck(RecordedDome dome) {
        this.dome = dome;
    }

    /**
     * Looks at a piece of the model.
     *
     * @param facets its facets
     */
    public void add(Facets facets) {
        for (int facet = 0; facet < facets.size(); facet++) {
            normals.add(Slants.normal(facets, facet));
            for (int side = 0; side < 3; side++) {
                Vector3D from = Slants.corner(facets, facet, side);
                edges.add(Slants.corner(facets, facet, (side + 1) % 3).subtract(from));
            }
        }
    }

    /**
     * Compares all pieces with the dome.
     *
     * @param findings takes what is wrong
     */
    public void check(Findings findings) {
        ToDoubleFunction<UnaryOperator<Vector3D>> byPanels =
                mirror -> share(dome.panels(), this::normal, mirror, normals);
        ToDoubleFunction<UnaryOperator<Vector3D>> byStruts = mirror -> share(dome.struts(), this::along, mirror, edges);
        boolean skin = Stream.concat(Stream.of(UnaryOperator.<Vector3D>identity()), MIRRORS.stream())
                .anyMatch(mirror -> byPanels.applyAsDouble(mirror) >= NEARLY_ALL);
        ToDoubleFunction<UnaryOperator<Vector3D>> share = skin ? byPanels : byStruts;
        double there = share.applyAsDouble(UnaryOperator.identity());
        Predicate<UnaryOperator<Vector3D>> fits = mirror -> share.applyAsDouble(mirror) >= NEARLY_ALL;
        if (there < NEARLY_ALL && MIRRORS.stream().anyMatch(fits)) {
            findings.add(
                    Fault.MIRRORED,
                    "",
                    "its " + (skin ? "panels" : "struts")
                            + " stand as in a mirror of the dome, not as those of the record.");
        }
    }

    private Vector3D normal(Panel panel) {
        Vector3D from = dome.vertex(panel.vertices().get(0));
        Vector3D one = dome.vertex(panel.vertices().get(1)).subtract(from);
        return one.crossProduct(dome.vertex(panel.vertices().get(2)).subtract(from));
    }

    private Vector3D along(Strut strut) {
        return dome.vertex(strut.to()).subtract(dome.vertex(strut.from()));
    }

    /** A way to the directions of what the record holds. */
    private interface Way<T> {
        Vector3D of(T piece);
    }

    private static <T> double share(List<T> pieces, Way<T> way, UnaryOperator<Vector3D> mirror, Directions seen) {
        long asked = 0;
        long held = 0;
        for (T piece : pieces) {
            Vector3D direction = mirror.apply(way.of(piece));
            if (direction.getNorm() > 0) {
                asked++;
                held += seen.holds(direction) ? 1 : 0;
            }
        }
        return asked == 0 ? 1 : (double) held / asked;
    }
}
