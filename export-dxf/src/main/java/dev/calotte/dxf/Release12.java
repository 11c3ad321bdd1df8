package dev.calotte.dxf;

import dev.calotte.units.TextBuffer;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;

/** Entities of release 12: type and layer, no more. All of one type on one layer begin with the same words. */
final class Release12 implements Entities {

    private final TagWriter tags;
    private final Map<String, TextBuffer> beginnings = new TreeMap<>();
    private Layer layer = Layer.ZERO;

    Release12(TagWriter tags) {
        this.tags = tags;
    }

    @Override
    public TagWriter begin(String type, Layer on, String subclass) throws IOException {
        if (!on.equals(layer)) {
            beginnings.clear();
            layer = on;
        }
        tags.add(beginnings.computeIfAbsent(type, word -> TagWriter.words("0", word, "8", layer.name(), "")));
        return tags;
    }
}
