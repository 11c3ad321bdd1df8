package dev.calotte.solid;

import dev.calotte.document.Wireframe;
import dev.calotte.document.Wireframe.Layer;
import dev.calotte.document.Wireframe.Sort;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The frame in space: a point for each hub, a line for each strut, a face for each panel, in a layer for each kind.
 *
 * <pre>{@code
 * Wireframe frame = FrameWires.of("Shelter", parts);
 * }</pre>
 */
public final class FrameWires {

    private final Dome dome;
    private final Parts parts;

    private FrameWires(Parts parts) {
        this.dome = parts.dome();
        this.parts = parts;
    }

    /**
     * Draws the frame from node to node, in the dome's own coordinates: the centre of the sphere is the origin.
     *
     * @param title what to call it
     * @param parts the parts of the dome
     * @return the document {@code frame-3d}
     */
    public static Wireframe of(String title, Parts parts) {
        return new Wireframe("frame-3d", title, new FrameWires(parts).layers());
    }

    private List<Layer> layers() {
        Map<String, List<Vector3D>> hubs = new LinkedHashMap<>();
        Map<String, List<Vector3D>> struts = new LinkedHashMap<>();
        Map<String, List<Vector3D>> panels = new LinkedHashMap<>();
        parts.hubKinds().stream().map(HubKind::mark).forEach(m -> hubs.put(m, new ArrayList<>()));
        parts.strutKinds().stream().map(StrutKind::mark).forEach(m -> struts.put(m, new ArrayList<>()));
        parts.panelKinds().stream().map(PanelKind::mark).forEach(m -> panels.put(m, new ArrayList<>()));
        for (Hub hub : dome.hubs()) {
            hubs.get(parts.kindOf(hub).mark()).add(hub.position());
        }
        for (Strut strut : dome.struts()) {
            struts.get(parts.kindOf(strut).mark()).addAll(positions(List.of(strut.from(), strut.to())));
        }
        for (Panel panel : dome.panels()) {
            panels.get(parts.kindOf(panel).mark()).addAll(positions(panel.hubs()));
        }
        List<Layer> layers = new ArrayList<>();
        hubs.forEach((mark, points) -> layers.add(layer("HUBS-" + mark, Sort.POINTS, points)));
        struts.forEach((mark, points) -> layers.add(layer("STRUTS-" + mark, Sort.LINES, points)));
        panels.forEach((mark, points) -> layers.add(layer("PANELS-" + mark, Sort.FACES, points)));
        return layers;
    }

    private List<Vector3D> positions(List<Integer> hubs) {
        return hubs.stream().map(h -> dome.hubs().get(h).position()).toList();
    }

    private static Layer layer(String name, Sort sort, List<Vector3D> points) {
        double[] xyz = points.stream()
                .flatMapToDouble(p -> DoubleStream.of(p.getX(), p.getY(), p.getZ()))
                .toArray();
        return new Layer(name, sort, xyz);
    }
}
