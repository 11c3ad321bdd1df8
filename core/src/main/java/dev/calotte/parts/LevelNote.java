package dev.calotte.parts;

import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Size;
import java.util.Optional;

/** Tells how many kinds of pieces a level base costs or saves. */
final class LevelNote {

    private LevelNote() {}

    /** A sentence, if the base was levelled and a hub moved; kinds are counted from node to node. */
    static Optional<String> of(Dome dome) {
        return dome.leveling().filter(l -> l.movedHubs() > 0).map(l -> sentence(dome));
    }

    private static String sentence(Dome dome) {
        Parts now = Parts.of(dome, Joinery.nodeToNode());
        Parts asIs = Parts.of(
                Dome.of(dome.spec().withBase(Base.AS_IS).withSize(Size.radius(dome.radiusMm()))), Joinery.nodeToNode());
        return "Kinds from node to node: " + kinds(now) + " with the level base; " + kinds(asIs)
                + " with the base as-is.";
    }

    private static String kinds(Parts parts) {
        return parts.strutKinds().size() + " of struts and "
                + parts.panelKinds().size() + " of panels";
    }
}
