package dev.calotte.book;

import dev.calotte.assembly.OpeningReport;
import dev.calotte.assembly.Raise;
import dev.calotte.assembly.SettingOut;
import dev.calotte.assembly.SettingOut.Stake;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Notice;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Picture;
import dev.calotte.drawing.BuildingSteps;
import dev.calotte.drawing.BuildingSteps.Step;
import dev.calotte.drawing.StepWords;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** From the base on the ground to the last piece. */
final class RaiseChapter {

    private static final Set<String> TOPICS =
            Set.of("Wind and snow", "Base", "Raising", "Lifting", "Heights", "Opening");

    private final Desk desk;

    RaiseChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Notice(
                "Take care",
                desk.matter.cautions().stream()
                        .filter(caution -> TOPICS.contains(caution.topic()))
                        .map(caution -> caution.topic() + ": " + caution.text())
                        .toList()));
        SettingOut out = SettingOut.of(desk.parts);
        if (!out.stakes().isEmpty()) {
            blocks.add(base(out));
            blocks.add(new Ticks("Base", setOut()));
        }
        desk.matter.needs().riser().ifPresent(wall -> blocks.add(new RiserTables(desk, wall).table()));
        blocks.add(new Text("How it goes up", words()));
        blocks.add(steps());
        OpeningReport.of(desk.parts).forEach(report -> blocks.add(opening(report)));
        blocks.add(new Ticks("When the last piece is in", closed()));
        return new Chapter(
                "Raise",
                "Helpers, props, a scaffold or platform, a calm day.",
                blocks,
                "It stands, closed and tightened, and is anchored.");
    }

    private Table base(SettingOut out) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < out.stakes().size(); i++) {
            Stake stake = out.stakes().get(i);
            rows.add(Desk.row(
                    stake.mark(),
                    stake.mark(),
                    desk.length(stake.fromAxisMm()),
                    Angle.text(stake.bearingRad(), 2),
                    desk.length(stake.aboveLowestMm()),
                    out.stakes().get((i + 1) % out.stakes().size()).mark(),
                    desk.length(stake.levelChordMm())));
        }
        return new Table(
                "The base on the ground, from a peg in the middle",
                List.of(
                        Desk.text("Hub"),
                        Desk.number("From the axis"),
                        Desk.number("Bearing"),
                        Desk.number("Above the lowest"),
                        Desk.text("Next"),
                        Desk.number("Level to the next")),
                rows);
    }

    private static List<Tick> setOut() {
        return List.of(
                CutChapter.tick("base-peg", "Drive a peg in the middle, and stretch the start ray from it."),
                CutChapter.tick("base-hubs", "Set out every base hub by its distance and bearing, counter-clockwise."),
                CutChapter.tick(
                        "base-checked", "Check the chords from hub to hub, and the diagonals listed under Check."),
                CutChapter.tick(
                        "base-fixed", "Fix the base ring. Drill the last holes of it only when all has closed."));
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        boolean lifted = desk.matter.subject().assembly().raise() == Raise.CROWN;
        words.add((lifted ? "The crown first, lifted, and each row added below it." : "Row by row from the base up.")
                + " Bolts stay finger-tight until the last piece is in; then tighten all of them, row by row.");
        words.add(
                "A row that is not closed is floppy: prop it at every second hub at least, and brace it against turning,"
                        + " until the row above closes it. Nobody stands under it, and nobody climbs on it.");
        desk.masses
                .frameKg()
                .ifPresent(
                        kg -> words.add("The heaviest lift is named at each step as far as masses are known; hubs and"
                                + " bolts come on top."));
        return words;
    }

    private Ticks steps() {
        List<Step> steps =
                BuildingSteps.of(desk.dome, desk.matter.subject().assembly().raise());
        List<Picture> pictures = desk.drawings("step-");
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Optional<Picture> picture = i < pictures.size() ? Optional.of(pictures.get(i)) : Optional.empty();
            ticks.add(new Tick("step-" + (i + 1), text(steps.get(i), i + 1), picture));
        }
        return new Ticks("Steps", ticks);
    }

    private String text(Step step, int number) {
        StepWords words = new StepWords(desk.parts, step);
        String pieces = Desk.count(step.struts().size(), "strut") + " and "
                + Desk.count(step.panels().size(), "panel") + " in all";
        return "Step " + number + ". "
                + words.lift(desk.units).map(lift -> lift + " ").orElse("") + words.title() + ". " + pieces
                + masses(step) + ".";
    }

    private String masses(Step step) {
        OptionalDouble struts = desk.masses.ofStruts(step.struts());
        OptionalDouble panels = desk.masses.ofPanels(step.panels());
        if (struts.isEmpty() && panels.isEmpty()) {
            return "";
        }
        double heaviest = Math.max(
                step.struts().stream()
                        .map(desk.masses::ofStrut)
                        .mapToDouble(kg -> kg.orElse(0))
                        .max()
                        .orElse(0),
                step.panels().stream()
                        .map(desk.masses::ofPanel)
                        .mapToDouble(kg -> kg.orElse(0))
                        .max()
                        .orElse(0));
        return ", " + desk.units.mass(struts.orElse(0) + panels.orElse(0)) + ", the heaviest piece "
                + desk.units.mass(heaviest);
    }

    private Table opening(OpeningReport report) {
        List<Row> rows = new ArrayList<>();
        report.ends()
                .forEach(end -> rows.add(Desk.row(end.strut(), end.hub(), end.strut(), desk.length(end.lengthMm()))));
        return new Table(
                "Opening " + report.name() + ": "
                        + Desk.count(report.removedPanels().size(), "panel") + " left out, struts that end on its rim. "
                        + report.redundancy(),
                List.of(Desk.text("Hub"), Desk.text("Strut"), Desk.number("Node to node")),
                rows);
    }

    private static List<Tick> closed() {
        return List.of(
                CutChapter.tick("close-tighten", "Tighten every bolt, row by row from the base."),
                CutChapter.tick("close-base", "Drill and fix the last holes of the base."),
                CutChapter.tick("close-anchor", "Anchor it, before anybody goes home."),
                CutChapter.tick("close-props", "Take the props out one by one, from the crown down."));
    }
}
