package dev.calotte.cli.check;

import dev.calotte.check.DrawingCheck;
import dev.calotte.check.ExpectedDrawing;
import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.check.Findings;
import dev.calotte.check.PlateCheck;
import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.RecordedPlate;
import dev.calotte.check.SolidCheck;
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

    private static final String AGAIN = "Do not cut or print from it; make the result again.";
    private static final long MOST_BYTES = 32L << 20;

    private final ResultFiles files;
    private final ExpectedDrawings drawings;
    private final RecordedDome dome;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> notRead = new TreeSet<>();
    private final Map<String, Reading> unrecorded = new TreeMap<>();

    FilesCheck(ResultFiles files, Json root, RecordedDome dome, List<RecordedCover> covers) throws RecordException {
        this.files = files;
        this.dome = dome;
        this.drawings = new ExpectedDrawings(root, dome, covers);
    }

    Set<String> notRead() {
        return notRead;
    }

    List<Finding> check() {
        for (String name : files.names()) {
            Findings list = new Findings(name, AGAIN);
            try {
                if (files.size(name) > MOST_BYTES && isRead(name)) {
                    notRead.add(name + ": it is larger than " + (MOST_BYTES >> 20) + " MiB");
                } else {
                    file(name, list);
                }
            } catch (IOException e) {
                list.add(Fault.UNREADABLE, "", e.getMessage() + ".");
            }
            findings.addAll(list.list());
        }
        findings.addAll(drawings.missing(files));
        return findings;
    }

    private static boolean isRead(String name) {
        return name.matches("(dxf|svg|stl)/.*\\.(dxf|svg|stl)");
    }

    private void file(String name, Findings list) throws IOException {
        if (name.matches("dxf/(.+/)?frame-3d\\.dxf")) {
            wires(name, list);
        } else if (name.matches("(dxf|svg)/(.+/)?(panels|sheets|hubs|model)/[^/]+")
                || name.matches("(dxf|svg)/(.+/)?kerf[^/]*")) {
            shapes(name, list);
        } else if (name.endsWith(".svg")) {
            try (InputStream in = files.open(name)) {
                WellFormed.check(in);
            }
        } else if (name.endsWith(".stl")) {
            solid(name, list);
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
        if (reader.isPresent()) {
            try (InputStream in = files.open(name)) {
                SolidCheck.of(
                        name.substring(0, name.lastIndexOf('.')), reader.get().read(in), list);
            }
        }
    }

    private void shapes(String name, Findings list) throws IOException {
        Optional<ShapeReader> reader = reader(ShapeReader.installed(format(name)), name);
        if (reader.isEmpty()) {
            return;
        }
        Reading reading;
        try (InputStream in = files.open(name)) {
            reading = reader.get().reading(in);
        }
        Optional<ExpectedDrawing> expected = drawings.of(name);
        if (expected.isPresent()) {
            DrawingCheck.of(expected.get(), reading.shapes(), list);
            if (list.list().isEmpty()) {
                WrittenMarks.of(expected.get(), reading, list);
            }
        } else {
            alone(name, reading, list);
        }
        Optional<RecordedPlate> plate = drawings.plate(name);
        if (plate.isPresent() && list.list().isEmpty()) {
            PlateCheck.of(plate.get(), reading.shapes(), ExpectedDrawings.withinMm(name), list);
        }
    }

    /** What the record does not hold is compared with the same drawing in the format that was read first. */
    private void alone(String name, Reading reading, Findings list) {
        DrawingCheck.alone(reading.shapes(), list);
        String drawing = ExpectedDrawings.drawing(name);
        Reading first = unrecorded.putIfAbsent(drawing, reading);
        if (first != null && list.list().isEmpty()) {
            DrawingCheck.of(ExpectedDrawing.like(first.shapes(), ExpectedDrawings.SVG_MM), reading.shapes(), list);
        }
    }
}
