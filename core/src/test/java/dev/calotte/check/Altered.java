package dev.calotte.check;

import dev.calotte.check.RecordedDome.Figures;
import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.HubKind;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.PanelKind;
import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.check.RecordedDome.StrutKind;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A record in which one thing is other than it was.
 *
 * @param dome the record
 */
record Altered(RecordedDome dome) {

    RecordedDome figures(Figures other) {
        return of(other, dome.vertices(), dome.struts(), dome.panels(), dome.hubs());
    }

    RecordedDome vertices(List<Vector3D> others) {
        return of(dome.figures(), others, dome.struts(), dome.panels(), dome.hubs());
    }

    RecordedDome struts(List<Strut> others) {
        return of(dome.figures(), dome.vertices(), others, dome.panels(), dome.hubs());
    }

    RecordedDome panels(List<Panel> others) {
        return of(dome.figures(), dome.vertices(), dome.struts(), others, dome.hubs());
    }

    RecordedDome hubs(List<Hub> others) {
        return of(dome.figures(), dome.vertices(), dome.struts(), dome.panels(), others);
    }

    private RecordedDome of(
            Figures figures, List<Vector3D> vertices, List<Strut> struts, List<Panel> panels, List<Hub> hubs) {
        return new RecordedDome(
                figures,
                vertices,
                dome.strutKinds(),
                struts,
                dome.panelKinds(),
                panels,
                dome.hubKinds(),
                hubs,
                dome.opened());
    }

    private RecordedDome kinds(List<StrutKind> struts, List<PanelKind> panels, List<HubKind> hubs) {
        return new RecordedDome(
                dome.figures(),
                dome.vertices(),
                struts,
                dome.struts(),
                panels,
                dome.panels(),
                hubs,
                dome.hubs(),
                dome.opened());
    }

    RecordedDome strutKind(int at, UnaryOperator<StrutKind> change) {
        return kinds(Found.changed(dome.strutKinds(), at, change), dome.panelKinds(), dome.hubKinds());
    }

    RecordedDome panelKind(int at, UnaryOperator<PanelKind> change) {
        return kinds(dome.strutKinds(), Found.changed(dome.panelKinds(), at, change), dome.hubKinds());
    }

    RecordedDome hubKind(int at, UnaryOperator<HubKind> change) {
        return kinds(dome.strutKinds(), dome.panelKinds(), Found.changed(dome.hubKinds(), at, change));
    }

    RecordedDome strut(int at, UnaryOperator<Strut> change) {
        return struts(Found.changed(dome.struts(), at, change));
    }

    RecordedDome panel(int at, UnaryOperator<Panel> change) {
        return panels(Found.changed(dome.panels(), at, change));
    }

    RecordedDome hub(int at, UnaryOperator<Hub> change) {
        return hubs(Found.changed(dome.hubs(), at, change));
    }
}
