package dev.calotte.book;

import dev.calotte.assembly.Patch;
import dev.calotte.assembly.PatchKind;
import dev.calotte.assembly.PatchKind.Seam;
import dev.calotte.assembly.Patches;
import dev.calotte.assembly.Patches.Join;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Panels into patches, patches into the whole: sewn where there are seams to sew, else for covers joined on a table. */
final class JoinChapter {

    private final Desk desk;
    private final Patches patches;
    private final boolean sewn;

    JoinChapter(Desk desk) {
        this.desk = desk;
        this.patches = desk.matter.patches();
        this.sewn = desk.matter.needs().covers().stream()
                .anyMatch(cover -> cover.patterns().cover().allowances().wideMm() > 0);
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Text("", words()));
        blocks.addAll(desk.beside(
                "patches", "Patches: strong lines are joined last, numbers are the order inside a patch.", kinds()));
        patches.kinds().stream().filter(kind -> !kind.seams().isEmpty()).forEach(kind -> blocks.add(seams(kind)));
        blocks.add(new Ticks("Patches made", made()));
        blocks.add(new Ticks("Patches joined, from the crown outwards", joined()));
        return new Chapter(
                "Join",
                sewn
                        ? "A machine with room for the last seam, thread, clips, a long table."
                        : "A level floor, and clamps.",
                blocks,
                "All patches are made" + (sewn ? ", and the cover is one piece." : "."));
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(
                switch (patches.way()) {
                    case STARS ->
                        patches.areExactStars()
                                ? "Every panel belongs to the star round one hub. Stars are made first, and joined later."
                                : "Stars round hubs are made first, and what lies between them.";
                    case ROWS -> "Each row of panels is a patch.";
                    case SECTORS -> "The cover is made in equal sectors, as the solid turns on itself.";
                });
        if (sewn) {
            words.add(
                    "Sew from sewn corner to sewn corner, never into the allowance. Leave the seam where a door or zip"
                            + " comes for the last.");
        } else {
            words.add(
                    "Stiff panels are put up one by one with the frame; patches tell which of them to keep together, and"
                            + " to try before you carry them up.");
        }
        if (!patches.joins().isEmpty()) {
            words.add("The last seam is " + desk.length(patches.lastSeamMm()) + " long.");
        }
        return words;
    }

    private Table kinds() {
        List<Row> rows = new ArrayList<>();
        for (PatchKind kind : patches.kinds()) {
            rows.add(Desk.row(
                    "",
                    kind.mark(),
                    Integer.toString(kind.count()),
                    counted(kind.panels()),
                    kind.twin().orElse(""),
                    desk.units.longLength(kind.seamsMm()),
                    desk.units.longLength(kind.seamsMm() * kind.count())));
        }
        return new Table(
                "Kinds of patches",
                List.of(
                        Desk.text("Patch"),
                        Desk.number("Count"),
                        Desk.text("Panels in order"),
                        Desk.text("Mirror image"),
                        Desk.number("Seams in one"),
                        Desk.number("In all")),
                rows);
    }

    private Table seams(PatchKind kind) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < kind.seams().size(); i++) {
            Seam seam = kind.seams().get(i);
            rows.add(Desk.row(
                    "",
                    Integer.toString(i + 1),
                    places(kind, seam.these()),
                    places(kind, seam.to()),
                    desk.length(seam.lengthMm())));
        }
        return new Table(
                "Patch " + kind.mark() + ", in order",
                List.of(Desk.number("Seam"), Desk.text("Join"), Desk.text("to"), Desk.number("Length")),
                rows);
    }

    private static String places(PatchKind kind, List<Integer> places) {
        return places.stream()
                .map(place -> place + " (" + kind.panels().get(place - 1) + ")")
                .collect(Collectors.joining(", "));
    }

    private List<Tick> made() {
        return patches.patches().stream()
                .map(patch -> CutChapter.tick("make-" + id(patch.mark()), patch.mark() + ": " + pieces(patch)))
                .toList();
    }

    private String pieces(Patch patch) {
        return patch.panels().stream().map(desk.marks::of).collect(Collectors.joining(", "));
    }

    /** All seams by which a patch is joined to those that stand are one thing to do. */
    private List<Tick> joined() {
        Map<String, List<Join>> byPatch = new LinkedHashMap<>();
        patches.joins()
                .forEach(join -> byPatch.computeIfAbsent(join.patch(), patch -> new ArrayList<>())
                        .add(join));
        List<Tick> ticks = new ArrayList<>();
        byPatch.forEach((patch, joins) -> {
            String to = joins.stream()
                    .map(join -> join.to() + " (" + desk.length(join.lengthMm()) + ")")
                    .collect(Collectors.joining(", "));
            String last = ticks.size() + 1 == byPatch.size() ? "; this closes the whole" : "";
            ticks.add(CutChapter.tick("join-" + id(patch), patch + " to " + to + last));
        });
        return ticks;
    }

    private static String id(String mark) {
        return mark.toLowerCase(Locale.ROOT);
    }

    /** For example {@code P1, 2 × P2, P1}: marks in order, equal ones that follow each other together. */
    static String counted(List<String> marks) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= marks.size(); i++) {
            if (i == marks.size() || !marks.get(i).equals(marks.get(start))) {
                runs.add(i - start == 1 ? marks.get(start) : (i - start) + " \u00d7 " + marks.get(start));
                start = i;
            }
        }
        return String.join(", ", runs);
    }
}
