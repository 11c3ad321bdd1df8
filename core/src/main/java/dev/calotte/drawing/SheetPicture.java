package dev.calotte.drawing;

import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Weight;
import dev.calotte.drawing.LaidSheets.LaidSheet;
import dev.calotte.drawing.StockPicture.Laid;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.nest.CutSheet;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Sheets with what lies on them, those that are laid alike once; a roll is broken into stretches that fit the page. */
final class SheetPicture {

    private static final double WIDTH = 180;
    private static final double STRETCH_MM = 7000;

    /** What is drawn of a sheet. */
    private record Stretch(List<LaidPiece> pieces, double fromMm, double toMm) {

        double lengthMm() {
            return toMm - fromMm;
        }
    }

    private final CoverPlan plan;
    private final UnitSystem units;
    private final List<StockPicture> pictures = new ArrayList<>();

    SheetPicture(CoverPlan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
    }

    List<StockPicture> pictures() {
        for (List<LaidSheet> alike : new LaidSheets(plan).alike()) {
            LaidSheet first = alike.get(0);
            if (first.cut().stock() instanceof Roll) {
                addStretches(first.cut(), first.pieces());
            } else if (alike.size() == 1) {
                Stretch whole = new Stretch(first.pieces(), 0, first.cut().lengthMm());
                String what = "sheet " + first.number() + " of " + count() + ", " + size(first.cut());
                pictures.add(StockPicture.alone(picture(first.cut(), whole, LaidPiece::mark, what)));
            } else {
                addAlike(alike);
            }
        }
        return List.copyOf(pictures);
    }

    private int count() {
        return plan.plan().sheets().size();
    }

    private String size(CutSheet sheet) {
        return units.length(sheet.lengthMm()) + " by " + units.length(sheet.widthMm());
    }

    /** One picture with numbers at its places. */
    private void addAlike(List<LaidSheet> alike) {
        CutSheet sheet = alike.get(0).cut();
        List<LaidPiece> pieces = alike.get(0).pieces();
        String what = alike.size() + " of " + count() + " sheets, " + size(sheet);
        Stretch whole = new Stretch(pieces, 0, sheet.lengthMm());
        Picture picture = picture(sheet, whole, piece -> Integer.toString(pieces.indexOf(piece) + 1), what);
        List<String> places =
                pieces.stream().map(piece -> piece.placed().mark()).toList();
        List<Laid> sheets = alike.stream()
                .map(each -> new Laid(
                        each.number(),
                        each.pieces().stream().map(LaidPiece::mark).toList()))
                .toList();
        pictures.add(new StockPicture(picture, places, sheets));
    }

    /** Each piece is drawn whole in the stretch that it begins in. */
    private void addStretches(CutSheet sheet, List<LaidPiece> laid) {
        List<LaidPiece> waiting = laid;
        while (!waiting.isEmpty()) {
            double from = waiting.get(0).fromMm();
            List<LaidPiece> here = waiting.stream()
                    .filter(each -> each.toMm() <= from + STRETCH_MM)
                    .toList();
            List<LaidPiece> taken = here.isEmpty() ? waiting.subList(0, 1) : before(waiting, here);
            double to = taken.stream().mapToDouble(LaidPiece::toMm).max().orElseThrow();
            String what = "roll from " + units.length(from) + " to " + units.length(to);
            pictures.add(StockPicture.alone(picture(sheet, new Stretch(taken, from, to), LaidPiece::mark, what)));
            waiting = waiting.subList(taken.size(), waiting.size());
        }
    }

    /** As many from the first on as fit without a gap. */
    private static List<LaidPiece> before(List<LaidPiece> waiting, List<LaidPiece> fit) {
        int count = 0;
        while (count < waiting.size() && fit.contains(waiting.get(count))) {
            count++;
        }
        return waiting.subList(0, count);
    }

    private Picture picture(CutSheet sheet, Stretch stretch, Function<LaidPiece, String> name, String what) {
        double perMm = WIDTH / Math.max(stretch.lengthMm(), sheet.stock() instanceof Roll ? STRETCH_MM : 0);
        double high = sheet.widthMm() * perMm;
        List<Item> items = new ArrayList<>();
        items.add(
                new Facet(border(sheet, stretch.lengthMm() * perMm, high, perMm), 0, Hatch.NONE, Weight.FINE, "stock"));
        for (LaidPiece piece : stretch.pieces()) {
            addPiece(
                    items,
                    piece,
                    name.apply(piece),
                    corner -> new Vector2D((corner.getX() - stretch.fromMm()) * perMm, corner.getY() * perMm));
        }
        String cover = plan.fit().patterns().cover().name();
        int number = pictures.size() + 1;
        String file = "stock/" + cover + (number < 10 ? "-0" : "-") + number;
        return new Picture(file, "Cover " + cover + ", " + what, WIDTH, high, items);
    }

    private static List<Double> border(CutSheet sheet, double right, double high, double perMm) {
        return sheet.stock() instanceof Outline outline
                ? outline.border().corners().stream()
                        .flatMap(corner -> Stream.of(corner.getX() * perMm, corner.getY() * perMm))
                        .toList()
                : List.of(0.0, 0.0, right, 0.0, right, high, 0.0, high);
    }

    private static void addPiece(List<Item> items, LaidPiece piece, String name, UnaryOperator<Vector2D> paper) {
        List<Vector2D> corners =
                piece.placed().outline().corners().stream().map(paper).toList();
        String down = piece.placed().mirrored() ? ", face down" : "";
        String title = name + ", pattern " + piece.placed().mark() + down;
        items.add(KindLook.facet(corners, piece.kind(), Weight.FINE, title));
        double height = name.equals(piece.mark()) ? Letters.SMALL : Letters.MARK;
        addMark(items, name, height, ConvexPolygon.of(corners));
    }

    /** The mark where it has the most room; a piece too small for it is told by its title. */
    private static void addMark(List<Item> items, String mark, double height, ConvexPolygon outline) {
        Box box = Letters.capitals(mark, height);
        Vector2D middle = middle(outline);
        boolean fits = List.of(
                        new Vector2D(box.left(), box.low()),
                        new Vector2D(box.right(), box.low()),
                        new Vector2D(box.right(), box.high()),
                        new Vector2D(box.left(), box.high()))
                .stream()
                .map(middle::add)
                .allMatch(corner -> isInside(outline, corner));
        if (fits) {
            items.add(Letters.middle(mark, middle.getX(), middle.getY(), height));
        }
    }

    /** The centre of its area. */
    private static Vector2D middle(ConvexPolygon outline) {
        Vector2D sum = Vector2D.ZERO;
        for (int corner = 1; corner + 1 < outline.size(); corner++) {
            List<Vector2D> part = List.of(outline.corner(0), outline.corner(corner), outline.corner(corner + 1));
            double area = MarkSpot.cross(part.get(0), part.get(1), part.get(2)) / 2;
            sum = sum.add(area / outline.area(), MarkSpot.middle(part));
        }
        return sum;
    }

    private static boolean isInside(ConvexPolygon outline, Vector2D point) {
        for (int side = 0; side < outline.size(); side++) {
            if (outline.outward(side).dotProduct(point.subtract(outline.corner(side))) > 0) {
                return false;
            }
        }
        return true;
    }
}
