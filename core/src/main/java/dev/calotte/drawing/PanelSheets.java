package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.units.Angle;
import dev.calotte.units.UnitSystem;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The kinds of panels side by side at one scale, from outside, with their sides from hub to hub, altitudes, angles, hands
 * and counts. The longest side lies at the bottom, so that the altitude over it is the narrowest width.
 */
final class PanelSheets {

    private static final double WIDEST = 42;
    private static final double OFFSET = 4;
    private static final double BEYOND = 1.2;
    private static final double ANGLE_AT = 3.6;
    /** Where along the upper sides their text stands, out of the way of the angle at the top. */
    private static final double AT_FOOT = 0.4;

    private static final double HEADING = 17;

    private final UnitSystem units;
    private final List<PanelKind> kinds;
    private final double perMm;

    private PanelSheets(Subject subject) {
        this.units = subject.units();
        this.kinds = subject.parts().panelKinds();
        double longest =
                kinds.stream().mapToDouble(kind -> kind.triangle().c()).max().orElse(1);
        this.perMm = WIDEST / longest;
    }

    static List<Draft> of(Subject subject) {
        PanelSheets sheets = new PanelSheets(subject);
        String note = "Seen from outside, from hub centre to hub centre, before any allowance; all at one scale.";
        return Cells.of(new Cells.Series("panels", "Panels", note, sheets.kinds.size()), subject.units(), sheets::draw);
    }

    private void draw(Paper paper, Box cell, int index) {
        PanelKind kind = kinds.get(index);
        heading(paper, cell, kind);
        Triangle triangle = kind.triangle();
        int leftSide = kind.hand() == Hand.RIGHT ? 0 : 1;
        double base = perMm * triangle.c();
        double high = perMm * triangle.altitude(2);
        double left = perMm * triangle.side(leftSide);
        double room = cell.height() - HEADING;
        Vector2D first = new Vector2D(cell.middleX() - base / 2, cell.low() + (room - high) / 2 + 2);
        Vector2D second = first.add(new Vector2D(base, 0));
        Vector2D third = first.add(new Vector2D(Math.sqrt(Math.max(0, left * left - high * high)), high));
        List<Vector2D> corners = List.of(first, second, third);
        paper.add(KindLook.facet(corners, kind, Weight.STRONG, kind.mark()));
        int[] sides = {2, 1 - leftSide, leftSide};
        for (int k = 0; k < 3; k++) {
            side(paper, kind, sides[k], corners.get(k), corners.get((k + 1) % 3));
            angle(paper, triangle.angleRad(sides[(k + 1) % 3]), corners, k);
        }
        altitude(paper, corners, kind);
    }

    private void heading(Paper paper, Box cell, PanelKind kind) {
        String count = kind.count() + (kind.count() == 1 ? " panel" : " panels");
        String hand = kind.hand() == Hand.NONE ? "" : ", " + KindLook.hand(kind.hand());
        paper.text(kind.mark() + "  " + count + hand, cell.left(), cell.high() - 3, Letters.MARK, Anchor.START);
        Triangle t = kind.triangle();
        String altitudes =
                "altitudes " + length(t.altitude(2)) + ", " + length(t.altitude(1)) + ", " + length(t.altitude(0));
        paper.text(altitudes, cell.left(), cell.high() - 8, Letters.SMALL, Anchor.START);
        kind.twin()
                .ifPresent(twin -> paper.text(
                        "mirror image of " + twin, cell.left(), cell.high() - 12, Letters.SMALL, Anchor.START));
    }

    private String length(double mm) {
        return units.length(mm, 1);
    }

    /** A dimension line beside a side, its text further out. */
    private void side(Paper paper, PanelKind kind, int side, Vector2D from, Vector2D to) {
        Vector2D along = to.subtract(from).normalize();
        Vector2D out = new Vector2D(along.getY(), -along.getX());
        extension(paper, from, out);
        extension(paper, to, out);
        Vector2D a = from.add(OFFSET, out);
        Vector2D b = to.add(OFFSET, out);
        paper.line(a.getX(), a.getY(), b.getX(), b.getY(), Weight.FINE);
        double part = side == 2 ? 0.5 : from.getY() < to.getY() ? AT_FOOT : 1 - AT_FOOT;
        Vector2D at = a.add(part, b.subtract(a));
        TextStack.beyond(
                paper,
                List.of("S" + kind.struts().get(side), length(kind.triangle().side(side))),
                at,
                out);
    }

    private static void extension(Paper paper, Vector2D corner, Vector2D out) {
        Vector2D from = corner.add(BEYOND, out);
        Vector2D to = corner.add(OFFSET + BEYOND, out);
        paper.line(from.getX(), from.getY(), to.getX(), to.getY(), Weight.FINE);
    }

    /** The angle at a corner, written beyond it. */
    private static void angle(Paper paper, double angleRad, List<Vector2D> corners, int k) {
        Vector2D corner = corners.get(k);
        Vector2D inwards = corners.get((k + 1) % 3)
                .subtract(corner)
                .normalize()
                .add(corners.get((k + 2) % 3).subtract(corner).normalize());
        Vector2D out = inwards.normalize().negate();
        String text = Angle.text(angleRad, 1);
        Box box = Letters.capitals(text, Letters.SMALL);
        double reach = (Math.abs(out.getX()) * box.width() + Math.abs(out.getY()) * box.height()) / 2;
        Vector2D at = corner.add(ANGLE_AT + reach, out);
        paper.add(Letters.middle(text, at.getX(), at.getY(), Letters.SMALL));
    }

    /** A broken line from the top to the foot, and the mark in the wider half. */
    private static void altitude(Paper paper, List<Vector2D> corners, PanelKind kind) {
        Vector2D top = corners.get(2);
        Vector2D foot = new Vector2D(top.getX(), corners.get(0).getY());
        paper.add(new Line(top.getX(), top.getY(), foot.getX(), foot.getY(), Weight.FINE, true));
        boolean leftHalf = foot.getX() - corners.get(0).getX() > corners.get(1).getX() - foot.getX();
        List<Vector2D> half = leftHalf ? List.of(corners.get(0), foot, top) : List.of(foot, corners.get(1), top);
        Box box = Letters.capitals(kind.mark(), Letters.MARK);
        MarkSpot.in(half, box)
                .or(() -> MarkSpot.in(half, Letters.capitals(kind.mark(), Letters.SMALL)))
                .ifPresent(at -> paper.add(Letters.middle(kind.mark(), at.getX(), at.getY(), Letters.MARK)));
    }
}
