package dev.calotte.model;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.drawing.StrokeText;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.Parts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The pieces of a net as parts: cut round panels and tabs, scored where they fold, and engraved on the outside: every
 * panel with its mark, every glued joint with its number, on the tab and inside the side that the tab goes under.
 */
final class NetKit {

    /** How many times the height of its letters the radius of the circle inside a panel has to be. */
    static final double LETTERS_IN_RADIUS = 4;

    private static final double LINE = 1.6;

    private final PieceMarks marks;
    private final Tabs tabs;
    private final List<NetPiece> pieces;

    /** The numbers of glued joints, by their struts. */
    private final Map<Integer, Integer> numbers = new TreeMap<>();

    NetKit(Parts parts, Tabs tabs, List<NetPiece> pieces) {
        this.marks = new PieceMarks(parts);
        this.tabs = tabs;
        this.pieces = List.copyOf(pieces);
        for (int strut : tabs.shell().joints()) {
            if (pieces.stream().noneMatch(piece -> piece.folds().contains(strut))) {
                numbers.put(strut, numbers.size() + 1);
            }
        }
    }

    List<ModelPart> parts() {
        List<ModelPart> parts = new ArrayList<>();
        for (NetPiece piece : pieces) {
            boolean single = piece.panels().size() == 1;
            String mark = single ? mark(piece.panels().get(0)) : "N" + (parts.size() + 1);
            parts.add(new ModelPart(
                    mark,
                    (single ? "One panel" : piece.panels().size() + " panels")
                            + ", the outside; score it and fold away from you" + towards(piece),
                    Polygon.of(piece.outline()),
                    piece.foldLines(),
                    labels(piece),
                    1));
        }
        return parts;
    }

    private static String towards(NetPiece piece) {
        return piece.foldLines().stream().anyMatch(Fold::hollow) ? ", along broken lines towards you" : "";
    }

    private String mark(int panel) {
        return marks.of(tabs.shell().panels().get(panel));
    }

    List<Label> labels(NetPiece piece) {
        List<Label> labels = new ArrayList<>();
        for (int panel : piece.panels()) {
            labels.add(panelMark(piece, panel));
        }
        for (int side : piece.border()) {
            if (tabs.shell().twin(side) != Shell.NONE) {
                labels.add(number(piece, side));
            }
        }
        return labels;
    }

    /** Along the longest side, in the circle inside the panel, as high as leaves room for numbers at the sides. */
    private Label panelMark(NetPiece piece, int panel) {
        List<Vector2D> corners = piece.corners(panel);
        int longest = 3 * panel;
        Vector2D middle = Vector2D.ZERO;
        double round = 0;
        for (int side = 3 * panel; side < 3 * panel + 3; side++) {
            longest = tabs.shell().lengthMm(side) > tabs.shell().lengthMm(longest) + 1e-9 ? side : longest;
            double opposite = tabs.shell().lengthMm(Shell.after(side));
            middle = middle.add(opposite, corners.get(side % 3));
            round += opposite;
        }
        double height = heightMm(panel);
        Vector2D along = corners.get((longest + 1) % 3).subtract(corners.get(longest % 3));
        return new Label(
                mark(panel),
                middle.scalarMultiply(1 / round),
                StrictMath.atan2(along.getY(), along.getX()),
                Math.min(height, 1.6 * tabs.shell().inradiusMm(panel) / StrokeText.width(mark(panel), 1)));
    }

    /** How high letters on a panel are. */
    private double heightMm(int panel) {
        return Math.min(Label.USUAL_MM, tabs.shell().inradiusMm(panel) / LETTERS_IN_RADIUS);
    }

    /** A number that is another one upside down has a point at its end. */
    private static String text(int number) {
        String digits = Integer.toString(number);
        return digits.matches("[0689]*[69][0689]*") ? digits + "." : digits;
    }

    /** On the tab, or inside the side that has none. */
    private Label number(NetPiece piece, int side) {
        List<Vector2D> corners = piece.corners(side / 3);
        Vector2D from = corners.get(side % 3);
        Vector2D to = corners.get((side + 1) % 3);
        Vector2D along = to.subtract(from).normalize();
        Vector2D out = new Vector2D(along.getY(), -along.getX());
        double height = heightMm(side / 3);
        double off = -LINE / 2 * height;
        if (tabs.has(side)) {
            off = tabs.widthMm(side) / 2;
            height = Math.min(height, 0.7 * tabs.widthMm(side));
        }
        return new Label(
                text(numbers.get(tabs.shell().strut(side))),
                new Vector2D(0.5, from, 0.5, to).add(off, out),
                StrictMath.atan2(along.getY(), along.getX()),
                height);
    }
}
