package dev.calotte.dxf;

import java.io.IOException;
import java.util.Collection;

/** The sections of a file, in the order in which they stand. */
final class DxfFile {

    private static final String RELEASE_12 = "AC1009";
    private static final int METRIC = 1;
    private static final int MILLIMETRES = 4;

    private final TagWriter tags;

    DxfFile(TagWriter tags) {
        this.tags = tags;
    }

    void write(String title, Content content, Survey survey) throws IOException {
        if (!title.isEmpty()) {
            tags.text(999, Ascii.line(title));
        }
        header(survey.extents());
        tables(survey.layers());
        begin("BLOCKS");
        end();
        begin("ENTITIES");
        content.drawWith(new EntityPen(tags));
        end();
        tags.text(0, "EOF");
        tags.flush();
    }

    /** The order of the two variables of units matters: there are readers that believe the last one they meet. */
    private void header(Extents extents) throws IOException {
        begin("HEADER");
        tags.text(9, "$ACADVER");
        tags.text(1, RELEASE_12);
        tags.text(9, "$MEASUREMENT");
        tags.whole(70, METRIC);
        tags.text(9, "$INSUNITS");
        tags.whole(70, MILLIMETRES);
        tags.text(9, "$EXTMIN");
        tags.place(10, extents.least(0), extents.least(1), extents.least(2));
        tags.text(9, "$EXTMAX");
        tags.place(10, extents.most(0), extents.most(1), extents.most(2));
        end();
    }

    private void tables(Collection<Layer> layers) throws IOException {
        begin("TABLES");
        beginTable("LTYPE", 1);
        lineType();
        endTable();
        beginTable("LAYER", layers.size());
        for (Layer layer : layers) {
            layer(layer);
        }
        endTable();
        end();
    }

    private void lineType() throws IOException {
        tags.text(0, "LTYPE");
        tags.text(2, "CONTINUOUS");
        tags.whole(70, 0);
        tags.text(3, "Solid line");
        tags.whole(72, 'A');
        tags.whole(73, 0);
        tags.number(40, 0);
    }

    /**
     * The order matters: there are readers that lose a colour that comes before the name, and one that passes over
     * whatever stands first, because it takes it for a handle.
     */
    private void layer(Layer layer) throws IOException {
        tags.text(0, "LAYER");
        tags.whole(70, 0);
        tags.text(2, layer.name());
        tags.whole(62, layer.colour());
        tags.text(6, "CONTINUOUS");
    }

    private void begin(String section) throws IOException {
        tags.text(0, "SECTION");
        tags.text(2, section);
    }

    private void end() throws IOException {
        tags.text(0, "ENDSEC");
    }

    private void beginTable(String name, int entries) throws IOException {
        tags.text(0, "TABLE");
        tags.text(2, name);
        tags.whole(70, entries);
    }

    private void endTable() throws IOException {
        tags.text(0, "ENDTAB");
    }
}
