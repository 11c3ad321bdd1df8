package dev.calotte.book;

import dev.calotte.assembly.Patch;
import dev.calotte.document.Scene;
import dev.calotte.document.Scene.Piece;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;

/** The dome to be turned and touched: every hub, strut and panel with its mark. */
final class DomeScene {

    private final Desk desk;

    DomeScene(Desk desk) {
        this.desk = desk;
    }

    Scene scene() {
        List<Double> xyz = new ArrayList<>();
        for (Hub hub : desk.dome.hubs()) {
            xyz.add(tenth(hub.position().getX()));
            xyz.add(tenth(hub.position().getY()));
            xyz.add(tenth(hub.position().getZ()));
        }
        List<Piece> pieces = new ArrayList<>();
        desk.dome.panels().forEach(panel -> pieces.add(piece(panel)));
        desk.dome.struts().forEach(strut -> pieces.add(piece(strut)));
        desk.dome.hubs().forEach(hub -> pieces.add(piece(hub)));
        return new Scene(xyz, pieces);
    }

    /** A picture needs no more. */
    private static double tenth(double mm) {
        return Math.round(mm * 10) / 10.0;
    }

    private Piece piece(Panel panel) {
        PanelKind kind = desk.parts.kindOf(panel);
        Patch patch = desk.matter.patches().of(panel);
        return new Piece(
                desk.marks.of(panel),
                kind.mark(),
                kind.number(),
                panel.hubs(),
                "panel, narrowest width " + desk.cut(kind.triangle().narrowestWidth()) + ", row " + panel.row()
                        + ", patch " + patch.mark());
    }

    private Piece piece(Strut strut) {
        StrutKind kind = desk.parts.kindOf(strut);
        String dihedral = strut.dihedralRad().isPresent()
                ? ", dihedral " + Angle.text(strut.dihedralRad().getAsDouble(), 2)
                : "";
        return new Piece(
                desk.marks.of(strut),
                kind.mark(),
                kind.number(),
                List.of(strut.from(), strut.to()),
                "strut, cut " + desk.cut(kind.cutLengthMm()) + ", node to node " + desk.cut(kind.lengthMm())
                        + dihedral);
    }

    private Piece piece(Hub hub) {
        HubKind kind = desk.parts.kindOf(hub);
        return new Piece(
                desk.marks.of(hub),
                kind.mark(),
                0,
                List.of(hub.index()),
                "hub of " + Desk.count(kind.struts().size(), "strut") + (kind.open() ? ", on the base" : "") + ": "
                        + String.join(" ", kind.strutMarks()));
    }
}
