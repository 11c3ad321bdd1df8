package dev.calotte.dxf;

import dev.calotte.contour.Contours.Closing;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A file: its scaffold, with layers and entities in their places. */
final class DxfFile {

    /** Width over height of the view that the scaffold describes. */
    private static final double VIEW = 1.34;

    private final TagWriter tags;
    private final Dialect dialect;
    private final Closing closing;
    private final List<Scaffold.Line> lines;
    private final Handles handles;
    private final Map<String, String> known = new TreeMap<>();

    DxfFile(TagWriter tags, Dialect dialect, Closing closing) throws IOException {
        Scaffold scaffold = Scaffold.of(dialect);
        this.tags = tags;
        this.dialect = dialect;
        this.closing = closing;
        this.lines = scaffold.lines();
        this.handles = new Handles(scaffold);
    }

    void write(String comment, Content content, Survey survey) throws IOException {
        tags.text(999, comment);
        learn(survey);
        for (int i = 0; i < lines.size(); i++) {
            Scaffold.Line line = lines.get(i);
            if (line.marks("layers")) {
                i = layers(i + 1, survey.layers());
            } else if (line.marks("entities")) {
                content.drawWith(EntityPen.of(dialect, entities(), closing));
            } else {
                put(line);
            }
        }
        tags.flush();
    }

    private Entities entities() {
        return dialect == Dialect.LWPOLYLINE
                ? Entities.release2000(tags, handles, handles.of("@model-space"))
                : new Release12(tags);
    }

    /** Writes the record of each layer; where it ends. */
    private int layers(int start, Collection<Layer> layers) throws IOException {
        int end = start;
        while (!lines.get(end).marks("end")) {
            end++;
        }
        for (Layer layer : layers) {
            known.put("%layer", layer.name());
            known.put("%colour", String.valueOf(layer.colour()));
            for (Scaffold.Line line : lines.subList(start, end)) {
                put(line);
            }
        }
        return end;
    }

    private void put(Scaffold.Line line) throws IOException {
        String value = line.value();
        if (value.startsWith("@")) {
            value = handles.of(value);
        } else if (value.equals("%handle")) {
            value = handles.next();
        } else if (value.startsWith("%")) {
            value = known.get(value);
        }
        tags.text(line.code(), value);
    }

    private void learn(Survey survey) {
        Extents extents = survey.extents();
        for (int axis = 0; axis < 3; axis++) {
            String name = "-" + "xyz".charAt(axis);
            known.put("%least" + name, Decimals.text(extents.least(axis)));
            known.put("%most" + name, Decimals.text(extents.most(axis)));
            known.put("%middle" + name, Decimals.text(extents.least(axis) + extents.size(axis) / 2));
        }
        double view = Math.max(1, Math.max(extents.size(1), extents.size(0) / VIEW));
        known.put("%view-height", Decimals.text(view));
        known.put("%layers", String.valueOf(survey.layers().size()));
        known.put("%seed", handles.above(survey.layers().size() + survey.entities()));
    }
}
