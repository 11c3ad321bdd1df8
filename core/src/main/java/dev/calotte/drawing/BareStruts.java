package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Strut;
import java.util.List;

/** The struts that openings left without a panel. */
final class BareStruts {

    private BareStruts() {}

    static List<Strut> of(Dome dome) {
        boolean[] closed = new boolean[dome.struts().size()];
        dome.panels().forEach(panel -> panel.struts().forEach(s -> closed[s] = true));
        return dome.struts().stream().filter(strut -> !closed[strut.index()]).toList();
    }
}
