package dev.calotte.svg.book;

import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Weight;
import dev.calotte.document.Scene;
import dev.calotte.document.Scene.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Rings of hubs, one above the other, each turned by half a step: enough of a dome to make a book of. */
record RingDome(int rings, int around) {

    private static final double RADIUS_MM = 3000;

    Scene scene() {
        List<Piece> pieces = new ArrayList<>();
        for (int ring = 0; ring < rings; ring++) {
            for (int i = 0; i < around; i++) {
                panels(pieces, ring, i);
            }
        }
        for (int ring = 0; ring < rings; ring++) {
            for (int i = 0; i < around; i++) {
                struts(pieces, ring, i);
            }
        }
        for (int place = 0; place < places(); place++) {
            pieces.add(new Piece(mark("H1", place / around, place % around), "H1", 0, List.of(place), "six bolts"));
        }
        return new Scene(xyz(), pieces);
    }

    Picture plan(double acrossMm) {
        double scale = acrossMm / (2.2 * RADIUS_MM);
        List<Double> xyz = xyz();
        List<Item> items = new ArrayList<>();
        for (Piece piece : scene().pieces()) {
            List<Double> xy = new ArrayList<>();
            for (int place : piece.places()) {
                xy.add(acrossMm / 2 + scale * xyz.get(3 * place));
                xy.add(acrossMm / 2 + scale * xyz.get(3 * place + 1));
            }
            if (piece.places().size() > 2) {
                items.add(new Facet(xy, piece.colour(), Hatch.NONE, Weight.FINE, piece.mark()));
            } else if (piece.places().size() == 1) {
                items.add(new Disc(xy.get(0), xy.get(1), 0.8, 0, Weight.FINE, piece.mark()));
            }
        }
        items.add(new Label("Plan", 4, acrossMm - 6, 5, Anchor.START));
        return new Picture("book/plan", "The dome from above", acrossMm, acrossMm, items);
    }

    private int places() {
        return (rings + 1) * around;
    }

    private List<Double> xyz() {
        List<Double> xyz = new ArrayList<>();
        for (int ring = 0; ring <= rings; ring++) {
            double up = ring * 1.35 / rings;
            for (int i = 0; i < around; i++) {
                double turn = (i + ring / 2.0) * 2 * Math.PI / around;
                xyz.add(RADIUS_MM * StrictMath.cos(up) * StrictMath.cos(turn));
                xyz.add(RADIUS_MM * StrictMath.cos(up) * StrictMath.sin(turn));
                xyz.add(RADIUS_MM * StrictMath.sin(up));
            }
        }
        return xyz;
    }

    private int place(int ring, int i) {
        return ring * around + (i + around) % around;
    }

    private void panels(List<Piece> pieces, int ring, int i) {
        String standing = "P" + (2 * ring + 1);
        String hanging = "P" + (2 * ring + 2);
        pieces.add(new Piece(
                mark(standing, ring, i),
                standing,
                2 * ring + 1,
                List.of(place(ring, i), place(ring, i + 1), place(ring + 1, i)),
                "weighs 1.2 kg"));
        pieces.add(new Piece(
                mark(hanging, ring, i),
                hanging,
                2 * ring + 2,
                List.of(place(ring, i + 1), place(ring + 1, i + 1), place(ring + 1, i)),
                "weighs 1.4 kg"));
    }

    private void struts(List<Piece> pieces, int ring, int i) {
        int[][] ends = {{ring, i + 1}, {ring + 1, i}, {ring + 1, i - 1}};
        for (int n = 0; n < ends.length; n++) {
            String kind = "S" + (n == 0 ? 2 * ring + 1 : 2 * ring + 2);
            String mark = mark(kind, ring, n < 2 ? i : around + i);
            List<Integer> places = List.of(place(ring, i), place(ends[n][0], ends[n][1]));
            pieces.add(new Piece(mark, kind, 0, places, "cut at 1,084 mm"));
        }
    }

    private static String mark(String kind, int row, int number) {
        return String.format(Locale.ROOT, "%s-%d.%02d", kind, row + 1, number + 1);
    }
}
