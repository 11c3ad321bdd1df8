package dev.calotte.svg;

import dev.calotte.units.TextBuffer;
import java.io.IOException;

/** Paths of one part and operation, which differ in their numbers and commands alone. */
final class Leaf {

    private final TextBuffer before = new TextBuffer(64);
    private final TextBuffer behind = new TextBuffer(64);
    private int number;

    /**
     * Begins with number 1.
     *
     * @param id what their names begin with
     * @param pen attributes that all have, with a space in front of each
     */
    Leaf(String id, String pen) {
        before.add("<path id=\"");
        XmlText.add(before, id);
        before.add('.');
        behind.add('"').add(pen).add("/>");
    }

    void put(Xml xml, PathText commands) throws IOException {
        number++;
        xml.child(text -> text.add(before)
                .addWhole(number)
                .add("\" d=\"")
                .add(commands.text())
                .add(behind));
    }
}
