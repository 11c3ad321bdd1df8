package dev.calotte.check;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What a record says of a cover. Millimetres and degrees.
 *
 * @param name its name
 * @param plane how far the inner face lies outside the hub centres
 * @param spacing how far pieces stay apart on the stock
 * @param pieces what is cut, parts between seams each by themselves
 * @param sheets what lies on which stock; empty without a plan
 * @param planned whether there is a plan
 */
public record RecordedCover(
        String name, double plane, double spacing, List<Piece> pieces, List<Sheet> sheets, boolean planned) {

    /**
     * Copies the lists.
     *
     * @param name its name
     * @param plane how far the inner face lies outside the hub centres
     * @param spacing how far pieces stay apart
     * @param pieces what is cut
     * @param sheets what lies on which stock
     * @param planned whether there is a plan
     */
    public RecordedCover {
        pieces = List.copyOf(pieces);
        sheets = List.copyOf(sheets);
    }

    /**
     * A pattern, or a part of one between seams.
     *
     * @param mark its mark
     * @param panelKind the mark of the kind of panels
     * @param count how many are cut
     * @param net the finished shape
     * @param outline what is cut at the inner face, without notches
     * @param drawn what drawings show as the cut
     * @param outer what is cut at the outer face, where edges are bevelled
     * @param holes its holes
     * @param allowances how far each cut side lies outside that of the net, from side 0 on
     * @param parts whether its pattern is divided
     */
    public record Piece(
            String mark,
            String panelKind,
            int count,
            Ring net,
            Ring outline,
            Ring drawn,
            Optional<Ring> outer,
            List<Hole> holes,
            List<Double> allowances,
            boolean parts) {

        /**
         * Copies the lists.
         *
         * @param mark its mark
         * @param panelKind the kind of panels
         * @param count how many are cut
         * @param net the finished shape
         * @param outline what is cut at the inner face
         * @param drawn what drawings show
         * @param outer what is cut at the outer face
         * @param holes its holes
         * @param allowances of its sides
         * @param parts whether its pattern is divided
         */
        public Piece {
            holes = List.copyOf(holes);
            allowances = List.copyOf(allowances);
        }

        /**
         * What the material must have room for.
         *
         * @return the smallest convex shape round the outlines of both faces
         */
        public ConvexPolygon blank() {
            List<Vector2D> corners = new ArrayList<>(outline.corners());
            outer.ifPresent(other -> corners.addAll(other.corners()));
            return ConvexPolygon.round(corners);
        }

        /** The mark of the pattern: that of the piece without the number of a part between seams. */
        String pattern() {
            int number = parts ? mark.lastIndexOf('s') : -1;
            return number < 0 ? mark : mark.substring(0, number);
        }

        /** What follows the mark of the panel on a part between seams. */
        String suffix() {
            return mark.substring(pattern().length());
        }
    }

    /**
     * A hole.
     *
     * @param x its middle
     * @param y its middle
     * @param diameter how wide it is
     */
    public record Hole(double x, double y, double diameter) {}

    /**
     * A sheet, an offcut, or what is taken from a roll.
     *
     * @param length along x
     * @param width along y
     * @param border its outline
     * @param margin what is left unused along it
     * @param parts what lies on it
     */
    public record Sheet(double length, double width, Ring border, double margin, List<Part> parts) {

        /**
         * Copies the list.
         *
         * @param length along x
         * @param width along y
         * @param border its outline
         * @param margin what is left unused along it
         * @param parts what lies on it
         */
        public Sheet {
            parts = List.copyOf(parts);
        }

        /** The same stock under other parts. */
        Sheet with(List<Part> others) {
            return new Sheet(length, width, border, margin, others);
        }
    }

    /**
     * A piece on its stock.
     *
     * @param mark the mark of the piece
     * @param panel the mark of the panel that it is for
     * @param x where the origin of its frame lies
     * @param y where it lies
     * @param rotation counter-clockwise, in degrees
     * @param mirrored whether it lies face down
     * @param outline its outline there
     */
    public record Part(
            String mark, String panel, double x, double y, double rotation, boolean mirrored, Ring outline) {}
}
