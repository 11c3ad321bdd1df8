package dev.calotte.cli.brief;

import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.export.Border;
import dev.calotte.export.ShapeReader;
import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.SelfCrossing;
import dev.calotte.parts.PlateBlank;
import dev.calotte.problem.Problem.Code;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Files with outlines that a brief names. Their paths begin at the folder of the brief and may lead out of it, since who
 * writes the brief names them; only regular files are read.
 *
 * @param folder the folder of the brief; none if the brief is no file
 */
record OutlineFiles(Optional<Path> folder) {

    private static final int MOST_BYTES = 32 << 20;
    private static final String ONE = "Give a DXF or SVG file with one closed outline and nothing else that is cut.";

    private static final String PLATE =
            "Give a DXF or SVG file with the closed outline of a plate and its holes, drawn about the origin"
                    + " as seen from outside, and nothing else that is cut.";

    /** An outline and the name of its file. */
    record Found(String name, Polygon border) {}

    static OutlineFiles beside(Path brief) {
        return new OutlineFiles(Optional.ofNullable(brief.toAbsolutePath().getParent()));
    }

    static OutlineFiles none() {
        return new OutlineFiles(Optional.empty());
    }

    Found read(Node node) {
        return read(node, ONE, (name, shapes) -> new Found(name, simple(Border.of(shapes))));
    }

    /** A hub plate, about the origin of its file. */
    PlateBlank blank(Node node) {
        PlateBlank blank = read(node, PLATE, OutlineFiles::blank);
        blank.flaw().ifPresent(flaw -> {
            throw new Refusal(Code.UNREADABLE, blank.name() + ": " + flaw, PLATE);
        });
        return blank;
    }

    /** Makes something of the lines of a file. */
    private interface Maker<T> {
        T of(String name, List<Shape> lines) throws IOException;
    }

    private <T> T read(Node node, String mend, Maker<T> maker) {
        String text = Values.text(node);
        Path path = path(text);
        String name = Seen.printable(String.valueOf(path.getFileName()));
        try {
            return maker.of(name, lines(path, name, text, mend));
        } catch (IOException wrong) {
            throw new Refusal(Code.UNREADABLE, name + ": " + sentence(Seen.printable(wrong.getMessage())), mend);
        }
    }

    /** The one place that asks for a reader. */
    private static List<Shape> lines(Path path, String name, String text, String mend) throws IOException {
        ShapeReader reader = ShapeReader.installed(ending(name))
                .orElseThrow(() -> Refusal.wrong("no outline is read from " + Seen.text(text) + ".", mend));
        return reader.read(new ByteArrayInputStream(bytes(path, Seen.text(text), mend)));
    }

    private static PlateBlank blank(String name, List<Shape> shapes) throws IOException {
        Border.Pierced lines = Border.withHoles(shapes);
        List<PlateBlank.Line> holes = new ArrayList<>();
        for (Polyline hole : lines.holes()) {
            holes.add(line(hole));
        }
        return new PlateBlank(name, line(lines.outline()), holes);
    }

    private static PlateBlank.Line line(Polyline path) throws IOException {
        double[] bulges =
                IntStream.range(0, path.size()).mapToDouble(path::bulge).toArray();
        return PlateBlank.Line.of(xy(path), bulges, polygon(Border.measurable(path)));
    }

    private Path path(String text) {
        try {
            return folder.orElseThrow(() -> Refusal.wrong(
                            "the brief is no file, so there is nothing beside it.", "Write the brief into a file."))
                    .resolve(text);
        } catch (InvalidPathException impossible) {
            throw Refusal.wrong(Seen.text(text) + " is not the name of a file.", ONE);
        }
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static byte[] bytes(Path path, String text, String mend) {
        if (!Files.isRegularFile(path)) {
            String what = Files.exists(path) ? " is not a file." : " is not there.";
            throw new Refusal(Code.FILE, text + what, "Give its path as seen from the folder of the brief.");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new Refusal(Code.FILE, text + " is larger than 32 MiB.", mend);
            }
            return bytes;
        } catch (IOException e) {
            throw new Refusal(Code.FILE, text + " cannot be read.", "Check that you are allowed to read it.");
        }
    }

    private static Polygon simple(Polyline border) throws IOException {
        Polygon polygon = polygon(border);
        Optional<String> crossing = SelfCrossing.near(polygon);
        if (crossing.isPresent()) {
            throw new IOException("the outline crosses or touches itself near " + crossing.get() + ".");
        }
        return polygon;
    }

    private static double[] xy(Polyline path) {
        double[] xy = new double[2 * path.size()];
        for (int c = 0; c < path.size(); c++) {
            xy[2 * c] = path.x(c);
            xy[2 * c + 1] = path.y(c);
        }
        return xy;
    }

    private static Polygon polygon(Polyline border) throws IOException {
        try {
            return Polygon.of(xy(border));
        } catch (IllegalArgumentException nothingInside) {
            throw new IOException("the outline encloses no area, or crosses itself.", nothingInside);
        }
    }

    private static String sentence(String reason) {
        return reason.endsWith(".") ? reason : reason + ".";
    }
}
