package dev.calotte.stl;

import dev.calotte.export.SolidReader.Body;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a model part holds: a title, and bodies with their numbers. */
final class PlateReading {

    private static final int MOST = 2_000_000;
    private static final int MOST_OBJECTS = 10_000;
    private static final String NOT_TURNED = "1 0 0 0 1 0 0 0 1 ";

    private static final Map<String, Double> UNITS_MM = Map.of(
            "micron", 0.001, "millimeter", 1.0, "centimeter", 10.0, "inch", 25.4, "foot", 304.8, "meter", 1000.0);

    private final PlateXml xml;
    private final List<PlateObject> objects = new ArrayList<>();
    private final Map<Integer, Integer> counts = new TreeMap<>();
    private String title = "";
    private double unitMm = 1;
    private int vertices;
    private int triangles;

    private PlateReading(PlateXml xml) {
        this.xml = xml;
    }

    static PlateReading of(InputStream in) throws IOException {
        PlateReading reading = new PlateReading(new PlateXml(in));
        reading.model();
        return reading;
    }

    String title() {
        return title;
    }

    List<Body> bodies() {
        return objects.stream()
                .map(object -> new Body(object.name(), counts.getOrDefault(object.id(), 0), object.facets()))
                .toList();
    }

    private void model() throws IOException {
        if (!xml.next() || !xml.name().equals("model")) {
            throw xml.wrong("it does not begin with a model");
        }
        String unit = xml.attribute("unit").orElse("millimeter");
        unitMm = Optional.ofNullable(UNITS_MM.get(unit))
                .orElseThrow(() -> xml.wrong("its unit is none that the format knows"));
        while (xml.next()) {
            switch (xml.name()) {
                case "object" -> begin();
                case "vertex" -> vertex();
                case "triangle" -> triangle();
                case "component" -> throw xml.wrong("an object that is put together from others is not followed");
                case "item" -> item();
                case "metadata" -> metadata();
                default -> {}
            }
        }
        if (objects.isEmpty()) {
            throw xml.wrong("it has no objects");
        }
    }

    private void metadata() throws IOException {
        boolean named = xml.attribute("name").orElse("").equals("Title");
        String text = xml.text();
        title = named ? Numbers.printable(text) : title;
    }

    private void begin() throws IOException {
        if (objects.size() >= MOST_OBJECTS) {
            throw xml.wrong("there are more than " + MOST_OBJECTS + " objects");
        }
        String name = Numbers.printable(xml.attribute("name").orElse(""));
        objects.add(new PlateObject(xml.whole("id", Integer.MAX_VALUE), name));
    }

    private void vertex() throws IOException {
        if (++vertices > MOST) {
            throw xml.wrong("there are more than " + MOST + " vertices");
        }
        last().vertex(xml, unitMm);
    }

    private void triangle() throws IOException {
        if (++triangles > MOST) {
            throw xml.wrong("there are more than " + MOST + " triangles");
        }
        last().triangle(xml);
    }

    private PlateObject last() throws IOException {
        if (objects.isEmpty()) {
            throw xml.wrong(xml.name() + " stands outside of an object");
        }
        return objects.get(objects.size() - 1);
    }

    private void item() throws IOException {
        String transform = xml.attribute("transform").orElse(NOT_TURNED).strip() + " ";
        if (!transform.startsWith(NOT_TURNED)) {
            throw xml.wrong("an item that is turned, mirrored or scaled is not followed");
        }
        counts.merge(xml.whole("objectid", Integer.MAX_VALUE), 1, Integer::sum);
    }
}
