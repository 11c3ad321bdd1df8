package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book read back with jsoup, held against dome.json of the same run. */
class BookFilesTest {

    @TempDir
    private Path folder;

    private Document book;
    private JsonNode json;

    private void make(String brief) throws IOException {
        Path file = Files.writeString(folder.resolve("b.yaml"), brief);
        Path out = folder.resolve("out");
        Runs.Result made = Runs.run("make", file.toString(), "--out", out.toString());
        assertThat(made.err()).isEmpty();
        book = Jsoup.parse(out.resolve("build-book.html").toFile(), "UTF-8");
        json = new ObjectMapper().readTree(out.resolve("dome.json").toFile());
    }

    @Test
    void strutsPanelsHubsAndBillAreThoseOfTheFile() throws IOException {
        make("""
                dome: { breakdown: 4, keep: 1/2 }
                size: { radius: 3 m }
                frame: { hub-gap: 45 mm, bar: { length: 6 m, price: 18.4, mass-per-metre: 0.69 kg } }
                covers:
                  - { name: cloth, stock: { roll: 1500 mm, price-per-metre: 7.5 }, edge: 10 mm }
                files: [book]
                """);
        List<List<String>> struts = new ArrayList<>();
        json.get("strutKinds")
                .forEach(kind -> struts.add(List.of(
                        kind.get("mark").asText(),
                        kind.get("count").asText(),
                        mm(kind.get("cutLength")),
                        mm(kind.get("length")))));
        assertThat(rows("Struts", 4)).containsExactlyElementsOf(struts);
        List<List<String>> panels = new ArrayList<>();
        json.get("panelKinds")
                .forEach(kind -> panels.add(
                        List.of(kind.get("mark").asText(), kind.get("count").asText())));
        assertThat(rows("Panels, net, between hub centres", 2)).containsExactlyElementsOf(panels);
        List<List<String>> hubs = new ArrayList<>();
        json.get("hubKinds").forEach(kind -> {
            List<String> marks = new ArrayList<>();
            kind.get("struts").forEach(mark -> marks.add(mark.asText()));
            hubs.add(List.of(kind.get("mark").asText(), kind.get("count").asText(), String.join(" ", marks)));
        });
        assertThat(rows("Hubs, struts counter-clockwise from outside", 3)).containsExactlyElementsOf(hubs);
        JsonNode bar = json.get("bill").get(0);
        assertThat(rows("To buy", 5).get(0))
                .containsExactly(
                        "Bar",
                        "6000 mm",
                        bar.get("needed").asText().replace(".0", ""),
                        bar.get("spare").asText().replace(".0", ""),
                        Integer.toString(
                                bar.get("needed").asInt() + bar.get("spare").asInt()));
        assertThat(book.text())
                .contains(String.format(
                        Locale.ROOT,
                        "Radius to the hub centres %.0f mm",
                        json.at("/dome/radius").asDouble()));
    }

    @Test
    void patchesAndCautionsAreThoseOfTheFile() throws IOException {
        make("""
                dome: { breakdown: 3, keep: 5/9 }
                size: { radius: 3 m }
                covers: [{ name: glass, material: glass, thickness: 6 mm }]
                files: [book]
                """);
        List<List<String>> kinds = new ArrayList<>();
        for (JsonNode kind : json.at("/patches/kinds")) {
            String mark = kind.get("mark").asText();
            kinds.add(List.of(mark, kind.get("count").asText()));
            List<String> lengths = new ArrayList<>();
            kind.get("seams")
                    .forEach(seam -> lengths.add(String.format(
                            Locale.ROOT, "%.0f mm", seam.get("length").asDouble())));
            assertThat(rows("Patch " + mark + ", in order", 4).stream().map(row -> row.get(3)))
                    .containsExactlyElementsOf(lengths);
        }
        assertThat(kinds).isNotEmpty();
        assertThat(rows("Kinds of patches", 2)).containsExactlyElementsOf(kinds);
        assertThat(json.at("/patches/patches"))
                .isNotEmpty()
                .allSatisfy(patch ->
                        assertThat(book.text()).contains(patch.get("mark").asText()));
        List<List<String>> cautions = new ArrayList<>();
        json.get("cautions")
                .forEach(caution -> cautions.add(List.of(
                        caution.get("topic").asText(),
                        caution.get("text").asText(),
                        caution.get("deferTo").asText())));
        assertThat(rows("What to mind with this dome", 3)).containsExactlyElementsOf(cautions);
        assertThat(cautions).anyMatch(caution -> caution.get(0).equals("Glass"));
    }

    @Test
    void textsOfTheBriefStayTexts() throws IOException {
        String title = "<script>alert(1)</script> & \"Kuppel\" \u05d0\u05d1 \ud83c\udf33";
        make("title: '" + title + "'\n" + """
                dome: { breakdown: 2, keep: 1/2 }
                size: { radius: 2 m } # </pre><b>bold</b>
                files: [book]
                """);
        assertThat(book.title()).isEqualTo(title);
        assertThat(book.select("h1").text()).isEqualTo(title);
        assertThat(book.select("script").stream().map(Element::data)).noneMatch(data -> data.contains("alert(1)"));
        assertThat(book.select("b")).isEmpty();
        assertThat(book.select("pre").text()).contains("</pre><b>bold</b>");
    }

    @Test
    void aDomeOfManyPanelsHasNoBook() throws IOException {
        Path file = Files.writeString(
                folder.resolve("b.yaml"), "dome: { breakdown: 16 }\nsize: { radius: 9 m }\nfiles: [book]\n");
        Path out = folder.resolve("out");
        assertThat(Runs.run("make", file.toString(), "--out", out.toString()).code())
                .isZero();
        assertThat(Runs.contents(out).keySet()).containsExactly("SHA256SUMS", "dome.json");
    }

    private static String mm(JsonNode length) {
        return String.format(Locale.ROOT, "%.1f mm", length.asDouble());
    }

    /** The first cells of each row of a table. */
    private List<List<String>> rows(String caption, int cells) {
        Element table = book.select("table").stream()
                .filter(each -> each.select("caption").text().equals(caption))
                .findFirst()
                .orElseThrow();
        return table.select("tbody tr").stream()
                .map(row -> row.children().eachText().subList(0, cells))
                .toList();
    }
}
