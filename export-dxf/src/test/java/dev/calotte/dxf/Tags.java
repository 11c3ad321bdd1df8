package dev.calotte.dxf;

import dev.calotte.document.Document;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A file as pairs of group code and value, and its records by the group codes of the AutoCAD Release 12 Customization
 * Manual, chapter 11: 0 begins a record, 2 and 8 name it and its layer, 10 to 13 and the codes ten and twenty above are
 * places, 40 is a radius, 62 a colour, 66 says that vertices follow, 70 holds flags.
 */
record Tags(List<Tag> tags) {

    /** A group code and its value. */
    record Tag(int code, String value) {}

    List<Integer> codes() {
        return tags.stream().map(Tag::code).toList();
    }

    /** Everything from one group code 0 to the next. */
    record Entry(String type, Tags tags) {
        String text(int code) {
            return tags.text(code);
        }

        double number(int code) {
            return Double.parseDouble(text(code));
        }
    }

    static Tags of(Document document) throws IOException {
        return parse(Samples.bytes(document));
    }

    static Tags of(Document document, Dialect dialect) throws IOException {
        return parse(Samples.bytes(document, dialect));
    }

    static Tags parse(byte[] bytes) {
        List<String> lines = List.of(new String(bytes, StandardCharsets.US_ASCII).split("\r\n", -1));
        List<Tag> tags = new ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i += 2) {
            tags.add(new Tag(Integer.parseInt(lines.get(i)), lines.get(i + 1)));
        }
        return new Tags(tags);
    }

    /** The value of the only tag with a code. */
    String text(int code) {
        List<Tag> found = tags.stream().filter(tag -> tag.code() == code).toList();
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " tags have the code " + code + " in " + tags);
        }
        return found.get(0).value();
    }

    /** The variables of the header as text, in order. */
    List<String> variables() {
        return tags.stream().filter(tag -> tag.code() == 9).map(Tag::value).toList();
    }

    /** The tags after a variable. */
    Tags variable(String name) {
        int start = tags.indexOf(new Tag(9, name)) + 1;
        int end = start;
        while (tags.get(end).code() != 9 && tags.get(end).code() != 0) {
            end++;
        }
        return new Tags(tags.subList(start, end));
    }

    List<Entry> entries(String type) {
        return entries().stream().filter(entry -> entry.type().equals(type)).toList();
    }

    /** What the section of entities holds. */
    List<Entry> entities() {
        List<Entry> all = entries();
        int start = 0;
        while (!(all.get(start).type().equals("SECTION")
                && all.get(start).text(2).equals("ENTITIES"))) {
            start++;
        }
        int end = start;
        while (!all.get(end).type().equals("ENDSEC")) {
            end++;
        }
        return all.subList(start + 1, end);
    }

    List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        for (int i = 0; i < tags.size(); i++) {
            if (tags.get(i).code() == 0) {
                int end = i + 1;
                while (end < tags.size() && tags.get(end).code() != 0) {
                    end++;
                }
                all.add(new Entry(tags.get(i).value(), new Tags(tags.subList(i + 1, end))));
            }
        }
        return all;
    }
}
