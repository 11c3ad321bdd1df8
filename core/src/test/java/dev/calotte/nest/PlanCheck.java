package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Checks a plan against its parts by means that made no part of it: distances and areas are those of JTS. */
final class PlanCheck {

    private static final double MM = 1e-6;
    private static final GeometryFactory PLANE = new GeometryFactory();

    private PlanCheck() {}

    static void check(CutPlan plan, List<Piece> pieces, double spacing) {
        for (Piece piece : pieces) {
            long found = plan.sheets().stream()
                    .flatMap(sheet -> sheet.parts().stream())
                    .filter(part -> part.mark().equals(piece.mark()))
                    .count();
            assertThat(found).as(piece.mark()).isEqualTo(piece.count());
        }
        int all = plan.sheets().stream().mapToInt(sheet -> sheet.parts().size()).sum();
        assertThat(all).isEqualTo(pieces.stream().mapToInt(Piece::count).sum());
        for (CutSheet sheet : plan.sheets()) {
            for (Placed part : sheet.parts()) {
                placed(part, pieces);
            }
            inside(sheet);
            apart(sheet, spacing);
            clear(sheet, spacing);
        }
        assertThat(plan.goal().bound()).isLessThanOrEqualTo(plan.goal().reached());
        assertThat(plan.utilisation()).isBetween(0.0, 1.0 + 1e-9);
    }

    /** The outline is where mirroring, turn and shift take the part, and the part may lie so. */
    private static void placed(Placed part, List<Piece> pieces) {
        Piece piece = pieces.stream()
                .filter(p -> p.mark().equals(part.mark()))
                .findFirst()
                .orElseThrow();
        ConvexPolygon net = piece.outline();
        assertThat(part.mirrored() && !piece.mayMirror()).isFalse();
        assertThat(part.outline().size()).isEqualTo(net.size());
        double flip = part.mirrored() ? -1 : 1;
        double cos = Math.cos(part.turnRad());
        double sin = Math.sin(part.turnRad());
        for (int c = 0; c < net.size(); c++) {
            double x = part.xMm() + flip * net.x(c) * cos - net.y(c) * sin;
            double y = part.yMm() + flip * net.x(c) * sin + net.y(c) * cos;
            int d = part.mirrored() ? net.size() - 1 - c : c;
            assertThat(part.outline().x(d)).isCloseTo(x, within(MM / 10));
            assertThat(part.outline().y(d)).isCloseTo(y, within(MM / 10));
        }
        assertThat(part.turnRad()).isBetween(0.0, 2 * Math.PI);
        piece.grainRad().ifPresent(grain -> {
            double across = flip * Math.cos(grain) * sin + Math.sin(grain) * cos;
            assertThat(across).as("grain of " + part.mark()).isCloseTo(0, within(1e-9));
        });
    }

    /** Inside the outline, and nowhere nearer to it than the margin. */
    private static void inside(CutSheet sheet, Outline outline) {
        Polygon border = polygon(outline.border());
        assertThat(border.isValid()).isTrue();
        for (Placed part : sheet.parts()) {
            Polygon shape = polygon(part.outline());
            double outside = shape.difference(border).getArea();
            assertThat(outside).as(part.mark()).isLessThanOrEqualTo(MM * shape.getLength());
            if (outline.marginMm() > 0) {
                double distance = shape.distance(border.getExteriorRing());
                assertThat(distance).as(part.mark()).isGreaterThanOrEqualTo(outline.marginMm() - MM);
            }
        }
    }

    private static void inside(CutSheet sheet) {
        if (sheet.stock() instanceof Outline outline) {
            inside(sheet, outline);
            return;
        }
        double margin = sheet.stock() instanceof Roll roll ? roll.marginMm() : ((Sheet) sheet.stock()).marginMm();
        if (sheet.stock() instanceof Sheet whole) {
            assertThat(sheet.lengthMm()).isEqualTo(whole.lengthMm());
            assertThat(sheet.widthMm()).isEqualTo(whole.widthMm());
        }
        for (Placed part : sheet.parts()) {
            for (int c = 0; c < part.outline().size(); c++) {
                assertThat(part.outline().x(c)).isBetween(margin - MM, sheet.lengthMm() - margin + MM);
                assertThat(part.outline().y(c)).isBetween(margin - MM, sheet.widthMm() - margin + MM);
            }
        }
    }

    private static void apart(CutSheet sheet, double spacing) {
        List<Polygon> polygons =
                sheet.parts().stream().map(part -> polygon(part.outline())).toList();
        for (int i = 0; i < polygons.size(); i++) {
            for (int j = 0; j < i; j++) {
                Polygon a = polygons.get(i);
                Polygon b = polygons.get(j);
                if (spacing > 0) {
                    assertThat(a.distance(b)).isGreaterThanOrEqualTo(spacing - MM);
                } else if (a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
                    // lying on each other by no more than MM anywhere makes a sliver
                    assertThat(a.intersection(b).getArea()).isLessThanOrEqualTo(MM * a.getLength());
                }
            }
        }
    }

    private static void clear(CutSheet sheet, double spacing) {
        for (Offcut rest : sheet.offcuts()) {
            ConvexPolygon outline = ConvexPolygon.of(
                    rest.xMm(),
                    rest.yMm(),
                    rest.xMm() + rest.lengthMm(),
                    rest.yMm(),
                    rest.xMm() + rest.lengthMm(),
                    rest.yMm() + rest.widthMm(),
                    rest.xMm(),
                    rest.yMm() + rest.widthMm());
            for (Placed part : sheet.parts()) {
                assertThat(polygon(outline).distance(polygon(part.outline()))).isGreaterThanOrEqualTo(spacing - MM);
            }
            assertThat(rest.xMm() + rest.lengthMm()).isLessThanOrEqualTo(sheet.lengthMm() + MM);
            assertThat(rest.yMm() + rest.widthMm()).isLessThanOrEqualTo(sheet.widthMm() + MM);
        }
    }

    private static Polygon polygon(dev.calotte.geometry.Polygon outline) {
        Coordinate[] ring = new Coordinate[outline.size() + 1];
        for (int c = 0; c <= outline.size(); c++) {
            ring[c] = new Coordinate(outline.corner(c).getX(), outline.corner(c).getY());
        }
        return PLANE.createPolygon(ring);
    }
}
