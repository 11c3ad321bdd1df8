package dev.calotte.solid;

import dev.calotte.document.Jig;
import dev.calotte.document.Jig.Arm;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Hubs that dowels or tubes are put into. All struts end at the same distance from their hubs' centres, as near as the
 * narrowest hub allows, so that a dowel is as long as its strut at the scale less twice that.
 */
final class SocketHubs {

    /** The screw in the middle needs so much. */
    private static final double LEAST_END_MM = 5;

    private final Parts parts;
    private final JigSpec spec;
    private final JigSpec.Sockets wanted;

    SocketHubs(Parts parts, JigSpec spec, JigSpec.Sockets wanted) {
        this.parts = parts;
        this.spec = spec;
        this.wanted = wanted;
    }

    List<Jig> list() {
        double end = endMm();
        checkShort(end);
        List<Jig> hubs = new ArrayList<>();
        for (HubKind kind : parts.hubKinds()) {
            hubs.add(new Jig.Socket(
                    "socket-" + kind.mark(),
                    "Hub " + kind.mark() + ", not structural: for models and light shades only;"
                            + " outside up, from the arrow counter-clockwise " + String.join(" ", kind.strutMarks())
                            + "; dowels " + dowels(kind, end),
                    kind.count(),
                    wanted.strut(),
                    HubArms.of(kind),
                    end,
                    wanted.depthMm()));
        }
        return hubs;
    }

    /** What to cut for them. */
    String note() {
        return "Printed hubs are not structural: they are for models and light shades only. Cut their dowels "
                + dowels(parts.strutKinds().stream(), endMm()) + ".";
    }

    private String dowels(HubKind kind, double end) {
        return dowels(kind.struts().stream().distinct().sorted().map(parts::strutKind), end);
    }

    private String dowels(Stream<StrutKind> kinds, double end) {
        return String.join(
                ", ",
                kinds.map(strut -> strut.mark() + " " + JigSpec.text(lengthMm(strut, end)))
                        .toList());
    }

    private double lengthMm(StrutKind strut, double end) {
        return strut.lengthMm() / wanted.scale() - 2 * end;
    }

    /** In plan sockets begin nearer than along the strut, by its tilt and because its lowest line reaches furthest in. */
    private double endMm() {
        double inner = wanted.strut().widthMm() / 2 + spec.clearanceMm();
        double most = 0;
        for (HubKind kind : parts.hubKinds()) {
            List<Arm> arms = HubArms.of(kind);
            double least = Math.max(LEAST_END_MM + spec.wallMm(), HubArms.clearMm(arms, inner));
            for (Arm arm : arms) {
                double lower = wanted.strut().depthMm() / 2 * StrictMath.sin(arm.tiltRad());
                most = Math.max(most, (least + lower) / StrictMath.cos(arm.tiltRad()));
            }
        }
        return Math.ceil(2 * most) / 2;
    }

    private void checkShort(double end) {
        StrutKind shortest = parts.strutKinds().get(0);
        double free = lengthMm(shortest, end) - 2 * wanted.depthMm();
        if (free < wanted.depthMm()) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "jigs.sockets",
                    "at that scale strut " + shortest.mark() + " is "
                            + JigSpec.text(shortest.lengthMm() / wanted.scale())
                            + " from node to node; its hubs would nearly touch.",
                    "Use a larger scale, thinner dowels or a smaller depth.");
        }
    }
}
