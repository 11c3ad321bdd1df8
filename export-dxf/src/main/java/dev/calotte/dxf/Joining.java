package dev.calotte.dxf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;

/**
 * Joins the lines and arcs of a layer end to end. Those that follow each other in the file are joined first; what is then
 * still open is joined with whatever ends at the same place, the earliest in the file first.
 */
final class Joining {

    /** Ends that are no further apart meet; millimetres. */
    private static final double MEET_MM = 1e-3;

    private static final long MOST_COMPARISONS = 50_000_000;

    private final List<Trace> traces;
    private final List<Chain> chains = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Origin> origins = new ArrayList<>();

    Joining(List<Trace> traces) {
        this.traces = traces;
    }

    void add(Origin origin, Link link) {
        origins.add(origin);
        links.add(link);
    }

    void join(double unitMm) throws DxfFormatException {
        double apart = MEET_MM / unitMm;
        for (int i = 0; i < links.size(); i++) {
            Chain last = chains.isEmpty() ? null : chains.get(chains.size() - 1);
            if (last == null || last.isRound(apart) || !last.takes(links.get(i), apart)) {
                chains.add(new Chain(origins.get(i), links.get(i)));
            }
        }
        for (Chain chain : joined(apart)) {
            traces.add(chain.trace(apart));
        }
    }

    private List<Chain> joined(double apart) throws DxfFormatException {
        Ends ends = new Ends(apart);
        for (int i = 0; i < chains.size(); i++) {
            if (!chains.get(i).isRound(apart)) {
                ends.add(chains.get(i), i);
            }
        }
        List<Chain> done = new ArrayList<>();
        for (int i = 0; i < chains.size(); i++) {
            Chain chain = chains.get(i);
            if (chain.isRound(apart)) {
                done.add(chain);
            } else if (ends.remove(i)) {
                extend(chain, ends, apart);
                chain.reverse();
                extend(chain, ends, apart);
                chain.reverse();
                done.add(chain);
            }
        }
        return done;
    }

    private void extend(Chain chain, Ends ends, double apart) throws DxfFormatException {
        while (!chain.isRound(apart)) {
            int next = ends.at(chain.endX(), chain.endY());
            if (next < 0) {
                return;
            }
            ends.remove(next);
            chain.append(chains.get(next), apart);
        }
    }

    /** Links end to end. */
    private static final class Chain {

        private final Origin origin;
        private List<Link> links = new ArrayList<>();

        Chain(Origin origin, Link link) {
            this.origin = origin;
            links.add(link);
        }

        private Link first() {
            return links.get(0);
        }

        private Link last() {
            return links.get(links.size() - 1);
        }

        double endX() {
            return last().toX();
        }

        double endY() {
            return last().toY();
        }

        boolean isRound(double apart) {
            return links.size() > 1 && meet(endX(), endY(), first().fromX(), first().fromY(), apart);
        }

        /** Appends a link that meets its end; a chain of one link may be turned for it. */
        boolean takes(Link link, double apart) {
            if (!touches(link, apart) && links.size() == 1) {
                reverse();
                if (!touches(link, apart)) {
                    reverse();
                }
            }
            boolean touches = touches(link, apart);
            if (touches) {
                boolean along = meet(endX(), endY(), link.fromX(), link.fromY(), apart);
                links.add(along ? link : link.reversed());
            }
            return touches;
        }

        private boolean touches(Link link, double apart) {
            return meet(endX(), endY(), link.fromX(), link.fromY(), apart)
                    || meet(endX(), endY(), link.toX(), link.toY(), apart);
        }

        void append(Chain other, double apart) {
            if (!meet(endX(), endY(), other.first().fromX(), other.first().fromY(), apart)) {
                other.reverse();
            }
            links.addAll(other.links);
        }

        void reverse() {
            List<Link> turned = new ArrayList<>(links.size());
            for (Link link : links) {
                turned.add(link.reversed());
            }
            Collections.reverse(turned);
            links = turned;
        }

        Trace trace(double apart) {
            boolean round = isRound(apart);
            Trace trace = new Trace(origin, round);
            for (Link link : links) {
                trace.add(link.fromX(), link.fromY(), link.bulge());
            }
            if (!round) {
                trace.add(endX(), endY(), 0);
            }
            return trace;
        }
    }

    private static boolean meet(double x, double y, double otherX, double otherY, double apart) {
        return Math.abs(x - otherX) <= apart && Math.abs(y - otherY) <= apart;
    }

    /** Where chains end, in cells as wide as the ends may be apart. */
    private final class Ends {

        private final TreeMap<Long, List<Integer>> cells = new TreeMap<>();
        private final List<Boolean> there = new ArrayList<>();
        private final double apart;
        private long comparisons;

        Ends(double apart) {
            this.apart = apart;
        }

        void add(Chain chain, int number) {
            while (there.size() <= number) {
                there.add(false);
            }
            there.set(number, true);
            put(chain.first().fromX(), chain.first().fromY(), number);
            put(chain.endX(), chain.endY(), number);
        }

        private void put(double x, double y, int number) {
            cells.computeIfAbsent(key(cell(x), cell(y)), cell -> new ArrayList<>())
                    .add(number);
        }

        boolean remove(int number) {
            return there.set(number, false);
        }

        private long cell(double value) {
            return (long) Math.floor(value / apart);
        }

        /** Two cells may have the same key; that they are far apart is seen when their ends are compared. */
        private long key(long column, long row) {
            return column * 0x9E37_79B9L + row;
        }

        /** The first chain that ends at a place, and is still there; -1 if there is none. */
        int at(double x, double y) throws DxfFormatException {
            int found = -1;
            for (int column = -1; column <= 1; column++) {
                for (int row = -1; row <= 1; row++) {
                    int first = first(cells.get(key(cell(x) + column, cell(y) + row)), x, y);
                    found = found < 0 || (first >= 0 && first < found) ? first : found;
                }
            }
            return found;
        }

        private int first(List<Integer> cell, double x, double y) throws DxfFormatException {
            if (cell == null) {
                return -1;
            }
            cell.removeIf(number -> !there.get(number));
            comparisons += cell.size() + 1;
            if (comparisons > MOST_COMPARISONS) {
                throw origins.get(0).wrong("too many lines of its layer end close to each other");
            }
            for (int number : cell) {
                if (ends(chains.get(number), x, y)) {
                    return number;
                }
            }
            return -1;
        }

        private boolean ends(Chain chain, double x, double y) {
            return meet(x, y, chain.first().fromX(), chain.first().fromY(), apart)
                    || meet(x, y, chain.endX(), chain.endY(), apart);
        }
    }
}
