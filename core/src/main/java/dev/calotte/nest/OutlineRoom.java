package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Outline;
import java.util.List;

/** Whether a part has room on an irregular outline. */
public final class OutlineRoom {

    private static final int HALVINGS = 20;

    private final Piece piece;
    private final Field field;

    private OutlineRoom(Piece piece, Outline stock) {
        this.piece = piece;
        this.field = Field.of(0, stock);
    }

    /**
     * How much too large a part is: by how much it would have to be narrower, all of it made smaller in proportion, for a
     * place to be found. It is looked for with a side along one of the longest sides of the outline or along the axes, or
     * with the grain along x; with a grain this is exact, else there may be a place that is not found.
     *
     * @param piece the part, however many are needed
     * @param stock the outline
     * @return above 0 if no place was found; else below 0, how much longer and wider the bounding rectangle is at least
     */
    public static double overMm(Piece piece, Outline stock) {
        return new OutlineRoom(piece, stock).overMm();
    }

    private double overMm() {
        double lacking = Room.lackingMm(new Kinds(List.of(piece)), 0, field);
        if (lacking <= Room.TOUCHING_MM && holds(1)) {
            return lacking;
        }
        double low = 0;
        double high = 1;
        for (int n = 0; n < HALVINGS; n++) {
            double middle = (low + high) / 2;
            if (holds(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.max(lacking, (1 - low) * piece.outline().narrowestWidth());
    }

    private boolean holds(double scale) {
        ConvexPolygon outline = piece.outline();
        double[] xy = new double[2 * outline.size()];
        for (int c = 0; c < outline.size(); c++) {
            xy[2 * c] = scale * outline.x(c);
            xy[2 * c + 1] = scale * outline.y(c);
        }
        Piece scaled = new Piece(piece.mark(), ConvexPolygon.of(xy), 1, piece.mayMirror(), piece.grainRad());
        Kinds kinds = new Kinds(List.of(scaled));
        return new Filling(kinds, field, new Manners(0, Manner.ANY)).add(0);
    }
}
