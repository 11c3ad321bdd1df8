package dev.calotte.dxf;

import dev.calotte.dxf.TagReader.Tag;
import java.io.IOException;
import java.util.Optional;

/** Goes through the sections of a file. */
final class FileReading {

    private final TagReader tags;
    private final Units units = new Units();
    private final Gatherer gathering;
    private Tag tag;

    FileReading(TagReader tags, Gatherer gathering) {
        this.tags = tags;
        this.gathering = gathering;
    }

    /** Hands each entity on. */
    void read() throws IOException {
        boolean found = false;
        advance();
        while (!tag.begins("EOF")) {
            if (!tag.begins("SECTION")) {
                throw tag.wrong("a section or the end of the file should stand here");
            }
            advance();
            if (tag.code() == 2 && tag.value().equals("HEADER")) {
                header();
            } else if (tag.code() == 2 && tag.value().equals("ENTITIES")) {
                found = true;
                entities();
            } else {
                skip();
            }
            advance();
        }
        if (!found) {
            throw tag.wrong("the file has no section ENTITIES");
        }
    }

    /** How long the unit of the file is. */
    double millimetres() {
        return units.millimetres();
    }

    /** What the file shows; empty if it does not say. */
    Optional<String> title() {
        return tags.firstComment().flatMap(Title::of);
    }

    private void advance() throws IOException {
        tag = tags.next();
    }

    private void skip() throws IOException {
        while (!tag.begins("ENDSEC")) {
            refuseEnd();
            advance();
        }
    }

    private void header() throws IOException {
        String variable = "";
        while (!tag.begins("ENDSEC")) {
            refuseEnd();
            if (tag.code() == 9) {
                variable = tag.value();
            } else if (tag.code() == 70) {
                units.learn(variable, tag);
            }
            advance();
        }
    }

    private void refuseEnd() throws DxfFormatException {
        if (tag.begins("EOF") || tag.begins("SECTION")) {
            throw tag.wrong("the section before has no ENDSEC");
        }
    }

    private void entities() throws IOException {
        advance();
        while (!tag.begins("ENDSEC")) {
            refuseEnd();
            if (tag.code() != 0) {
                throw tag.wrong("an entity should begin here");
            }
            Entity entity = new Entity(tag);
            advance();
            while (tag.code() != 0) {
                entity.add(tag);
                advance();
            }
            gathering.add(entity);
        }
        gathering.end(tag);
    }
}
