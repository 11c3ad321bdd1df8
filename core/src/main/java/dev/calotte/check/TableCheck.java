package dev.calotte.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/** Compares a table with what the record says that it holds, row by row: missing, doubled and foreign rows, changed cells. */
public final class TableCheck {

    private final Table expected;
    private final int keys;
    private final BiPredicate<String, String> same;
    private final Findings findings;

    private TableCheck(Table expected, int keys, BiPredicate<String, String> same, Findings findings) {
        this.expected = expected;
        this.keys = keys;
        this.same = same;
        this.findings = findings;
    }

    /**
     * Compares two tables.
     *
     * @param expected what should stand there
     * @param seen what stands there
     * @param keys by how many of its first cells a row is called
     * @param same whether a cell that is seen says what is expected; the expected one comes first
     * @param findings takes what is wrong
     */
    public static void of(Table expected, Table seen, int keys, BiPredicate<String, String> same, Findings findings) {
        new TableCheck(expected, keys, same, findings).check(seen);
    }

    private void check(Table seen) {
        if (!seen.header().equals(expected.header())) {
            findings.add(Fault.DIFFERENT, "the first row", "its columns are not those of this table.");
            return;
        }
        Map<List<String>, List<List<String>>> left = new LinkedHashMap<>();
        seen.rows()
                .forEach(row ->
                        left.computeIfAbsent(key(row), key -> new ArrayList<>()).add(row));
        for (List<String> row : expected.rows()) {
            List<List<String>> candidates = left.getOrDefault(key(row), List.of());
            if (candidates.isEmpty()) {
                findings.add(Fault.MISSING, name(row), "its row is missing.");
            } else {
                List<String> best = candidates.stream()
                        .filter(candidate -> differences(row, candidate) == 0)
                        .findFirst()
                        .orElse(candidates.get(0));
                candidates.remove(best);
                compare(row, best);
            }
        }
        left.values().forEach(rows -> rows.forEach(this::tooMuch));
    }

    private List<String> key(List<String> row) {
        return row.subList(0, Math.min(keys, row.size()));
    }

    private String name(List<String> row) {
        return String.join(" ", key(row)).strip();
    }

    private void tooMuch(List<String> row) {
        boolean known = expected.rows().stream().anyMatch(other -> key(other).equals(key(row)));
        findings.add(
                known ? Fault.DOUBLED : Fault.FOREIGN,
                name(row),
                known ? "its row stands there once too often." : "this row belongs to nothing in the record.");
    }

    private int differences(List<String> row, List<String> seen) {
        int count = Math.abs(row.size() - seen.size());
        for (int i = 0; i < Math.min(row.size(), seen.size()); i++) {
            count += same.test(row.get(i), seen.get(i)) ? 0 : 1;
        }
        return count;
    }

    private void compare(List<String> row, List<String> seen) {
        if (seen.size() != row.size()) {
            findings.add(Fault.DIFFERENT, name(row), "its row has " + seen.size() + " cells, not " + row.size() + ".");
            return;
        }
        for (int i = 0; i < row.size(); i++) {
            if (!same.test(row.get(i), seen.get(i))) {
                findings.add(
                        Fault.DIFFERENT,
                        name(row),
                        expected.header().get(i) + " is \"" + seen.get(i) + "\", the record has \"" + row.get(i)
                                + "\".");
            }
        }
    }
}
