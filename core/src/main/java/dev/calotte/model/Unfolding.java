package dev.calotte.model;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Cuts a shell into few pieces that unfold without lying on themselves and fit a sheet. Every panel begins as a piece of
 * its own; joints are then gone through in some order, and two pieces become one wherever the result still lies flat with
 * all its tabs. Of several orders the one that leaves the fewest pieces is taken.
 */
final class Unfolding {

    /** Panels times orders: what is worth trying. */
    private static final int EFFORT = 12_000;

    private static final int MOST_ORDERS = 40;

    /** Turns at which a piece is tried in the sheet, over a quarter. */
    private static final int TURNS = 36;

    private final Tabs tabs;
    private final double longMm;
    private final double shortMm;
    private final double apartMm;

    private NetPiece[] pieceOf;

    /**
     * Unfolds into a field.
     *
     * @param tabs the shell with its tabs
     * @param field one side of the room on a sheet, and the other
     * @param apartMm how far panels and tabs of a piece stay from each other
     */
    Unfolding(Tabs tabs, Vector2D field, double apartMm) {
        this.tabs = tabs;
        this.longMm = Math.max(field.getX(), field.getY());
        this.shortMm = Math.min(field.getX(), field.getY());
        this.apartMm = apartMm;
        this.pieceOf = new NetPiece[0];
    }

    /** Each panel by itself. */
    List<NetPiece> single() {
        List<NetPiece> pieces = new ArrayList<>();
        for (int panel = 0; panel < tabs.shell().panels().size(); panel++) {
            pieces.add(NetPiece.of(panel, tabs));
        }
        return pieces;
    }

    List<NetPiece> pieces() {
        List<NetPiece> best = single();
        int orders = Math.max(1, Math.min(MOST_ORDERS, EFFORT / best.size()));
        for (int order = 0; order < orders; order++) {
            List<NetPiece> found = joined(order);
            best = found.size() < best.size() ? found : best;
        }
        return best;
    }

    private List<NetPiece> joined(int order) {
        pieceOf = single().toArray(NetPiece[]::new);
        List<Integer> joints = new ArrayList<>(tabs.shell().joints());
        if (order > 0) {
            joints.sort(Comparator.comparingLong(strut -> mixed(strut + ((long) order << 32))));
        }
        for (int strut : joints) {
            tryFold(strut);
        }
        List<NetPiece> pieces = new ArrayList<>();
        for (int panel = 0; panel < pieceOf.length; panel++) {
            if (pieceOf[panel].panels().get(0) == panel) {
                pieces.add(pieceOf[panel]);
            }
        }
        return pieces;
    }

    /** Scatters numbers, always in the same way (the finalizer of G. L. Steele, D. Lea and C. H. Flood, 2014, figure 16). */
    private static long mixed(long number) {
        long z = number * 0x9e3779b97f4a7c15L;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    private void tryFold(int strut) {
        int side = tabs.shell().side(strut);
        NetPiece here = pieceOf[side / 3];
        NetPiece there = pieceOf[tabs.shell().twin(side) / 3];
        if (here.equals(there)) {
            return;
        }
        NetPiece brought = here.broughtTo(side, there);
        if (here.collidesWith(brought, strut, apartMm)) {
            return;
        }
        NetPiece both = here.joined(brought, strut);
        if (fits(both.hull())) {
            both.panels().forEach(panel -> pieceOf[panel] = both);
        }
    }

    private boolean fits(ConvexPolygon round) {
        ConvexPolygon hull = ModelPart.simplified(round);
        for (int turn = 0; turn < 2 * TURNS; turn++) {
            double angle = turn * StrictMath.PI / 2 / TURNS;
            if (hull.extent(Disc.at(angle, 1, 0)) <= longMm && hull.extent(Disc.at(angle, 0, 1)) <= shortMm) {
                return true;
            }
        }
        return false;
    }
}
