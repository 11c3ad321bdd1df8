package dev.calotte.cli.check;

import dev.calotte.check.Table;
import java.util.ArrayList;
import java.util.List;

/** Reads comma-separated values after RFC 4180; the apostrophe that keeps a text a text is taken off. */
final class CsvText {

    private final String text;
    private int at;

    private CsvText(String text) {
        this.text = text;
    }

    static Table table(String text) throws RecordException {
        CsvText csv = new CsvText(text);
        List<List<String>> rows = new ArrayList<>();
        while (csv.at < text.length()) {
            rows.add(csv.row());
        }
        if (rows.isEmpty()) {
            throw new RecordException("it is empty");
        }
        return new Table(rows.get(0), rows.subList(1, rows.size()));
    }

    private List<String> row() throws RecordException {
        List<String> cells = new ArrayList<>();
        boolean more = true;
        while (more) {
            String cell = at < text.length() && text.charAt(at) == '"' ? quoted() : plain();
            cells.add(cell.startsWith("'") ? cell.substring(1) : cell);
            more = at < text.length() && text.charAt(at) == ',';
            at += at < text.length() ? 1 : 0;
        }
        return cells;
    }

    private String plain() {
        int from = at;
        while (at < text.length() && text.charAt(at) != ',' && text.charAt(at) != '\n') {
            at++;
        }
        return text.substring(from, at);
    }

    private String quoted() throws RecordException {
        StringBuilder cell = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            boolean twice = at < text.length() && text.charAt(at) == '"';
            if (c != '"') {
                cell.append(c);
            } else if (twice) {
                cell.append('"');
                at++;
            } else if (at == text.length() || text.charAt(at) == ',' || text.charAt(at) == '\n') {
                return cell.toString();
            } else {
                break;
            }
        }
        throw new RecordException("a quote in it does not end");
    }
}
