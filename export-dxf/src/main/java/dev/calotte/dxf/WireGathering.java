package dev.calotte.dxf;

import dev.calotte.document.Wireframe;
import dev.calotte.document.Wireframe.Sort;
import dev.calotte.dxf.TagReader.Tag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes the layers of a wireframe of entities. */
final class WireGathering implements Gatherer {

    private static final Set<String> PASSED_OVER =
            Set.of("TEXT", "MTEXT", "ATTDEF", "ATTRIB", "DIMENSION", "LEADER", "MULTILEADER", "VIEWPORT");

    private static final int MOST_ELEMENTS = 200_000;
    private static final int FACE_CORNERS = 4;

    private final Map<Key, Places> layers = new LinkedHashMap<>();
    private int elements;

    /** What lies together. */
    private record Key(String layer, Sort sort) {}

    /** Places one after the other, in the unit of the file. */
    private static final class Places {

        private final Origin first;
        private double[] xyz = new double[9];
        private int size;

        Places(Origin first) {
            this.first = first;
        }

        void add(Entity entity, int corner) throws DxfFormatException {
            if (size == xyz.length) {
                xyz = Arrays.copyOf(xyz, 2 * size);
            }
            xyz[size++] = entity.number(10 + corner);
            xyz[size++] = entity.number(20 + corner);
            xyz[size++] = entity.number(30 + corner, 0);
        }

        double[] millimetres(double unitMm) {
            return Arrays.stream(xyz, 0, size).map(value -> unitMm * value).toArray();
        }
    }

    @Override
    public void add(Entity entity) throws DxfFormatException {
        if (PASSED_OVER.contains(entity.type()) || entity.isOnPaper()) {
            return;
        }
        Sort sort = switch (entity.type()) {
            case "POINT" -> Sort.POINTS;
            case "LINE" -> Sort.LINES;
            case "3DFACE" -> Sort.FACES;
            default -> throw entity.wrong("a wireframe is read from points, lines and faces alone");
        };
        elements++;
        if (elements > MOST_ELEMENTS) {
            throw entity.wrong("the file has more than " + MOST_ELEMENTS + " elements");
        }
        refuseFourth(entity, sort);
        Origin origin = entity.origin();
        Places places = layers.computeIfAbsent(new Key(origin.layer(), sort), key -> new Places(origin));
        for (int corner = 0; corner < sort.corners(); corner++) {
            places.add(entity, corner);
        }
    }

    /** A face always has four corners; of a triangle the last two are the same. */
    private static void refuseFourth(Entity entity, Sort sort) throws DxfFormatException {
        int last = FACE_CORNERS - 1;
        for (int axis = 10; sort == Sort.FACES && axis <= 30; axis += 10) {
            double third = entity.number(axis + last - 1, 0);
            if (entity.number(axis + last, third) != third) {
                throw entity.wrong("it has four corners; divide it into triangles");
            }
        }
    }

    @Override
    public void end(Tag tag) {
        // every entity stands alone, none can be unfinished
    }

    List<Wireframe.Layer> layers(double unitMm) throws DxfFormatException {
        List<Wireframe.Layer> all = new ArrayList<>();
        for (Map.Entry<Key, Places> layer : layers.entrySet()) {
            try {
                all.add(new Wireframe.Layer(
                        layer.getKey().layer(),
                        layer.getKey().sort(),
                        layer.getValue().millimetres(unitMm)));
            } catch (IllegalArgumentException wrongName) {
                throw layer.getValue().first.wrong(wrongName.getMessage());
            }
        }
        return List.copyOf(all);
    }
}
