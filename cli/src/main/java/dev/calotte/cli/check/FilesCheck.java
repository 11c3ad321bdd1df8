package dev.calotte.cli.check;

import dev.calotte.check.DrawingCheck;
import dev.calotte.check.ExpectedDrawing;
import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.check.Findings;
import dev.calotte.check.LineMatch;
import dev.calotte.check.PlateCheck;
import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.RecordedPlate;
import dev.calotte.check.WireCheck;
import dev.calotte.check.WrittenMarks;
import dev.calotte.export.Reading;
import dev.calotte.export.ShapeReader;
import dev.calotte.export.SolidReader;
import dev.calotte.export.WireReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Drawings, solids and pages of a result, each as far as a reader of its format is installed. */
final class FilesCheck {

    private static final String AGAIN = SolidFiles.AGAIN;
    private static final long MOST_BYTES = 32L << 20;

    /** Of a file that holds all jigs, which each have a file besides. */
    private static final long MOST_PLATE_BYTES = 64L << 20;

    /** Where drawings of single pieces have their reference of 100 mm. */
    private static final double MARGIN_MM = 10;

    private final ResultFiles files;
    private final ExpectedDrawings drawings;
    private final RecordedDome dome;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> notRead = new TreeSet<>();
    private final Map<String, String> sound = new TreeMap<>();
    private final SolidFiles solids;

    FilesCheck(ResultFiles files, Json root, RecordedDome dome, List<RecordedCover> covers) throws RecordException {
        this.files = files;
        this.dome = dome;
        this.solids = new SolidFiles(files, dome);
        this.drawings = new ExpectedDrawings(root, dome, covers);
    }

    Set<String> notRead() {
        return notRead;
    }

    List<Finding> check() {
        for (String name : files.names()) {
            Findings list = new Findings(name, AGAIN);
            try {
                long most = name.endsWith(".3mf") ? MOST_PLATE_BYTES : MOST_BYTES;
                if (files.size(name) > most && isRead(name)) {
                    notRead.add(name + ": it is larger than " + (most >> 20) + " MiB");
                    solids.passedOver(name);
                } else {
                    file(name, list);
                }
            } catch (IOException e) {
                list.add(Fault.UNREADABLE, "", e.getMessage() + ".");
            }
            findings.addAll(list.list());
        }
        findings.addAll(solids.models());
        findings.addAll(drawings.missing(files));
        return findings;
    }

    private static boolean isRead(String name) {
        return name.matches("(dxf|svg|stl)/.*\\.(dxf|svg|stl|3mf)");
    }

    private void file(String name, Findings list) throws IOException {
        if (name.matches("dxf/(.+/)?frame-3d\\.dxf")) {
            wires(name, list);
        } else if (name.matches("(dxf|svg)/(.+/)?(panels|sheets|hubs|model)/[^/]+")
                || name.matches("(dxf|svg)/(.+/)?kerf[^/]*")) {
            shapes(name, list);
        } else if (name.endsWith(".svg")) {
            page(name, list);
        } else if (name.endsWith(".stl") || name.endsWith(".3mf")) {
            solid(name, list);
        }
    }

    private void page(String name, Findings list) throws IOException {
        try (InputStream in = files.open(name)) {
            WellFormed.check(in);
        }
        if (name.startsWith("svg/templates/")) {
            fullSize(name, list);
        }
    }

    private void fullSize(String name, Findings list) throws IOException {
        try (InputStream in = files.open(name)) {
            PageSize.check(in, list);
        }
    }

    private static String format(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private <T> Optional<T> reader(Optional<T> installed, String name) {
        if (installed.isEmpty()) {
            notRead.add(format(name) + " files: no reader of this format is installed");
        }
        return installed;
    }

    private void wires(String name, Findings list) throws IOException {
        Optional<WireReader> reader = reader(WireReader.installed(format(name)), name);
        if (reader.isPresent()) {
            try (InputStream in = files.open(name)) {
                WireCheck.of(dome, reader.get().read(in), ExpectedDrawings.DXF_MM, list);
            }
        }
    }

    private void solid(String name, Findings list) throws IOException {
        Optional<SolidReader> reader = reader(SolidReader.installed(format(name)), name);
        if (reader.isPresent() && name.endsWith(".3mf")) {
            solids.plate(name, reader.get(), SolidReader.installed("stl"), list);
        } else if (reader.isPresent()) {
            solids.solid(name, reader.get(), list);
        }
    }

    private Optional<Reading> reading(String name) throws IOException {
        Optional<ShapeReader> reader = reader(ShapeReader.installed(format(name)), name);
        if (reader.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = files.open(name)) {
            return Optional.of(reader.get().reading(in));
        }
    }

    private void shapes(String name, Findings list) throws IOException {
        if (name.endsWith(".svg")) {
            fullSize(name, list);
        }
        Optional<Reading> read = reading(name);
        if (read.isEmpty() || !list.list().isEmpty()) {
            return;
        }
        Reading reading = read.get();
        Optional<Reading> first = first(name);
        Optional<ExpectedDrawing> expected = drawings.of(name);
        if (expected.isPresent()) {
            DrawingCheck.of(expected.get(), reading.shapes(), list);
            if (list.list().isEmpty()) {
                WrittenMarks.of(expected.get(), reading, list);
            }
        } else {
            alone(reading, first, list);
        }
        Optional<RecordedPlate> plate = drawings.plate(name);
        if (plate.isPresent() && list.list().isEmpty()) {
            PlateCheck.of(plate.get(), reading.shapes(), ExpectedDrawings.withinMm(name), list);
        }
        alike(name, reading, first, list);
    }

    /** What the record does not hold is compared with the same drawing in the format that was read first. */
    private static void alone(Reading reading, Optional<Reading> first, Findings list) {
        DrawingCheck.alone(reading.shapes(), list);
        if (first.isPresent() && list.list().isEmpty()) {
            DrawingCheck.of(
                    ExpectedDrawing.like(first.get().shapes(), ExpectedDrawings.SVG_MM), reading.shapes(), list);
        }
    }

    /** The same drawing in the format that was read first, if nothing was wrong with that. */
    private Optional<Reading> first(String name) throws IOException {
        String file = sound.get(ExpectedDrawings.drawing(name));
        return file == null ? Optional.empty() : reading(file);
    }

    /** Line by line, and by where all of it lies. */
    private void alike(String name, Reading reading, Optional<Reading> first, Findings list) {
        if (name.matches("(dxf|svg)/(.+/)?((panels|hubs)/[^/]+|kerf[^/]*)")
                && list.list().isEmpty()) {
            DrawingCheck.origin(reading.shapes(), MARGIN_MM, ExpectedDrawings.withinMm(name), list);
        }
        String drawing = ExpectedDrawings.drawing(name);
        if (first.isPresent() && list.list().isEmpty()) {
            String file = sound.get(drawing);
            double within = Math.max(ExpectedDrawings.withinMm(name), ExpectedDrawings.withinMm(file));
            LineMatch.of(reading.shapes(), file, first.get().shapes(), within, list);
        }
        if (list.list().isEmpty()) {
            sound.putIfAbsent(drawing, name);
        }
    }
}
