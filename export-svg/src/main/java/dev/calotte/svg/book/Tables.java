package dev.calotte.svg.book;

import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Element;

/** Tables that fold into cards: each cell repeats the heading of its column in an attribute. */
final class Tables {

    /** So many rows stay on one page of paper, with their heading. */
    private static final int TOGETHER = 16;

    private final Set<String> shown;
    private int rows;

    /** Rows about one of these marks get a link to the view. */
    Tables(Set<String> shown) {
        this.shown = shown;
    }

    Element element(Table table) {
        Element listed = Html.styled("div", "listed");
        if (table.rows().size() <= TOGETHER) {
            listed.addClass("short");
        }
        Element element = Html.of("table");
        if (table.columns().size() == 2 && table.rows().stream().noneMatch(this::isShown)) {
            element.addClass("pair");
        }
        if (!table.heading().isEmpty()) {
            Html.line(element, Html.of("caption", table.heading()));
        }
        boolean linked = table.rows().stream().anyMatch(this::isShown);
        Html.line(element, head(table.columns(), linked));
        Element body = Html.of("tbody");
        table.rows().forEach(row -> Html.line(body, row(table.columns(), row, linked)));
        element.appendChild(body);
        listed.appendChild(element);
        return listed;
    }

    private static Element head(List<Column> columns, boolean linked) {
        Element row = Html.of("tr");
        columns.forEach(column ->
                row.appendChild(aligned(Html.of("th", column.heading()), column).attr("scope", "col")));
        if (linked) {
            row.appendChild(Html.styled("th", "where", "View").attr("scope", "col"));
        }
        return Html.of("thead").appendChild(row);
    }

    private Element row(List<Column> columns, Row row, boolean linked) {
        Element element = Html.of("tr");
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            Element cell = Html.of(i == 0 ? "th" : "td", row.cells().get(i));
            if (i == 0) {
                cell.attr("scope", "row");
            }
            element.appendChild(aligned(cell, column).attr("data-label", Html.clean(column.heading())));
        }
        if (linked) {
            element.appendChild(where(element, row));
        }
        return element;
    }

    private Element where(Element element, Row row) {
        Element cell = Html.styled("td", "where");
        if (isShown(row)) {
            rows++;
            String about = Html.clean(row.about());
            element.attr("id", "row-" + rows).attr("data-about", about);
            cell.appendChild(
                    Html.styled("a", "show", "Show").attr("href", "#view").attr("aria-label", "Show " + about));
        }
        return cell;
    }

    private boolean isShown(Row row) {
        return shown.contains(row.about());
    }

    private static Element aligned(Element cell, Column column) {
        return column.number() ? cell.addClass("number") : cell;
    }
}
