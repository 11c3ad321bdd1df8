package dev.calotte.solid;

import dev.calotte.document.Mesh;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The triangles of a shell: outside, inside, and between its two rings upright walls down to the floor and its edge. */
final class ShellSkin {

    private final Dome dome;
    private final double floor;
    private final List<Vector3D> vertices = new ArrayList<>();
    private final List<Integer> corners = new ArrayList<>();
    private final int hubs;

    ShellSkin(Dome dome, double floor, Vector3D[] outer, Vector3D[] inner) {
        this.dome = dome;
        this.floor = floor;
        this.hubs = outer.length;
        vertices.addAll(List.of(outer));
        vertices.addAll(List.of(inner));
    }

    Mesh mesh(String title) {
        for (Panel panel : dome.panels()) {
            List<Integer> at = panel.hubs();
            add(at.get(0), at.get(1), at.get(2));
            add(hubs + at.get(0), hubs + at.get(2), hubs + at.get(1));
        }
        List<Integer> ring = dome.baseRing();
        List<Integer> outer = feet(ring, 0);
        List<Integer> inner = feet(ring, hubs);
        for (int i = 0; i < ring.size(); i++) {
            int j = (i + 1) % ring.size();
            addWall(ring.get(i), ring.get(j), outer.get(i), outer.get(j));
            addWall(hubs + ring.get(j), hubs + ring.get(i), inner.get(j), inner.get(i));
            add(outer.get(i), inner.get(i), inner.get(j));
            add(outer.get(i), inner.get(j), outer.get(j));
        }
        return packed(title);
    }

    /** The vertex under each hub of the ring: the hub itself if it stands on the floor. */
    private List<Integer> feet(List<Integer> ring, int first) {
        List<Integer> feet = new ArrayList<>();
        for (int hub : ring) {
            Vector3D at = vertices.get(first + hub);
            if (at.getZ() - floor <= 1e-9 * at.getNorm()) {
                feet.add(first + hub);
            } else {
                feet.add(vertices.size());
                vertices.add(new Vector3D(at.getX(), at.getY(), floor));
            }
        }
        return feet;
    }

    private void addWall(int here, int there, int footHere, int footThere) {
        if (footHere != here) {
            add(here, footHere, footThere);
        }
        if (footThere != there) {
            add(here, footThere, there);
        }
    }

    private void add(int a, int b, int c) {
        corners.addAll(List.of(a, b, c));
    }

    private Mesh packed(String title) {
        double[] xyz = new double[3 * vertices.size()];
        double x = vertices.stream().mapToDouble(Vector3D::getX).min().orElseThrow();
        double y = vertices.stream().mapToDouble(Vector3D::getY).min().orElseThrow();
        for (int i = 0; i < vertices.size(); i++) {
            xyz[3 * i] = vertices.get(i).getX() - x;
            xyz[3 * i + 1] = vertices.get(i).getY() - y;
            xyz[3 * i + 2] = vertices.get(i).getZ() - floor;
        }
        return new Mesh(
                "model",
                title,
                xyz,
                corners.stream().mapToInt(Integer::intValue).toArray());
    }
}
