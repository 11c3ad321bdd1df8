package dev.calotte.svg.book;

import dev.calotte.document.Book.View;
import java.io.IOException;
import java.util.List;
import org.jsoup.nodes.Element;

/**
 * The place where the scene turns. The picture instead of it is what stands there until the script has made it, and on
 * paper. There is one place for a scene; others show their picture.
 */
final class ViewPart {

    private static final String HELP =
            "Drag to turn. Arrow keys turn, + and − come nearer and go away; so does the wheel"
                    + " once the view was touched, and a pinch. Touch a piece, or press Enter for the nearest one: Tab then goes from"
                    + " piece to piece, Escape lets go.";

    private final boolean scene;
    private final Pictures pictures;
    private int views;

    ViewPart(boolean scene, Pictures pictures) {
        this.scene = scene;
        this.pictures = pictures;
    }

    Element element(View view) throws IOException {
        views++;
        Element figure = Html.styled("figure", "view");
        if (views == 1) {
            figure.attr("id", "view").attr("tabindex", "-1");
            if (scene) {
                Html.line(figure, live(view));
            }
        }
        Html.line(figure, pictures.sheet(view.instead(), "").addClass("instead"));
        figure.appendChild(Html.of("figcaption", view.caption()));
        return figure;
    }

    private static Element live(View view) {
        Element live = Html.styled("div", "live").attr("hidden", "");
        Html.line(live, canvas(view));
        Html.line(live, controls());
        Html.line(live, Html.styled("p", "said").attr("role", "status").attr("aria-live", "polite"));
        Html.line(live, Html.styled("div", "piece").attr("hidden", ""));
        Html.line(live, layers());
        live.appendChild(Html.styled("p", "help", HELP).attr("id", "view-help"));
        return live;
    }

    private static Element canvas(View view) {
        return Html.of("canvas")
                .attr("tabindex", "0")
                .attr("role", "application")
                .attr("aria-roledescription", "model that turns")
                .attr("aria-label", Html.clean(view.caption()))
                .attr("aria-describedby", "view-help");
    }

    private static Element controls() {
        Element bar = Html.styled("div", "controls").attr("role", "group").attr("aria-label", "Turn the view");
        control(bar, "left", "←", "Turn left");
        control(bar, "right", "→", "Turn right");
        control(bar, "up", "↑", "See it more from above");
        control(bar, "down", "↓", "See it more from the side");
        control(bar, "nearer", "+", "Nearer");
        control(bar, "away", "−", "Further away");
        control(bar, "reset", "Reset", "As it was in the beginning");
        return bar;
    }

    private static void control(Element bar, String move, String sign, String label) {
        bar.appendChild(Html.button("control", sign).attr("data-move", move).attr("aria-label", label));
    }

    private static Element layers() {
        Element bar = Html.styled("form", "layers");
        for (String layer : List.of("Panels", "Struts", "Hubs")) {
            Element label = Html.of("label");
            label.appendChild(Html.of("input")
                    .attr("type", "checkbox")
                    .attr("checked", "")
                    .attr("data-layer", layer));
            bar.appendChild(label.appendChild(Html.of("span", layer)));
        }
        Element find = Html.styled("span", "find");
        find.appendChild(Html.of("label", "Find a mark").attr("for", "find"));
        find.appendChild(Html.of("input")
                .attr("type", "text")
                .attr("id", "find")
                .attr("autocomplete", "off")
                .attr("autocapitalize", "characters")
                .attr("spellcheck", "false"));
        find.appendChild(Html.of("button", "Find").attr("type", "submit"));
        return bar.appendChild(find);
    }
}
