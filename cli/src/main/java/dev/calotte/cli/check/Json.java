package dev.calotte.cli.check;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A place in a JSON text. Texts from anywhere may be read: depth, numbers, strings and the count of values are bounded.
 *
 * @param where the way to it, for messages
 * @param value a map, a list, a text, a number, a truth value, or nothing
 */
record Json(String where, Object value) {

    private static final int DEEPEST = 20;
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_TEXT = 1 << 16;

    /** More than a dome of 200,000 panels with a plan has. */
    private static final int MOST_VALUES = 30_000_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(LONGEST_NUMBER)
                    .maxStringLength(LONGEST_TEXT)
                    .maxNameLength(LONGEST_NUMBER)
                    .build())
            .build();

    /** Reads one object. */
    static Json read(InputStream in) throws IOException {
        try (JsonParser parser = FACTORY.createParser(in)) {
            Reading reading = new Reading(parser);
            parser.nextToken();
            Object root = reading.value();
            if (parser.nextToken() != null) {
                throw new RecordException("something follows after its end");
            }
            return new Json("", root);
        } catch (JsonProcessingException e) {
            String at =
                    e.getLocation() == null ? "" : " in line " + e.getLocation().getLineNr();
            throw new RecordException("it is no JSON text" + at);
        }
    }

    private static final class Reading {

        private final JsonParser parser;
        private int count;

        Reading(JsonParser parser) {
            this.parser = parser;
        }

        Object value() throws IOException {
            count++;
            if (count > MOST_VALUES) {
                throw new RecordException("it has more than " + MOST_VALUES + " values");
            }
            JsonToken token = parser.currentToken();
            if (token == null) {
                throw new RecordException("it ends too early");
            }
            return switch (token) {
                case START_OBJECT -> object();
                case START_ARRAY -> list();
                case VALUE_STRING -> parser.getText();
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Double.valueOf(parser.getText());
                case VALUE_TRUE -> true;
                case VALUE_FALSE -> false;
                default -> "null";
            };
        }

        private Map<String, Object> object() throws IOException {
            Map<String, Object> fields = new TreeMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                if (parser.nextToken() != JsonToken.VALUE_NULL) {
                    fields.put(name, value());
                }
            }
            return fields;
        }

        private List<Object> list() throws IOException {
            List<Object> elements = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                elements.add(value());
            }
            return elements;
        }
    }

    private RecordException no(String what) {
        return new RecordException((where.isEmpty() ? "it" : where) + " is no " + what);
    }

    private Map<?, ?> fields() throws RecordException {
        if (value instanceof Map<?, ?> map) {
            return map;
        }
        throw no("object");
    }

    boolean has(String name) throws RecordException {
        return fields().containsKey(name);
    }

    Json at(String name) throws RecordException {
        String way = where.isEmpty() ? name : where + "." + name;
        Object field = fields().get(name);
        if (field == null) {
            throw new RecordException(way + " is missing");
        }
        return new Json(way, field);
    }

    List<Json> list(String name) throws RecordException {
        return at(name).list();
    }

    List<Json> list() throws RecordException {
        if (!(value instanceof List<?> elements)) {
            throw no("list");
        }
        List<Json> list = new ArrayList<>(elements.size());
        for (int i = 0; i < elements.size(); i++) {
            list.add(new Json(where + "[" + i + "]", elements.get(i)));
        }
        return list;
    }

    /** A list of lists, if there is one; of objects and texts too. */
    List<Json> listIfAny(String name) throws RecordException {
        return has(name) ? list(name) : List.of();
    }

    String text(String name) throws RecordException {
        return at(name).text();
    }

    /** Empty if there is nothing. */
    String textIfAny(String name) throws RecordException {
        return has(name) ? text(name) : "";
    }

    String text() throws RecordException {
        if (value instanceof String text) {
            return text;
        }
        throw no("text");
    }

    List<String> texts(String name) throws RecordException {
        List<String> texts = new ArrayList<>();
        for (Json element : list(name)) {
            texts.add(element.text());
        }
        return texts;
    }

    double number(String name) throws RecordException {
        return at(name).number();
    }

    double number() throws RecordException {
        if (value instanceof Double number && Double.isFinite(number)) {
            return number;
        }
        throw no("number");
    }

    List<Double> numbers(String name) throws RecordException {
        return at(name).numbers();
    }

    List<Double> numbers() throws RecordException {
        List<Double> numbers = new ArrayList<>();
        for (Json element : list()) {
            numbers.add(element.number());
        }
        return numbers;
    }

    /** So many numbers. */
    List<Double> numbers(String name, int count) throws RecordException {
        List<Double> numbers = numbers(name);
        if (numbers.size() != count) {
            throw new RecordException(at(name).where + " has " + numbers.size() + " numbers, not " + count);
        }
        return numbers;
    }

    int whole(String name) throws RecordException {
        return at(name).whole();
    }

    int whole() throws RecordException {
        double number = number();
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw no("whole number");
        }
        return (int) number;
    }

    boolean flag(String name) throws RecordException {
        if (at(name).value instanceof Boolean flag) {
            return flag;
        }
        throw at(name).no("truth value");
    }
}
