package dev.calotte.drawing;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Panel;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.parts.PanelKind;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Sheets with what lies on them; a roll is broken into stretches that fit the page. */
final class SheetPicture {

    private static final double WIDTH = 180;
    private static final double STRETCH_MM = 7000;

    private final CoverPlan plan;
    private final UnitSystem units;
    private final PieceMarks marks;
    private final Map<String, PatternFit> fitOf = new TreeMap<>();
    private final List<Picture> pictures = new ArrayList<>();

    SheetPicture(CoverPlan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
        this.marks = new PieceMarks(plan.fit().patterns().parts());
        plan.fit().fits().forEach(fit -> fit.pieces().forEach(piece -> fitOf.put(piece.mark(), fit)));
    }

    /** A piece on its stock. */
    private record Laid(Placed placed, Panel panel) {

        double fromMm() {
            return placed.outline().corners().stream()
                    .mapToDouble(Vector2D::getX)
                    .min()
                    .orElseThrow();
        }

        double toMm() {
            return placed.outline().corners().stream()
                    .mapToDouble(Vector2D::getX)
                    .max()
                    .orElseThrow();
        }
    }

    List<Picture> pictures() {
        List<CutSheet> sheets = plan.plan().sheets();
        for (int i = 0; i < sheets.size(); i++) {
            List<Laid> laid = new ArrayList<>();
            for (int part = 0; part < sheets.get(i).parts().size(); part++) {
                laid.add(new Laid(
                        sheets.get(i).parts().get(part), plan.panels().get(i).get(part)));
            }
            if (sheets.get(i).stock() instanceof Roll) {
                addStretches(sheets.get(i), laid);
            } else {
                String what = "sheet " + (i + 1) + " of " + sheets.size() + ", "
                        + units.length(sheets.get(i).lengthMm()) + " by "
                        + units.length(sheets.get(i).widthMm());
                add(sheets.get(i), laid, 0, sheets.get(i).lengthMm(), what);
            }
        }
        return List.copyOf(pictures);
    }

    /** Each piece is drawn whole in the stretch that it begins in. */
    private void addStretches(CutSheet sheet, List<Laid> laid) {
        List<Laid> waiting = new ArrayList<>(laid);
        waiting.sort(Comparator.comparingDouble(Laid::fromMm));
        while (!waiting.isEmpty()) {
            double from = waiting.get(0).fromMm();
            List<Laid> here = waiting.stream()
                    .filter(each -> each.toMm() <= from + STRETCH_MM)
                    .toList();
            List<Laid> taken = here.isEmpty() ? waiting.subList(0, 1) : before(waiting, here);
            double to = taken.stream().mapToDouble(Laid::toMm).max().orElseThrow();
            add(sheet, List.copyOf(taken), from, to, "roll from " + units.length(from) + " to " + units.length(to));
            waiting = new ArrayList<>(waiting.subList(taken.size(), waiting.size()));
        }
    }

    /** As many from the first on as fit without a gap. */
    private static List<Laid> before(List<Laid> waiting, List<Laid> fit) {
        int count = 0;
        while (count < waiting.size() && fit.contains(waiting.get(count))) {
            count++;
        }
        return waiting.subList(0, count);
    }

    private void add(CutSheet sheet, List<Laid> laid, double fromMm, double toMm, String what) {
        double perMm = WIDTH / Math.max(toMm - fromMm, sheet.stock() instanceof Roll ? STRETCH_MM : 0);
        double right = (toMm - fromMm) * perMm;
        double high = sheet.widthMm() * perMm;
        List<Item> items = new ArrayList<>();
        List<Double> border = sheet.stock() instanceof Outline outline
                ? outline.border().corners().stream()
                        .flatMap(corner -> Stream.of(corner.getX() * perMm, corner.getY() * perMm))
                        .toList()
                : List.of(0.0, 0.0, right, 0.0, right, high, 0.0, high);
        items.add(new Facet(border, 0, Picture.Hatch.NONE, Weight.FINE, "stock"));
        for (Laid each : laid) {
            addPiece(items, each, fromMm, perMm);
        }
        String cover = plan.fit().patterns().cover().name();
        int number = pictures.size() + 1;
        String name = "stock/" + cover + (number < 10 ? "-0" : "-") + number;
        pictures.add(new Picture(name, "Cover " + cover + ", " + what, WIDTH, high, items));
    }

    private void addPiece(List<Item> items, Laid laid, double fromMm, double perMm) {
        PatternFit fit = fitOf.get(laid.placed().mark());
        PanelKind kind = fit.pattern().kind();
        List<Vector2D> corners = laid.placed().outline().corners().stream()
                .map(corner -> new Vector2D((corner.getX() - fromMm) * perMm, corner.getY() * perMm))
                .toList();
        String suffix = laid.placed().mark().substring(fit.pattern().mark().length());
        String mark = marks.of(laid.panel()) + suffix;
        String down = laid.placed().mirrored() ? ", face down" : "";
        items.add(new Facet(
                KindLook.xy(corners),
                kind.number(),
                KindLook.hatch(kind.hand()),
                Weight.FINE,
                mark + ", pattern " + laid.placed().mark() + down));
        addMark(items, mark, ConvexPolygon.of(corners));
    }

    /** The mark where it has the most room; a piece too small for it is told by its title. */
    private static void addMark(List<Item> items, String mark, ConvexPolygon outline) {
        Box box = Letters.capitals(mark, Letters.SMALL);
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
            items.add(Letters.middle(mark, middle.getX(), middle.getY(), Letters.SMALL));
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
