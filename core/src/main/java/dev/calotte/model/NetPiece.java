package dev.calotte.model;

import dev.calotte.drawing.Pose;
import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Panels that hang together, unfolded into the plane, with the tabs of all their sides that are no folds. */
final class NetPiece {

    private final Tabs tabs;
    private final SortedMap<Integer, List<Vector2D>> corners = new TreeMap<>();
    private final SortedSet<Integer> folds = new TreeSet<>();

    /** Panels by minus one minus their numbers, tabs by their sides. */
    private final Map<Integer, Convex> solids = new TreeMap<>();

    private NetPiece(Tabs tabs) {
        this.tabs = tabs;
    }

    static NetPiece of(int panel, Tabs tabs) {
        NetPiece piece = new NetPiece(tabs);
        piece.lay(panel, tabs.shell().flat(panel));
        return piece;
    }

    private void lay(int panel, List<Vector2D> places) {
        corners.put(panel, places);
        solids.put(-1 - panel, new Convex(places));
        for (int side = 3 * panel; side < 3 * panel + 3; side++) {
            if (tabs.has(side) && !folds.contains(tabs.shell().strut(side))) {
                List<Vector2D> tab = new ArrayList<>(List.of(to(side), from(side)));
                tab.addAll(tabs.reach(side, from(side), to(side)));
                solids.put(side, new Convex(tab));
            }
        }
    }

    private Vector2D from(int side) {
        return corners.get(side / 3).get(side % 3);
    }

    private Vector2D to(int side) {
        return corners.get(side / 3).get((side + 1) % 3);
    }

    /** Its panels, in their order. */
    List<Integer> panels() {
        return List.copyOf(corners.keySet());
    }

    /** Where the corners of a panel lie. */
    List<Vector2D> corners(int panel) {
        return corners.get(panel);
    }

    /** The struts along which it folds, in their order. */
    SortedSet<Integer> folds() {
        return Collections.unmodifiableSortedSet(folds);
    }

    /** The other piece as it lies when it is joined to this one along a side. */
    NetPiece broughtTo(int side, NetPiece other) {
        int twin = tabs.shell().twin(side);
        Vector2D here = to(side).subtract(from(side));
        Vector2D there = other.from(twin).subtract(other.to(twin));
        double turn = StrictMath.atan2(here.getY(), here.getX()) - StrictMath.atan2(there.getY(), there.getX());
        Pose turned = Pose.turned(turn);
        Pose pose = turned.withShift(from(side).subtract(turned.at(other.to(twin))));
        NetPiece moved = new NetPiece(tabs);
        moved.folds.addAll(other.folds);
        other.corners.forEach((panel, places) ->
                moved.lay(panel, places.stream().map(pose::at).toList()));
        return moved;
    }

    /** Whether another piece lies on this one, or too near, if they fold along a strut. */
    boolean collidesWith(NetPiece other, int fold, double apartMm) {
        int side = tabs.shell().side(fold);
        for (Map.Entry<Integer, Convex> mine : solids.entrySet()) {
            for (Map.Entry<Integer, Convex> theirs : other.solids.entrySet()) {
                boolean gone = mine.getKey() == side || theirs.getKey() == side;
                if (!gone && mine.getValue().collidesWith(theirs.getValue(), apartMm)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** This piece and another one that was brought to it, folding along a strut. */
    NetPiece joined(NetPiece brought, int fold) {
        NetPiece both = new NetPiece(tabs);
        both.folds.addAll(folds);
        both.folds.addAll(brought.folds);
        both.folds.add(fold);
        both.corners.putAll(corners);
        both.corners.putAll(brought.corners);
        both.solids.putAll(solids);
        both.solids.putAll(brought.solids);
        both.solids.remove(tabs.shell().side(fold));
        return both;
    }

    /** The sides round it, counter-clockwise from that of lowest number. */
    List<Integer> border() {
        int first = corners.keySet().stream()
                .flatMap(panel -> List.of(3 * panel, 3 * panel + 1, 3 * panel + 2).stream())
                .filter(side -> !isFold(side))
                .findFirst()
                .orElseThrow();
        List<Integer> border = new ArrayList<>();
        int side = first;
        do {
            border.add(side);
            side = Shell.after(side);
            while (isFold(side)) {
                side = Shell.after(tabs.shell().twin(side));
            }
        } while (side != first);
        return border;
    }

    private boolean isFold(int side) {
        return folds.contains(tabs.shell().strut(side));
    }

    /** Round it with its tabs, counter-clockwise. */
    List<Vector2D> outline() {
        List<Vector2D> outline = new ArrayList<>();
        for (int side : border()) {
            outline.add(from(side));
            if (tabs.has(side)) {
                outline.addAll(tabs.outer(side, from(side), to(side)));
            }
        }
        return outline;
    }

    /** The lines to fold along: between panels, then at tabs. */
    List<Fold> foldLines() {
        List<Fold> lines = new ArrayList<>();
        for (int strut : folds) {
            lines.add(line(tabs.shell().side(strut)));
        }
        for (int side : border()) {
            if (tabs.has(side)) {
                lines.add(line(side));
            }
        }
        return lines;
    }

    private Fold line(int side) {
        return new Fold(from(side), to(side), tabs.shell().isHollow(tabs.shell().strut(side)));
    }

    ConvexPolygon hull() {
        return ConvexPolygon.round(outline());
    }
}
