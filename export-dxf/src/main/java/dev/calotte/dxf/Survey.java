package dev.calotte.dxf;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.document.Wireframe;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** A pen that only looks: learns extents and layers, and refuses what the file cannot say. */
final class Survey implements Pen {

    /** Some readers look for these words without regard to what they stand for. */
    private static final Set<String> WORDS = Set.of(
            "SECTION",
            "ENDSEC",
            "HEADER",
            "TABLES",
            "BLOCKS",
            "CLASSES",
            "OBJECTS",
            "ENTITIES",
            "EOF",
            "TABLE",
            "ENDTAB",
            "LTYPE",
            "LAYER",
            "CONTINUOUS",
            "BLOCK",
            "ENDBLK",
            "POINT",
            "LINE",
            "CIRCLE",
            "ARC",
            "POLYLINE",
            "LWPOLYLINE",
            "VERTEX",
            "SEQEND",
            "3DFACE");

    private final String document;
    private final Map<String, Layer> layers = new LinkedHashMap<>();
    private final Extents extents = new Extents();
    private long entities;

    Survey(String document) {
        this.document = document;
        layers.put(Layer.ZERO.name(), Layer.ZERO);
    }

    /** The layers to declare: 0 first, then those that hold something, in the order of their entities. */
    Collection<Layer> layers() {
        return layers.values();
    }

    Extents extents() {
        return extents;
    }

    /** How many times something was drawn. */
    long entities() {
        return entities;
    }

    @Override
    public void path(Layer layer, Polyline path) {
        use(layer);
        for (int i = 0; i < path.size(); i++) {
            see(layer, path.x(i), path.y(i), 0);
            if (!Double.isFinite(path.bulge(i))) {
                throw refused(layer, "a bulge that is no number, " + path.bulge(i));
            }
            path.arc(i).ifPresent(this::see);
            if (i > 0 || path.isClosed()) {
                int before = i > 0 ? i - 1 : path.size() - 1;
                if (Decimals.same(path.x(before), path.x(i)) && Decimals.same(path.y(before), path.y(i))) {
                    throw refused(layer, "a side without length at " + place(path.x(i), path.y(i)));
                }
            }
        }
    }

    /** Where an arc reaches furthest along an axis. */
    private void see(Arc arc) {
        for (int quarter = 0; quarter < 4; quarter++) {
            double angle = quarter * Math.PI / 2;
            if (arc.passes(angle)) {
                extents.add(arc.x(angle), arc.y(angle), 0);
            }
        }
    }

    @Override
    public void circle(Layer layer, Circle circle) {
        use(layer);
        double radius = circle.radiusMm();
        see(layer, circle.xMm() - radius, circle.yMm() - radius, 0);
        see(layer, circle.xMm() + radius, circle.yMm() + radius, 0);
        if (radius <= 0 || Decimals.same(radius, 0)) {
            throw refused(layer, "a circle without radius at " + place(circle.xMm(), circle.yMm()));
        }
    }

    @Override
    public void element(Layer layer, Wireframe.Layer elements, int element) {
        use(layer);
        int corners = elements.sort().corners();
        for (int corner = 0; corner < corners; corner++) {
            double x = elements.at(element, corner, 0);
            double y = elements.at(element, corner, 1);
            see(layer, x, y, elements.at(element, corner, 2));
            int next = (corner + 1) % corners;
            if (next != corner && meet(elements, element, corner, next)) {
                throw refused(layer, "a side without length at " + place(x, y));
            }
        }
    }

    private static boolean meet(Wireframe.Layer elements, int element, int one, int other) {
        boolean same = true;
        for (int axis = 0; axis < 3; axis++) {
            same &= Decimals.same(elements.at(element, one, axis), elements.at(element, other, axis));
        }
        return same;
    }

    private void use(Layer layer) {
        entities++;
        if (layers.putIfAbsent(layer.name(), layer) == null && WORDS.contains(layer.name())) {
            throw refused(layer, "a name that is a word of the format");
        }
    }

    private void see(Layer layer, double x, double y, double z) {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw refused(layer, "a place that is no number, x " + x + ", y " + y + ", z " + z);
        }
        extents.add(x, y, z);
    }

    private static String place(double x, double y) {
        return "x " + x + ", y " + y;
    }

    private IllegalArgumentException refused(Layer layer, String what) {
        return new IllegalArgumentException(document + ": layer " + layer.name() + " has " + what);
    }
}
