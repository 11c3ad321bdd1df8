package dev.calotte.export;

import dev.calotte.contour.Contours;
import dev.calotte.document.Operation;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How files are finished for the machines at hand. Each exporter reads what concerns its format and passes over the
 * rest.
 *
 * @param strokes the colour in which each operation is drawn, where a format has colours for that; all of them
 * @param lineMm how wide lines for machines are drawn, where a format has widths; empty for what can just be seen
 * @param contours how tools follow the lines of drawings
 * @param page the paper of templates
 * @param dialects for formats that have several, which of them are written, by format; a format that is missing here is
 *     written in its usual one
 */
public record Finish(
        Map<Operation, Colour> strokes,
        OptionalDouble lineMm,
        Contours contours,
        PageSize page,
        Map<String, List<String>> dialects) {

    /** The usual colours and widths, A4, usual dialects. */
    public static final Finish PLAIN =
            new Finish(usual(), OptionalDouble.empty(), Contours.PLAIN, PageSize.A4, Map.of());

    /**
     * Copies the maps.
     *
     * @param strokes the colour in which each operation is drawn
     * @param lineMm how wide lines for machines are drawn
     * @param contours how tools follow lines
     * @param page the paper of templates
     * @param dialects which dialects are written
     * @throws IllegalArgumentException if an operation has no colour, lines have no width, or a format is named without
     *     a dialect
     */
    public Finish {
        if (strokes.size() != Operation.values().length) {
            throw new IllegalArgumentException("there are operations without a colour");
        }
        if (lineMm.isPresent() && !(lineMm.getAsDouble() > 0)) {
            throw new IllegalArgumentException("a line " + lineMm.getAsDouble() + " mm wide is not drawn at all");
        }
        if (dialects.values().stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a format is named without a dialect");
        }
        strokes = Collections.unmodifiableMap(new EnumMap<>(strokes));
        Map<String, List<String>> copy = new TreeMap<>();
        dialects.forEach((format, names) -> copy.put(format, List.copyOf(names)));
        dialects = Collections.unmodifiableMap(copy);
    }

    private static Map<Operation, Colour> usual() {
        Map<Operation, Colour> strokes = new EnumMap<>(Operation.class);
        strokes.put(Operation.ENGRAVE, new Colour(0, 0, 0));
        strokes.put(Operation.SCORE, new Colour(0, 0, 255));
        strokes.put(Operation.DRILL, new Colour(255, 0, 255));
        strokes.put(Operation.CUT_INNER, new Colour(255, 0, 0));
        strokes.put(Operation.CUT_OUTER, new Colour(255, 0, 0));
        strokes.put(Operation.REF, new Colour(0, 255, 0));
        strokes.put(Operation.SHEET, new Colour(0, 255, 255));
        return strokes;
    }

    /**
     * The colour of an operation.
     *
     * @param operation an operation
     * @return its colour
     */
    public Colour stroke(Operation operation) {
        return strokes.get(operation);
    }

    /**
     * The dialects of a format to write.
     *
     * @param exporter writes the format
     * @return its usual one unless others are asked for; none if it has none
     */
    public List<String> dialects(Exporter exporter) {
        List<String> known = exporter.dialects();
        return dialects.getOrDefault(exporter.format(), known.subList(0, Math.min(1, known.size())));
    }

    /**
     * The same with another colour of an operation.
     *
     * @param operation an operation
     * @param colour its colour
     * @return a copy
     */
    public Finish withStroke(Operation operation, Colour colour) {
        Map<Operation, Colour> changed = new EnumMap<>(strokes);
        changed.put(operation, colour);
        return new Finish(changed, lineMm, contours, page, dialects);
    }

    /**
     * The same with lines for machines of another width.
     *
     * @param widthMm how wide, above 0; some services cut only hairlines of 0.01 mm
     * @return a copy
     */
    public Finish withLine(double widthMm) {
        return new Finish(strokes, OptionalDouble.of(widthMm), contours, page, dialects);
    }

    /**
     * The same with other contours.
     *
     * @param manner how tools follow the lines of drawings
     * @return a copy
     */
    public Finish withContours(Contours manner) {
        return new Finish(strokes, lineMm, manner, page, dialects);
    }

    /**
     * The same with other paper.
     *
     * @param paper the paper of templates
     * @return a copy
     */
    public Finish withPage(PageSize paper) {
        return new Finish(strokes, lineMm, contours, paper, dialects);
    }

    /**
     * The same with other dialects of a format.
     *
     * @param format a format
     * @param names its dialects to write, at least one
     * @return a copy
     */
    public Finish withDialects(String format, List<String> names) {
        Map<String, List<String>> changed = new TreeMap<>(dialects);
        changed.put(format, names);
        return new Finish(strokes, lineMm, contours, page, changed);
    }
}
