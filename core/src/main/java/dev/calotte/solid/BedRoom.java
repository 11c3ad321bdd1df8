package dev.calotte.solid;

import dev.calotte.document.Jig;
import dev.calotte.document.Jig.Arm;
import dev.calotte.document.StrutSection;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether what is printed in one piece has room on the bed. Sizes are those of the largest box that its shape needs, a
 * little more where marks differ in length; hub jigs and the test of the fit see to it themselves.
 */
record BedRoom(JigSpec spec) {

    private static final double GAUGE_EDGE_MM = 70;
    private static final double GAUGE_DEEP_MM = 25;
    private static final double GAUGE_HIGH_MM = 31;
    private static final double BEVEL_FOOT_MM = 50;
    private static final double HOLD_MM = 40;
    private static final double LEAST_BLOCK_WALL_MM = 2.4;
    private static final double TAG_MM = 34;
    private static final double TAG_DEEP_MM = 26;
    private static final double FLAP_MM = 36;
    private static final double LETTERS_MM = 9;

    /** What lies on the bed, and how high it stands. */
    private record Box(double longMm, double wideMm, double highMm) {}

    void check(Jig jig) {
        box(jig).filter(box -> !takes(box)).ifPresent(box -> {
            throw refusal(jig, box);
        });
    }

    /** Straight, or turned by an eighth. */
    private boolean takes(Box box) {
        Bed bed = spec.bed();
        double turned = (box.longMm + box.wideMm) / Math.sqrt(2);
        return box.highMm <= bed.heightMm()
                && (bed.takes(box.longMm, box.wideMm)
                        || bed.takes(box.wideMm, box.longMm)
                        || bed.takes(turned, turned));
    }

    private CalotteException refusal(Jig jig, Box box) {
        double free = 2 * Bed.MARGIN_MM;
        return new CalotteException(
                Code.IMPOSSIBLE,
                "jigs.bed",
                String.format(
                        Locale.ROOT,
                        "%s is %.0f mm by %.0f mm and %.0f mm high, and the bed has room for %.0f mm by %.0f mm, %.0f mm high.",
                        jig.mark(),
                        Math.ceil(box.longMm),
                        Math.ceil(box.wideMm),
                        Math.ceil(box.highMm),
                        spec.bed().lengthMm() - free,
                        spec.bed().widthMm() - free,
                        spec.bed().heightMm()),
                "Use a printer with more room, or leave the section out.");
    }

    private Optional<Box> box(Jig jig) {
        if (jig instanceof Jig.Gauge gauge) {
            return Optional.of(gauge(gauge));
        }
        if (jig instanceof Jig.Mitre mitre) {
            return Optional.of(mitre(mitre));
        }
        if (jig instanceof Jig.Drill drill) {
            double wall = Math.max(spec.wallMm(), LEAST_BLOCK_WALL_MM);
            double length = 2.5 * drill.holeEdgeMm() + drill.holeMm() + wall;
            return Optional.of(new Box(length, drill.flatMm() + 2 * (spec.clearanceMm() + wall), GAUGE_HIGH_MM));
        }
        return jig instanceof Jig.Socket socket ? Optional.of(socket(socket)) : Optional.empty();
    }

    private static Box gauge(Jig.Gauge gauge) {
        double sin = StrictMath.sin(gauge.angleRad() / 2);
        double cos = StrictMath.cos(gauge.angleRad() / 2);
        return switch (gauge.use()) {
            case BEND -> new Box(2 * GAUGE_EDGE_MM * cos, GAUGE_DEEP_MM + GAUGE_EDGE_MM * sin, GAUGE_HIGH_MM);
            case SADDLE -> new Box(2 * GAUGE_EDGE_MM * sin, GAUGE_DEEP_MM + GAUGE_EDGE_MM * cos, GAUGE_HIGH_MM);
            case BEVEL ->
                new Box(
                        BEVEL_FOOT_MM + GAUGE_EDGE_MM * Math.abs(StrictMath.cos(gauge.angleRad())),
                        GAUGE_EDGE_MM,
                        GAUGE_HIGH_MM);
        };
    }

    private Box mitre(Jig.Mitre mitre) {
        double wall = Math.max(spec.wallMm(), LEAST_BLOCK_WALL_MM);
        double wide = mitre.lyingMm() + 2 * (spec.clearanceMm() + wall);
        double deep = Math.max(0.6 * mitre.standingMm() + wall, TAG_DEEP_MM) + LEAST_BLOCK_WALL_MM;
        double away = Math.abs(StrictMath.tan(mitre.bladeTiltRad()) / StrictMath.cos(mitre.gaugeRad()));
        double high = HOLD_MM + Math.abs(StrictMath.tan(mitre.gaugeRad())) * wide + away * deep;
        return new Box(wide + TAG_MM, deep, high);
    }

    private Box socket(Jig.Socket socket) {
        StrutSection strut = socket.strut();
        double reach = socket.endMm() + socket.depthMm();
        double foot = strut.widthMm() / 2 + spec.clearanceMm() + spec.wallMm() + LETTERS_MM;
        double across = 2 * StrictMath.hypot(reach, foot);
        double steepest = socket.arms().stream().mapToDouble(Arm::tiltRad).max().orElseThrow();
        double high = strut.depthMm() + 2 * spec.wallMm() + reach * StrictMath.sin(steepest) + LETTERS_MM;
        return new Box(across + FLAP_MM, across, high);
    }
}
