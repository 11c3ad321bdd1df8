package dev.calotte.cli.check;

import dev.calotte.check.ExpectedDrawing;
import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.RecordedPlate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The drawings that the record holds, by their names. */
final class ExpectedDrawings {

    /** Six decimals, in x and in y. */
    static final double DXF_MM = 2e-6;

    /** Four decimals, in x and in y. */
    static final double SVG_MM = 2e-4;

    private final Map<String, ExpectedDrawing> drawings = new TreeMap<>();
    private final Map<String, RecordedPlate> plates = new TreeMap<>();
    private final List<String> formats;

    ExpectedDrawings(Json root, RecordedDome dome, List<RecordedCover> covers) throws RecordException {
        Json output = root.at("output");
        this.formats = output.texts("files");
        double kerf = output.number("kerf");
        boolean once = output.text("sharedEdges").equals("once");
        if (covers.isEmpty()) {
            dome.panelKinds()
                    .forEach(kind -> drawings.put(
                            "panels/" + kind.mark(),
                            ExpectedDrawing.of(kind, DXF_MM).withCutter(kerf, false)));
        }
        for (RecordedPlate plate : new DomeRecord(root).plates()) {
            plates.put("hubs/" + plate.kind().mark(), plate.withCutter(kerf));
        }
        for (RecordedCover cover : covers) {
            String name = cover.name() + "-";
            cover.pieces()
                    .forEach(piece -> drawings.put(
                            "panels/" + name + piece.mark(),
                            ExpectedDrawing.of(piece, DXF_MM).withCutter(kerf, false)));
            for (int i = 0; i < cover.sheets().size(); i++) {
                drawings.put(
                        "sheets/" + name + String.format(Locale.ROOT, "%02d", i + 1),
                        ExpectedDrawing.of(cover, cover.sheets().get(i), DXF_MM).withCutter(kerf, once));
            }
        }
    }

    /** The drawing that a file shows: without its format, its dialect, and the kerf in its name. */
    static String drawing(String file) {
        String name = file.substring(file.indexOf('/') + 1, file.lastIndexOf('.'));
        String bare = name.replaceFirst("-kerf[0-9.]+$", "");
        int last = bare.lastIndexOf('/');
        int folder = last < 0 ? -1 : bare.lastIndexOf('/', last - 1);
        return bare.substring(folder + 1);
    }

    Optional<ExpectedDrawing> of(String file) {
        return Optional.ofNullable(drawings.get(drawing(file))).map(drawing -> drawing.within(withinMm(file)));
    }

    /** The plate that a file shows, if it shows one. */
    Optional<RecordedPlate> plate(String file) {
        return Optional.ofNullable(plates.get(drawing(file)));
    }

    /** How far the decimals of a file may put a corner from its place. */
    static double withinMm(String file) {
        return file.endsWith(".svg") ? SVG_MM : DXF_MM;
    }

    /** Drawings that no file shows, though their format was asked for. */
    List<Finding> missing(ResultFiles files) {
        List<Finding> missing = new ArrayList<>();
        for (String format : List.of("dxf", "svg")) {
            List<String> shown = files.names(format + "/", "." + format).stream()
                    .map(ExpectedDrawings::drawing)
                    .toList();
            Stream.concat(drawings.keySet().stream(), plates.keySet().stream())
                    .filter(name -> formats.contains(format) && !shown.contains(name))
                    .forEach(name -> missing.add(new Finding(
                            Fault.MISSING,
                            format + "/" + name + "." + format,
                            "",
                            "no file shows what is cut there.",
                            "Make the result again from its brief.")));
        }
        return missing;
    }
}
