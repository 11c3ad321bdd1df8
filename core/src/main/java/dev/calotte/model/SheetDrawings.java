package dev.calotte.model;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.drawing.Pose;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.RectangleFit;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Piece;
import dev.calotte.nest.Placed;
import dev.calotte.nest.SheetPlan;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Lays parts on sheets and draws these: what is engraved and scored first, then the line that the cutter follows.
 *
 * @param sheet what the parts are cut from, its margin included
 * @param spacingMm how far cuts stay from each other
 * @param kerf what the cutter takes
 */
record SheetDrawings(Sheet sheet, double spacingMm, Kerf kerf) {

    /** Broken lines where a fold goes the other way: stroke and gap. */
    private static final double DASH = 3;

    /**
     * What the drawings are called.
     *
     * @param name with what each file's name begins
     * @param title what they show
     * @param where the place of the sheet in the words of the brief
     */
    record Heading(String name, String title, String where) {}

    static SheetDrawings of(double lengthMm, double widthMm, Board board) {
        Sheet sheet = new Sheet(lengthMm, widthMm, Math.min(board.spacingMm(), lengthMm / 4), Terms.OPEN);
        return new SheetDrawings(sheet, board.spacingMm(), new Kerf(board.kerfMm()));
    }

    List<Drawing> of(Heading heading, List<ModelPart> parts) {
        check(heading, parts);
        List<Piece> pieces = new ArrayList<>();
        Map<String, ModelPart> byMark = new TreeMap<>();
        for (ModelPart part : parts) {
            pieces.add(new Piece(part.mark(), part.room(kerf), part.count(), false, OptionalDouble.empty()));
            byMark.put(part.mark(), part);
        }
        List<CutSheet> sheets = SheetPlan.of(pieces, List.of(sheet), new Layout(spacingMm, 0, 2))
                .sheets();
        Map<String, Integer> laid = new TreeMap<>();
        List<Drawing> drawings = new ArrayList<>();
        for (int number = 0; number < sheets.size(); number++) {
            List<Part> drawn = new ArrayList<>();
            for (Placed placed : sheets.get(number).parts()) {
                ModelPart part = byMark.get(placed.mark());
                drawn.add(part(part, laid.merge(part.mark(), 1, Integer::sum), Pose.of(placed)));
            }
            drawn.add(border());
            drawings.add(new Drawing(
                    String.format(Locale.ROOT, "model/%s-%02d", heading.name(), number + 1),
                    heading.title() + ", sheet " + (number + 1) + " of " + sheets.size() + ", " + kerf.note(),
                    sheet.lengthMm(),
                    sheet.widthMm(),
                    drawn));
        }
        return List.copyOf(drawings);
    }

    private Part border() {
        double length = sheet.lengthMm();
        double width = sheet.widthMm();
        return new Part(
                "SHEET",
                "The border of the stock",
                List.of(Polyline.closed(Operation.SHEET, 0, 0, length, 0, length, width, 0, width)));
    }

    private Part part(ModelPart part, int number, Pose pose) {
        String mark = part.count() > 1 ? part.mark() + (number < 10 ? ".0" : ".") + number : part.mark();
        return new Part(mark, part.description(), shapes(part, pose));
    }

    /** The shapes of a part that lies somewhere, in the order in which they are worked. */
    List<Shape> shapes(ModelPart part, Pose pose) {
        List<Shape> shapes = new ArrayList<>();
        for (Label label : part.labels()) {
            shapes.addAll(label.strokes()
                    .middle(
                            pose.at(label.middle()).getX(),
                            pose.at(label.middle()).getY(),
                            label.turnRad() + pose.turnRad()));
        }
        part.folds().forEach(fold -> addFold(shapes, fold, pose));
        shapes.add(Polyline.closed(
                Operation.CUT_OUTER, pose.xy(kerf.cutLine(part.outline()).corners())));
        return shapes;
    }

    private static void addFold(List<Shape> shapes, Fold fold, Pose pose) {
        double length = fold.from().distance(fold.to());
        int dashes = fold.hollow() ? (int) Math.max(1, Math.round(length / DASH / 2)) : 1;
        double step = fold.hollow() ? length / (2 * dashes - 0.5) : length;
        for (int dash = 0; dash < dashes; dash++) {
            double begin = 2 * dash * step / length;
            double end = Math.min(1, begin + step / length);
            shapes.add(Polyline.open(
                    Operation.SCORE,
                    pose.xy(List.of(
                            fold.from().add(begin, fold.to().subtract(fold.from())),
                            fold.from().add(end, fold.to().subtract(fold.from()))))));
        }
    }

    private void check(Heading heading, List<ModelPart> parts) {
        List<Problem> problems = new ArrayList<>();
        for (ModelPart part : parts) {
            ConvexPolygon room = part.room(kerf);
            double lacking = RectangleFit.shortfall(room, sheet.usableLengthMm(), sheet.usableWidthMm());
            if (lacking > 0) {
                problems.add(new Problem(
                        Code.IMPOSSIBLE,
                        heading.where(),
                        "part " + part.mark() + " of the model is larger than a sheet.",
                        "Use sheets larger by " + NumberText.trimmed(Math.ceil(lacking * 10) / 10, 1)
                                + " mm both ways, or a smaller scale."));
            }
        }
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
    }
}
