package dev.calotte.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;

/** Puts each field of the document, and each element of a list in it, on a line of its own; deeper things stay in line. */
final class LinePerElement extends MinimalPrettyPrinter {

    private static final long serialVersionUID = 1L;

    private static final int DEEPEST_WITH_LINES = 2;

    private int depth;

    LinePerElement() {
        super("\n");
    }

    private void line(JsonGenerator out) throws IOException {
        if (depth <= DEEPEST_WITH_LINES) {
            out.writeRaw('\n');
        }
    }

    @Override
    public void writeStartObject(JsonGenerator out) throws IOException {
        depth++;
        super.writeStartObject(out);
    }

    @Override
    public void beforeObjectEntries(JsonGenerator out) throws IOException {
        line(out);
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator out) throws IOException {
        super.writeObjectEntrySeparator(out);
        line(out);
    }

    @Override
    public void writeEndObject(JsonGenerator out, int entries) throws IOException {
        line(out);
        super.writeEndObject(out, entries);
        depth--;
    }

    @Override
    public void writeStartArray(JsonGenerator out) throws IOException {
        depth++;
        super.writeStartArray(out);
    }

    @Override
    public void beforeArrayValues(JsonGenerator out) throws IOException {
        line(out);
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator out) throws IOException {
        super.writeArrayValueSeparator(out);
        line(out);
    }

    @Override
    public void writeEndArray(JsonGenerator out, int values) throws IOException {
        line(out);
        super.writeEndArray(out, values);
        depth--;
    }
}
