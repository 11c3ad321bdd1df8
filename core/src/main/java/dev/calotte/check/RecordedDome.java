package dev.calotte.check;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What a record says of a dome; nothing of it is taken for true. Millimetres and degrees.
 *
 * @param figures its measures
 * @param vertices where its hubs are
 * @param strutKinds the kinds of its struts
 * @param struts its struts
 * @param panelKinds the kinds of its panels
 * @param panels its panels
 * @param hubKinds the kinds of its hubs
 * @param hubs its hubs
 * @param opened whether panels were left out of it
 */
public record RecordedDome(
        Figures figures,
        List<Vector3D> vertices,
        List<StrutKind> strutKinds,
        List<Strut> struts,
        List<PanelKind> panelKinds,
        List<Panel> panels,
        List<HubKind> hubKinds,
        List<Hub> hubs,
        boolean opened) {

    /**
     * Copies the lists.
     *
     * @param figures its measures
     * @param vertices where its hubs are
     * @param strutKinds the kinds of its struts
     * @param struts its struts
     * @param panelKinds the kinds of its panels
     * @param panels its panels
     * @param hubKinds the kinds of its hubs
     * @param hubs its hubs
     * @param opened whether panels were left out of it
     */
    public RecordedDome {
        vertices = List.copyOf(vertices);
        strutKinds = List.copyOf(strutKinds);
        struts = List.copyOf(struts);
        panelKinds = List.copyOf(panelKinds);
        panels = List.copyOf(panels);
        hubKinds = List.copyOf(hubKinds);
        hubs = List.copyOf(hubs);
    }

    /**
     * Measures of the whole.
     *
     * @param radius of the sphere, in millimetres
     * @param height lowest hub to highest, in millimetres
     * @param surfaceArea of all panels, in square metres
     */
    public record Figures(double radius, double height, double surfaceArea) {}

    /**
     * A kind of struts.
     *
     * @param mark its mark
     * @param length from hub centre to hub centre
     * @param cutLength as it is cut
     * @param chordFactor length over radius
     * @param count how many there are
     * @param gaps from the hub centres to the ends
     * @param axialAngle to the tangent plane at its ends, in degrees
     * @param mergeError how far struts of the kind differ from it
     * @param flattened whether its ends are flattened and bent, so that it is longer than it reaches
     */
    public record StrutKind(
            String mark,
            double length,
            double cutLength,
            double chordFactor,
            int count,
            List<Double> gaps,
            double axialAngle,
            double mergeError,
            boolean flattened) {

        /**
         * Copies the list.
         *
         * @param mark its mark
         * @param length from hub centre to hub centre
         * @param cutLength as it is cut
         * @param chordFactor length over radius
         * @param count how many there are
         * @param gaps from the hub centres to the ends
         * @param axialAngle to the tangent plane at its ends, in degrees
         * @param mergeError how far struts of the kind differ from it
         * @param flattened whether its ends are flattened and bent, so that it is longer than it reaches
         */
        public StrutKind {
            gaps = List.copyOf(gaps);
        }
    }

    /**
     * A strut.
     *
     * @param mark its mark
     * @param kind the mark of its kind
     * @param from the vertex at one end
     * @param to the vertex at the other
     * @param dihedral between its panels, in degrees; not a number if it has no two
     */
    public record Strut(String mark, String kind, int from, int to, double dihedral) {}

    /**
     * A kind of panels.
     *
     * @param mark its mark
     * @param hand left, right or none
     * @param count how many there are
     * @param sides rising
     * @param angles opposite to them, in degrees
     * @param altitudes on them
     * @param narrowest the least altitude
     * @param area in square metres
     */
    public record PanelKind(
            String mark,
            String hand,
            int count,
            List<Double> sides,
            List<Double> angles,
            List<Double> altitudes,
            double narrowest,
            double area) {

        /**
         * Copies the lists.
         *
         * @param mark its mark
         * @param hand left, right or none
         * @param count how many there are
         * @param sides rising
         * @param angles opposite to them, in degrees
         * @param altitudes on them
         * @param narrowest the least altitude
         * @param area in square metres
         */
        public PanelKind {
            sides = List.copyOf(sides);
            angles = List.copyOf(angles);
            altitudes = List.copyOf(altitudes);
        }
    }

    /**
     * A panel.
     *
     * @param mark its mark
     * @param kind the mark of its kind
     * @param vertices three, counter-clockwise from outside
     * @param row from the crown
     */
    public record Panel(String mark, String kind, List<Integer> vertices, int row) {

        /**
         * Copies the list.
         *
         * @param mark its mark
         * @param kind the mark of its kind
         * @param vertices three, counter-clockwise from outside
         * @param row from the crown
         */
        public Panel {
            vertices = List.copyOf(vertices);
        }
    }

    /**
     * A kind of hubs.
     *
     * @param mark its mark
     * @param hand left, right or none
     * @param count how many there are
     * @param struts the marks of the kinds that meet there, counter-clockwise from outside
     * @param gaps the angles between them, in degrees
     * @param axialAngles of its struts, in degrees
     * @param open whether it lies at an edge
     */
    public record HubKind(
            String mark,
            String hand,
            int count,
            List<String> struts,
            List<Double> gaps,
            List<Double> axialAngles,
            boolean open) {

        /**
         * Copies the lists.
         *
         * @param mark its mark
         * @param hand left, right or none
         * @param count how many there are
         * @param struts the marks of the kinds that meet there, counter-clockwise from outside
         * @param gaps the angles between them, in degrees
         * @param axialAngles of its struts, in degrees
         * @param open whether it lies at an edge
         */
        public HubKind {
            struts = List.copyOf(struts);
            gaps = List.copyOf(gaps);
            axialAngles = List.copyOf(axialAngles);
        }
    }

    /**
     * A hub.
     *
     * @param mark its mark
     * @param kind the mark of its kind
     * @param vertex where it is
     * @param row from the crown
     */
    public record Hub(String mark, String kind, int vertex, int row) {}

    Vector3D vertex(int index) {
        return vertices.get(index);
    }

    /**
     * How far apart the ends of the longest strut are.
     *
     * @return millimetres between vertices; not a number if there are no struts
     */
    public double longestStrutMm() {
        return struts.stream()
                .mapToDouble(strut -> vertex(strut.from()).distance(vertex(strut.to())))
                .max()
                .orElse(Double.NaN);
    }

    /** How far any strut may be from its kind. */
    double mergeError() {
        return strutKinds.stream().mapToDouble(StrutKind::mergeError).max().orElse(0);
    }
}
