package dev.calotte.check;

import dev.calotte.check.RecordedCover.Part;
import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.check.RecordedDome.StrutKind;
import dev.calotte.check.RecordedSides.Side;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Sides of patterns: as long as their struts, leaning by half of what the angle to the neighbour lacks of a straight one, and cut
 * as far outside the net as is allowed; both faces of a bevelled edge run along each other, and grain lies along the stock.
 */
public final class SideCheck {

    /** Lengths below this part of the radius are rounding. */
    private static final double ROUNDING = 2e-9;

    private final RecordedDome dome;
    private final RecordedCover cover;
    private final RecordedSides recorded;
    private final Findings findings;
    private final Map<String, StrutKind> kinds = new TreeMap<>();
    private final double withinMm;

    private SideCheck(RecordedDome dome, RecordedCover cover, RecordedSides recorded, Findings findings) {
        this.dome = dome;
        this.cover = cover;
        this.recorded = recorded;
        this.findings = findings;
        this.withinMm = 10 * Printed.RECORD_MM + ROUNDING * dome.figures().radius();
        dome.strutKinds().forEach(kind -> kinds.put(kind.mark(), kind));
    }

    /**
     * Looks the sides of a cover's patterns through.
     *
     * @param dome the dome
     * @param cover the cover
     * @param sides what is said of its sides
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, RecordedCover cover, RecordedSides sides, Findings findings) {
        new SideCheck(dome, cover, sides, findings).check();
    }

    private void check() {
        for (Piece piece : cover.pieces()) {
            List<Side> sides = recorded.sides().getOrDefault(piece.mark(), List.of());
            for (int k = 0; k < sides.size(); k++) {
                side(at(piece) + " side " + (k + 1), sides.get(k));
            }
            allowances(piece);
            faces(piece);
        }
        for (int i = 0; i < cover.sheets().size(); i++) {
            for (Part part : cover.sheets().get(i).parts()) {
                grain(i, part);
            }
        }
    }

    private String at(Piece piece) {
        return cover.name() + " " + piece.mark();
    }

    private void side(String place, Side side) {
        StrutKind kind = kinds.get(side.strut());
        if (kind == null) {
            findings.add(Fault.FOREIGN, place, "there is no kind of struts " + side.strut() + ".");
        } else {
            findings.same(place, "the length", side.length(), kind.length(), Printed.RECORD_MM + 2 * dome.mergeError());
        }
        if (Double.isFinite(side.dihedral())) {
            findings.same(place, "the bevel", side.bevel(), (180 - side.dihedral()) / 2, Printed.RECORD_DEG);
        } else {
            findings.same(place, "the bevel", side.bevel(), 0, 0);
        }
        double growth = cover.plane() * StrictMath.tan(StrictMath.toRadians(side.bevel()));
        findings.same(
                place, "the growth", side.growth(), growth, Printed.RECORD_MM * (1 + Math.abs(cover.plane()) / 100));
    }

    /** Whatever becomes of corners, something is left of each cut side where the allowance has it. */
    private void allowances(Piece piece) {
        if (piece.parts() || piece.net().size() != 3 || piece.allowances().size() != 3) {
            return;
        }
        double turn = Math.signum(piece.net().area());
        for (int side = 0; side < 3; side++) {
            Vector2D along = piece.net()
                    .corner(side + 1)
                    .subtract(piece.net().corner(side))
                    .normalize();
            Vector2D out = new Vector2D(along.getY(), -along.getX()).scalarMultiply(turn);
            double line = out.dotProduct(piece.net().corner(side))
                    + piece.allowances().get(side);
            if (!liesAlong(piece.outline(), out, line)) {
                findings.add(
                        Fault.DIFFERENT,
                        at(piece) + " outline",
                        "no side of it lies " + Findings.text(piece.allowances().get(side)) + " mm outside side "
                                + (side + 1) + " of the net shape.");
            }
        }
    }

    private boolean liesAlong(Ring outline, Vector2D out, double line) {
        for (int i = 0; i < outline.size(); i++) {
            if (Math.abs(out.dotProduct(outline.corner(i)) - line) <= withinMm
                    && Math.abs(out.dotProduct(outline.corner(i + 1)) - line) <= withinMm) {
                return true;
            }
        }
        return false;
    }

    /** Where both faces have as many sides, each of one runs along one of the other. */
    private void faces(Piece piece) {
        if (piece.outer().isEmpty()
                || piece.outer().get().size() != piece.outline().size()) {
            return;
        }
        Ring outer = piece.outer().get();
        for (int i = 0; i < outer.size(); i++) {
            Vector2D inside =
                    piece.outline().corner(i + 1).subtract(piece.outline().corner(i));
            Vector2D outside = outer.corner(i + 1).subtract(outer.corner(i));
            double across = inside.getX() * outside.getY() - inside.getY() * outside.getX();
            double most = Math.max(inside.getNorm(), outside.getNorm());
            if (!(Math.abs(across) <= 2 * withinMm * most) || inside.dotProduct(outside) < 0) {
                findings.add(
                        Fault.DIFFERENT,
                        at(piece) + " outline",
                        "its side " + (i + 1) + " does not run along that of the outer face.");
                return;
            }
        }
    }

    private void grain(int sheet, Part part) {
        Double grain = recorded.grains().get(part.mark());
        if (grain != null) {
            double laid = part.rotation() + (part.mirrored() ? 180 - grain : grain);
            double off = Math.abs(Math.IEEEremainder(laid, 180));
            if (!(off <= Printed.RECORD_DEG)) {
                findings.add(
                        Fault.DIFFERENT,
                        cover.name() + " sheet " + (sheet + 1) + ", " + part.panel(),
                        "its grain lies " + Findings.text(off) + "° from that of the stock.");
            }
        }
    }
}
