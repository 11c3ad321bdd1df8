package dev.calotte.contour;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Cuts each edge once: whatever of a side lies on sides that are cut before it is left out, and what is left of the
 * outline becomes open lines. They end at the very corners of what they meet, so that nothing is cut short by rounding.
 */
final class CommonLines {

    private final Drawing drawing;
    private final CutSides sides;
    private final Map<Integer, CutAlready> cut = new TreeMap<>();

    CommonLines(Drawing drawing) {
        this.drawing = drawing;
        this.sides = new CutSides(drawing);
        new SideSweep(sides)
                .each((earlier, later) -> cut.computeIfAbsent(later, side -> new CutAlready(sides.side(side)))
                        .add(sides.side(earlier)));
    }

    Drawing drawing() {
        List<Part> parts = new ArrayList<>();
        int path = 0;
        for (Part part : drawing.parts()) {
            List<Shape> shapes = new ArrayList<>();
            for (Shape shape : part.shapes()) {
                shapes.addAll(CutPaths.isCut(shape) ? left((Polyline) shape, sides.firstOf(path++)) : List.of(shape));
            }
            parts.add(new Part(part.mark(), part.description(), shapes));
        }
        return new Drawing(
                drawing.name(),
                drawing.title() + ", shared edges cut once",
                drawing.widthMm(),
                drawing.heightMm(),
                parts);
    }

    private List<Polyline> left(Polyline path, int first) {
        int count = path.isClosed() ? path.size() : path.size() - 1;
        int start = 0;
        while (start < count && !cut.containsKey(first + start)) {
            start++;
        }
        if (start == count) {
            return List.of(path);
        }
        OpenLines lines = new OpenLines(path.operation());
        if (path.isClosed()) {
            round(path, first, start, lines);
        } else {
            along(path, first, 0, count, lines);
        }
        return lines.paths();
    }

    /** Goes round from behind the last place where a side is cut already, so that no line is broken but there. */
    private void round(Polyline path, int first, int start, OpenLines lines) {
        Side side = sides.side(first + start);
        List<Side> gaps = gaps(first + start);
        int last = gaps.size() - 1;
        boolean reachesEnd = last >= 0
                && gaps.get(last).toX() == side.toX()
                && gaps.get(last).toY() == side.toY();
        int split = reachesEnd ? last : last + 1;
        gaps.subList(split, gaps.size()).forEach(gap -> lines.add(gap, 0));
        along(path, first, start + 1, start + path.size(), lines);
        gaps.subList(0, split).forEach(gap -> lines.add(gap, 0));
    }

    private void along(Polyline path, int first, int from, int to, OpenLines lines) {
        for (int i = from; i < to; i++) {
            int corner = i % path.size();
            gaps(first + corner).forEach(gap -> lines.add(gap, path.bulge(corner)));
        }
    }

    private List<Side> gaps(int side) {
        CutAlready already = cut.get(side);
        return already == null ? List.of(sides.side(side)) : already.left();
    }
}
