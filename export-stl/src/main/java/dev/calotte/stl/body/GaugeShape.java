package dev.calotte.stl.body;

import dev.calotte.document.Jig;
import dev.calotte.units.NumberText;
import org.locationtech.jts.geom.Polygon;

/** Angle gauges: flat plates whose edges in plan make the angle, with the angle written on them in degrees. */
final class GaugeShape {

    private static final double THICK = 5;
    private static final double SADDLE_WIDE = 30;
    private static final double LETTER = 7;
    /** Edges that are laid against something. */
    private static final double EDGE = 70;

    private final Jig.Gauge gauge;
    private final String text;

    GaugeShape(Jig.Gauge gauge) {
        this.gauge = gauge;
        this.text = NumberText.fixed(StrictMath.toDegrees(gauge.angleRad()), 1) + "\u00b0";
    }

    Relief relief() {
        return switch (gauge.use()) {
            case BEND -> bend();
            case BEVEL -> bevel();
            case SADDLE -> saddle();
        };
    }

    private Relief plate(Polygon area, double thick) {
        return Relief.empty().cover(area, Plane.level(thick));
    }

    /** One edge lies on the flat, the other on the tube; between them there is room for the bend. */
    private Relief bend() {
        double half = gauge.angleRad() / 2;
        double x = EDGE * StrictMath.cos(half);
        double y = -EDGE * StrictMath.sin(half);
        double nearX = 12 * StrictMath.cos(half);
        double nearY = -12 * StrictMath.sin(half);
        Polygon area = Axis.towards(0)
                .area(
                        -x, y, -nearX, nearY, -nearX, nearY + 6, nearX, nearY + 6, nearX, nearY, x, y, x, y + 25, 0, 22,
                        -x, y + 25);
        return written(plate(area, THICK), 10, THICK);
    }

    /** Stands on the saw's table; the slanting edge goes against the blade. */
    private Relief bevel() {
        double height = EDGE * StrictMath.sin(gauge.angleRad());
        double over = EDGE * StrictMath.cos(gauge.angleRad());
        double wide = 50;
        Polygon area = Axis.towards(0).area(0, 0, wide, 0, wide, 15, 20 + over, height, over, height);
        Letters letters = new Letters(LETTER, Plane.level(THICK + Letters.RAISED));
        return letters.write(plate(area, THICK), text, Axis.from(11, 5, 0));
    }

    /** A block under the edge of two panels; its two long upper edges make the angle, the ridge is cut off. */
    private Relief saddle() {
        double half = gauge.angleRad() / 2;
        double x = EDGE * StrictMath.sin(half);
        double y = -EDGE * StrictMath.cos(half);
        double flatX = 2 * StrictMath.sin(half);
        double flatY = -2 * StrictMath.cos(half);
        Polygon area = Axis.towards(0).area(-x, y, -x, y - 18, x, y - 18, x, y, flatX, flatY, -flatX, flatY);
        return written(plate(area, SADDLE_WIDE), y - 13, SADDLE_WIDE);
    }

    private Relief written(Relief plate, double y, double thick) {
        Letters letters = new Letters(LETTER, Plane.level(thick + Letters.RAISED));
        return letters.write(plate, text, Axis.from(-letters.widthMm(text) / 2, y, 0));
    }
}
