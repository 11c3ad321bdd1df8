package dev.calotte.cli.report;

import java.util.List;

/**
 * Rows of comma-separated values after RFC 4180, but with a bare line feed at the end of a line. A text that a
 * spreadsheet would take for a formula is kept a text by a leading apostrophe.
 */
final class Csv {

    private final StringBuilder text = new StringBuilder();

    Csv row(List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            text.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
        }
        text.append('\n');
        return this;
    }

    Csv row(String... cells) {
        return row(List.of(cells));
    }

    private static String cell(String value) {
        boolean formula = !value.isEmpty() && "=+-@\t".indexOf(value.charAt(0)) >= 0 && !isNumber(value);
        String safe = formula ? "'" + value : value;
        boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    private static boolean isNumber(String value) {
        return value.matches("-?[0-9]+(\\.[0-9]+)?");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
