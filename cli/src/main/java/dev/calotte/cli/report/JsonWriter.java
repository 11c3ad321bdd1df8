package dev.calotte.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.calotte.units.NumberText;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The few shapes that {@code dome.json} is made of; numbers are written by {@link NumberText}. */
final class JsonWriter {

    /** For millimetres and degrees: a length of any dome is given to 1e-9 of its radius. */
    private static final int DECIMALS = 9;

    /** For square and cubic metres and factors of the radius. */
    private static final int FINE_DECIMALS = 12;

    private final JsonGenerator out;

    JsonWriter(JsonGenerator out) {
        this.out = out;
    }

    /** Writes the fields of an object. */
    interface Fields {
        void write() throws IOException;
    }

    /** Writes an element of a list. */
    interface Element<T> {
        void write(T element) throws IOException;
    }

    /** An object as a value. */
    void object(Fields fields) throws IOException {
        out.writeStartObject();
        fields.write();
        out.writeEndObject();
    }

    void object(String name, Fields fields) throws IOException {
        out.writeFieldName(name);
        object(fields);
    }

    <T> void list(String name, List<T> elements, Element<T> element) throws IOException {
        out.writeArrayFieldStart(name);
        for (T each : elements) {
            element.write(each);
        }
        out.writeEndArray();
    }

    /** A list of objects. */
    <T> void objects(String name, List<T> elements, Element<T> fields) throws IOException {
        list(name, elements, each -> object(() -> fields.write(each)));
    }

    void texts(String name, List<String> values) throws IOException {
        list(name, values, out::writeString);
    }

    void integers(String name, List<Integer> values) throws IOException {
        list(name, values, out::writeNumber);
    }

    void numbers(String name, double... values) throws IOException {
        out.writeFieldName(name);
        numbers(values);
    }

    /** A list of numbers as a value. */
    void numbers(double... values) throws IOException {
        out.writeStartArray();
        for (double value : values) {
            out.writeNumber(NumberText.trimmed(value, DECIMALS));
        }
        out.writeEndArray();
    }

    void text(String name, String value) throws IOException {
        out.writeStringField(name, value);
    }

    void text(String name, Optional<String> value) throws IOException {
        out.writeFieldName(name);
        out.writeString(value.orElse(null));
    }

    void integer(String name, long value) throws IOException {
        out.writeNumberField(name, value);
    }

    void number(String name, double value) throws IOException {
        out.writeFieldName(name);
        out.writeNumber(NumberText.trimmed(value, DECIMALS));
    }

    /** A number of few whole digits. */
    void fineNumber(String name, double value) throws IOException {
        out.writeFieldName(name);
        out.writeNumber(NumberText.trimmed(value, FINE_DECIMALS));
    }

    void nothing(String name) throws IOException {
        out.writeNullField(name);
    }

    void flag(String name, boolean value) throws IOException {
        out.writeBooleanField(name, value);
    }
}
