package dev.calotte.dxf;

import dev.calotte.dxf.DxfOutlines.Outline;
import dev.calotte.dxf.TagReader.Tag;
import java.io.IOException;
import java.util.List;

/** Goes through the sections of a file. */
final class FileReading {

    private final TagReader tags;
    private final Units units = new Units();
    private final Gathering gathering = new Gathering();
    private Tag tag;

    FileReading(TagReader tags) {
        this.tags = tags;
    }

    List<Outline> outlines() throws IOException {
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
        return gathering.outlines(units.millimetres());
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
