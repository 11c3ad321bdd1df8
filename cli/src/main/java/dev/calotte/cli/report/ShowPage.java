package dev.calotte.cli.report;

import dev.calotte.caution.Caution;
import dev.calotte.cli.Design;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Measures;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RailKind;
import dev.calotte.parts.StrutKind;
import dev.calotte.sphere.Spacing;
import dev.calotte.units.Angle;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The dome on one page of a terminal, 80 columns wide. */
public final class ShowPage {

    private static final int MOST_ROWS = 12;
    private static final int WIDTH = 80;

    private final Dome dome;
    private final Parts parts;
    private final Design design;
    private final UnitSystem units;
    private final List<String> lines = new ArrayList<>();

    private ShowPage(Design design) {
        this.design = design;
        this.dome = design.dome();
        this.parts = design.parts();
        this.units = design.project().units();
    }

    /**
     * Writes the page.
     *
     * @param design what to show
     * @return its lines
     */
    public static List<String> of(Design design) {
        ShowPage page = new ShowPage(design);
        page.addDome();
        page.addStruts();
        page.addRails();
        page.addPanels();
        page.addHubs();
        page.lines.addAll(AccuracyLines.of(design.accuracy(), page.units));
        page.lines.addAll(RiserLines.of(design));
        page.lines.addAll(OpeningLines.of(design.parts()));
        page.lines.addAll(PlanLines.ofBars(design));
        page.lines.addAll(CoverLines.of(design));
        page.addNotes();
        page.addCautions();
        return List.copyOf(page.lines);
    }

    private void addDome() {
        DomeSpec spec = dome.spec();
        Measures m = dome.measures();
        lines.add(design.project().title());
        lines.add("  " + word(spec.solid()) + " " + spec.breakdown() + ", spacing " + spacing(spec) + ", "
                + word(spec.up()) + " up, keep " + keep(spec.keep())
                + (dome.leveling().isPresent() ? ", base level" : ""));
        lines.add("  radius " + units.length(m.radiusMm()) + ", height " + units.length(m.heightMm()) + floor(m));
        lines.add("  skin " + units.area(m.surfaceAreaMm2()) + ", inside " + units.volume(m.volumeMm3()) + base(m));
    }

    private static String spacing(DomeSpec spec) {
        String word = word(spec.spacing());
        return spec.spacing() == Spacing.FITTED
                ? word + ", strut ratio " + NumberText.trimmed(spec.fitting().strutRatio(), 4)
                : word;
    }

    private String floor(Measures m) {
        return dome.baseRing().isEmpty()
                ? ""
                : ", floor " + units.length(m.floorDiameterMm()) + " across, " + units.area(m.floorAreaMm2());
    }

    private String base(Measures m) {
        if (dome.baseRing().isEmpty()) {
            return "";
        }
        String spread = m.baseSpreadMm() <= 1e-9 * m.radiusMm()
                ? "all at one height"
                : "up to " + units.length(m.baseSpreadMm()) + " apart in height";
        return ", " + dome.baseRing().size() + " base hubs " + spread;
    }

    private String keep(Keep keep) {
        return keep instanceof Keep.AboveHeight above ? "above " + units.length(above.heightMm()) : keep.toString();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private void addStruts() {
        List<StrutKind> kinds = parts.strutKinds();
        double total =
                kinds.stream().mapToDouble(k -> k.cutLengthMm() * k.count()).sum();
        head(dome.struts().size() + " struts, " + kinds(kinds.size()) + ", " + units.longLength(total) + " in all");
        TextTable table = new TextTable(1, "mark", "count", "node to node", "cut length", "axial angle", "dihedrals");
        kinds.stream()
                .limit(MOST_ROWS)
                .forEach(kind -> table.row(
                        kind.mark(),
                        Integer.toString(kind.count()),
                        units.length(kind.lengthMm(), 1),
                        units.length(kind.cutLengthMm(), 1),
                        Angle.text(kind.axialAngleRad(), 2),
                        dihedrals(kind)));
        add(table, kinds.size(), "struts");
    }

    private static String dihedrals(StrutKind kind) {
        String listed = kind.dihedrals().stream()
                .limit(2)
                .map(d -> Angle.text(d.angleRad(), 2))
                .collect(Collectors.joining(" "));
        int more = kind.dihedrals().size() - 2;
        return more > 0 ? listed + " +" + more : listed;
    }

    private void addRails() {
        List<RailKind> kinds = parts.railKinds();
        if (!kinds.isEmpty()) {
            int count = kinds.stream().mapToInt(RailKind::count).sum();
            head(count + " rails, " + kinds(kinds.size()) + ", blade and gauge at the start and at the end");
            add(new RailTable(parts, units).page(MOST_ROWS), kinds.size(), "rails");
        }
    }

    private void addPanels() {
        List<PanelKind> kinds = parts.panelKinds();
        head(dome.panels().size() + " panels, " + kinds(kinds.size()));
        TextTable table = new TextTable(1, "mark", "count", "short", "middle", "long", "narrowest width", "mirror");
        for (PanelKind kind : kinds.subList(0, Math.min(kinds.size(), MOST_ROWS))) {
            Triangle t = kind.triangle();
            table.row(
                    kind.mark(),
                    Integer.toString(kind.count()),
                    units.length(t.a(), 1),
                    units.length(t.b(), 1),
                    units.length(t.c(), 1),
                    units.length(t.narrowestWidth(), 1),
                    kind.twin().orElse(""));
        }
        add(table, kinds.size(), "panels");
    }

    private void addHubs() {
        List<HubKind> kinds = parts.hubKinds();
        head(dome.hubs().size() + " hubs, " + kinds(kinds.size()) + ", struts counter-clockwise from outside");
        TextTable table = new TextTable(2, "mark", "count", "struts", "");
        kinds.stream()
                .limit(MOST_ROWS)
                .forEach(kind -> table.row(
                        kind.mark(),
                        Integer.toString(kind.count()),
                        String.join(" ", kind.strutMarks()),
                        kind.open() ? "base" : ""));
        add(table, kinds.size(), "hubs");
    }

    private static String kinds(int count) {
        return count == 1 ? "1 kind" : count + " kinds";
    }

    private void head(String text) {
        lines.add("");
        lines.add(text);
    }

    private void add(TextTable table, int kinds, String file) {
        lines.addAll(table.lines());
        if (kinds > MOST_ROWS) {
            lines.add("  and " + (kinds - MOST_ROWS) + " more: tables/" + file + ".csv of `make`");
        }
    }

    private void addNotes() {
        List<String> notes = design.notes();
        if (!notes.isEmpty()) {
            head("Notes");
            notes.forEach(note -> lines.addAll(wrapped(2, note)));
        }
    }

    private void addCautions() {
        head("Take care (in full, and whom to ask: dome.json of `make`, README)");
        for (Caution caution : design.cautions()) {
            lines.add("  " + caution.line());
        }
    }

    /** Breaks a sentence at spaces so that no line is wider than the page. */
    static List<String> wrapped(int indent, String text) {
        List<String> wrapped = new ArrayList<>();
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        for (String word : text.split(" ", -1)) {
            if (line.length() + word.length() > WIDTH) {
                wrapped.add(line.toString().stripTrailing());
                line = new StringBuilder(" ".repeat(indent + 2));
            }
            line.append(word).append(' ');
        }
        wrapped.add(line.toString().stripTrailing());
        return wrapped;
    }
}
