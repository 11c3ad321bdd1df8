package dev.calotte.cli.check;

import dev.calotte.check.Table;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;

/** The columns of a table, each with what the record says of a row. */
final class Columns {

    /** Stands for a cell of which the record says nothing. */
    static final String ANY = "*";

    /** Lengths of the record have nine decimals. */
    private static final double RECORD_MM = 1e-9;

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private final Map<String, Cell> cells = new LinkedHashMap<>();

    /** What stands in a cell. */
    interface Cell {
        String of(Json row) throws RecordException;
    }

    Columns with(String name, Cell cell) {
        cells.put(name, cell);
        return this;
    }

    Columns text(String name, String key) {
        return with(name, row -> row.textIfAny(key));
    }

    Columns whole(String name, String key) {
        return with(name, row -> Integer.toString(row.whole(key)));
    }

    /** A length or an angle, left empty where the record has none. */
    Columns fixed(String name, String key, int decimals) {
        return with(name, row -> row.has(key) ? NumberText.fixed(row.number(key), decimals) : "");
    }

    /** Numbers one after another. */
    Columns each(String name, String key, int decimals) {
        return with(name, row -> joined(row.numbers(key), decimals));
    }

    Columns texts(String name, String key) {
        return with(name, row -> String.join(" ", row.texts(key)));
    }

    Columns any(String name) {
        return with(name, row -> ANY);
    }

    /** A length as the brief's units write it; where what the record lost decides how it is rounded, both ways are right. */
    static Cell length(UnitSystem units, String key) {
        return row -> row.has(key) ? length(units, row.number(key)) : "";
    }

    static String length(UnitSystem units, double mm) {
        String shorter = units.length(mm - RECORD_MM);
        return shorter.equals(units.length(mm + RECORD_MM)) ? shorter : ANY;
    }

    static String joined(List<Double> numbers, int decimals) {
        return String.join(
                " ",
                numbers.stream()
                        .map(number -> NumberText.fixed(number, decimals))
                        .toList());
    }

    Table table(List<Json> rows) throws RecordException {
        List<List<String>> texts = new ArrayList<>();
        for (Json row : rows) {
            texts.add(row(row));
        }
        return new Table(List.copyOf(cells.keySet()), texts);
    }

    List<String> row(Json row) throws RecordException {
        List<String> texts = new ArrayList<>();
        for (Cell cell : cells.values()) {
            texts.add(cell.of(row));
        }
        return texts;
    }

    /**
     * Whether a cell says what the record says: the same text, but numbers that were rounded once from the exact value and
     * once more from the record may differ in their last digit.
     */
    static BiPredicate<String, String> same() {
        return (expected, seen) -> expected.equals(ANY) || expected.equals(seen) || nearly(expected, seen);
    }

    private static boolean nearly(String expected, String seen) {
        String[] one = expected.split(" ", -1);
        String[] other = seen.split(" ", -1);
        boolean same = one.length == other.length && expected.length() < 10_000;
        for (int i = 0; same && i < one.length; i++) {
            same = one[i].equals(other[i]) || (isFraction(one[i]) && isFraction(other[i]) && near(one[i], other[i]));
        }
        return same;
    }

    private static boolean isFraction(String text) {
        return text.length() < 20
                && text.indexOf('.') > 0
                && NUMBER.matcher(text).matches();
    }

    private static boolean near(String one, String other) {
        int decimals = one.length() - one.indexOf('.') - 1;
        boolean same = decimals == other.length() - other.indexOf('.') - 1;
        double unit = StrictMath.pow(10, -decimals);
        return same && Math.abs(Double.parseDouble(one) - Double.parseDouble(other)) < 1.5 * unit;
    }
}
