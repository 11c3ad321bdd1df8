package dev.calotte.svg.book;

import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import java.io.IOException;
import org.jsoup.nodes.Element;

/** Lists of things to do, each with a box. */
final class TickLists {

    private final Pictures pictures;
    private int lists;

    TickLists(Pictures pictures) {
        this.pictures = pictures;
    }

    Element element(Ticks list) throws IOException {
        lists++;
        String heading = "ticks-" + lists;
        Element part = Html.styled("section", "ticks").attr("aria-labelledby", heading);
        String title = list.heading().isEmpty() ? "To do" : list.heading();
        Html.line(part, Html.of("h3", title).attr("id", heading));
        Element bar = Html.styled("div", "tally");
        bar.appendChild(
                Html.styled("p", "count", list.ticks().size() + " to do").attr("aria-live", "polite"));
        bar.appendChild(Html.button("clear", "Clear these ticks").attr("hidden", ""));
        Html.line(part, bar);
        Element items = Html.of("ol");
        if (list.ticks().stream().anyMatch(tick -> tick.picture().isPresent())) {
            items.addClass("pictured");
        }
        for (Tick tick : list.ticks()) {
            Html.line(items, item(tick));
        }
        part.appendChild(items);
        return part;
    }

    private Element item(Tick tick) throws IOException {
        String id = "tick-" + tick.id();
        Element item = Html.of("li");
        Element label = Html.of("label").attr("for", id);
        label.appendChild(
                Html.of("input").attr("type", "checkbox").attr("id", id).attr("data-tick", tick.id()));
        label.appendChild(Html.of("span", tick.text()));
        item.appendChild(label);
        if (tick.picture().isPresent()) {
            item.appendChild(pictures.sheet(tick.picture().get(), ""));
        }
        return item;
    }
}
