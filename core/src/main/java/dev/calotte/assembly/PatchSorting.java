package dev.calotte.assembly;

import dev.calotte.assembly.PatchReading.Reading;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Spoke;
import dev.calotte.parts.Hand;
import dev.calotte.parts.Parts;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Makes patches of groups of panels: splits what does not hang together, finds kinds, and orders the work. */
final class PatchSorting {

    private final Parts parts;
    private final Dome dome;
    private final PanelNet net;
    private final double[] lengths;

    PatchSorting(Parts parts) {
        this.parts = parts;
        this.dome = parts.dome();
        this.net = new PanelNet(dome);
        this.lengths = dome.struts().stream()
                .mapToDouble(strut -> parts.kindOf(strut).lengthMm())
                .toArray();
    }

    Optional<Patches> exactStars() {
        return new Stars(dome, net).exact().map(centres -> patches(PatchWay.STARS, true, centres));
    }

    Patches by(PatchWay way) {
        return switch (way) {
            case STARS ->
                exactStars().orElseGet(() -> patches(PatchWay.STARS, false, new Stars(dome, net).asFarAsTheyGo()));
            case ROWS ->
                patches(
                        PatchWay.ROWS,
                        false,
                        dome.panels().stream().mapToInt(Panel::row).toArray());
            case SECTORS -> patches(PatchWay.SECTORS, false, new FoldSectors(dome).sectors());
        };
    }

    private Patches patches(PatchWay way, boolean exact, int[] groupOf) {
        int[] pieceOf = connected(groupOf);
        Map<Integer, List<Integer>> pieces = new TreeMap<>();
        for (int panel = 0; panel < pieceOf.length; panel++) {
            pieces.computeIfAbsent(pieceOf[panel], p -> new ArrayList<>()).add(panel);
        }
        Sorted sorted = new Sorted(new PatchReading(parts, net, pieceOf));
        PatchJoins joining = new PatchJoins(net, lengths, pieceOf);
        for (int piece : joining.order()) {
            List<Integer> panels = pieces.get(piece);
            OptionalInt centre = way == PatchWay.STARS ? centre(panels, groupOf[panels.get(0)]) : OptionalInt.empty();
            sorted.add(piece, panels, centre);
        }
        Map<Integer, Patch> made = sorted.patches();
        List<Patch> inOrder = joining.order().stream().map(made::get).toList();
        return new Patches(
                way, exact, inOrder, joining.joins(piece -> made.get(piece).mark()), pieceOf.length);
    }

    private OptionalInt centre(List<Integer> panels, int hub) {
        boolean isStar = hub < dome.hubs().size()
                && panels.stream().allMatch(p -> dome.panels().get(p).hubs().contains(hub));
        return isStar ? OptionalInt.of(hub) : OptionalInt.empty();
    }

    /** For each panel the number of its piece: connected panels of one group, numbered by their first panel. */
    private int[] connected(int[] groupOf) {
        int[] pieceOf = new int[groupOf.length];
        Arrays.fill(pieceOf, PanelNet.NONE);
        int pieces = 0;
        for (int panel = 0; panel < groupOf.length; panel++) {
            if (pieceOf[panel] == PanelNet.NONE) {
                flood(panel, pieces++, groupOf, pieceOf);
            }
        }
        return pieceOf;
    }

    private void flood(int start, int piece, int[] groupOf, int[] pieceOf) {
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        pieceOf[start] = piece;
        while (!waiting.isEmpty()) {
            int panel = waiting.remove();
            for (int side = 3 * panel; side < 3 * panel + 3; side++) {
                int there = net.across(side) == PanelNet.NONE ? panel : net.across(side) / 3;
                if (pieceOf[there] == PanelNet.NONE && groupOf[there] == groupOf[panel]) {
                    pieceOf[there] = piece;
                    waiting.add(there);
                }
            }
        }
    }

    /** Pieces by shape and hand. */
    private final class Sorted {

        private final PatchReading reading;
        private final List<Shape> shapes = new ArrayList<>();
        private final Map<Reading, Shape> shapeOf = new TreeMap<>();

        Sorted(PatchReading reading) {
            this.reading = reading;
        }

        void add(int piece, List<Integer> panels, OptionalInt centre) {
            Reading left = reading.least(panels, false);
            Reading right = reading.least(panels, true);
            int order = left.compareTo(right);
            Reading least = order <= 0 ? left : right;
            Shape shape = shapeOf.get(least);
            if (shape == null) {
                shape = new Shape(shapes.size() + 1, least, making(panels, centre), order == 0);
                shapeOf.put(least, shape);
                shapes.add(shape);
            }
            shape.pieces.add(new Piece(piece, least, order <= 0 ? Hand.LEFT : Hand.RIGHT, centre));
        }

        private PatchMaking making(List<Integer> panels, OptionalInt centre) {
            return centre.isPresent()
                    ? PatchMaking.ofStar(net, lengths, around(centre.getAsInt(), panels))
                    : PatchMaking.ofStrips(net, lengths, panels, dome);
        }

        Map<Integer, Patch> patches() {
            Map<Integer, Patch> patches = new TreeMap<>();
            shapes.forEach(shape -> shape.addTo(patches));
            return patches;
        }
    }

    /** The panels of a star counter-clockwise, from behind a gap in it if there is one. */
    private List<Integer> around(int hub, List<Integer> panels) {
        List<Integer> around = new ArrayList<>(dome.around(hub).stream()
                .map(Spoke::panel)
                .filter(panels::contains)
                .toList());
        for (int turn = 0;
                turn < around.size() && areNeighbours(around.get(0), around.get(around.size() - 1));
                turn++) {
            around.add(around.remove(0));
        }
        return around;
    }

    private boolean areNeighbours(int panel, int other) {
        return IntStream.range(3 * panel, 3 * panel + 3)
                .map(net::across)
                .anyMatch(side -> side != PanelNet.NONE && side / 3 == other);
    }

    /** A piece, with its panels in the order of its reading. */
    private record Piece(int number, Reading reading, Hand hand, OptionalInt centre) {}

    /** Pieces of one shape; the first of them says in which order panels are joined. */
    private final class Shape {

        private final int number;
        private final List<Integer> order;
        private final PatchMaking making;
        private final boolean symmetric;
        private final List<Piece> pieces = new ArrayList<>();

        Shape(int number, Reading first, PatchMaking making, boolean symmetric) {
            this.number = number;
            this.making = making;
            this.symmetric = symmetric;
            Map<Integer, Integer> placeOf = new TreeMap<>();
            first.panels().forEach(panel -> placeOf.put(panel, placeOf.size()));
            this.order = making.order().stream().map(placeOf::get).toList();
        }

        void addTo(Map<Integer, Patch> patches) {
            if (symmetric) {
                add(pieces, Hand.NONE, Optional.empty(), patches);
                return;
            }
            for (Hand hand : List.of(Hand.LEFT, Hand.RIGHT)) {
                boolean both = pieces.stream().anyMatch(p -> p.hand() == hand.mirror());
                add(
                        pieces.stream().filter(p -> p.hand() == hand).toList(),
                        hand,
                        both
                                ? Optional.of(PatchKind.LETTER
                                        + number
                                        + hand.mirror().letter())
                                : Optional.empty(),
                        patches);
            }
        }

        private void add(List<Piece> alike, Hand hand, Optional<String> twin, Map<Integer, Patch> patches) {
            if (alike.isEmpty()) {
                return;
            }
            List<String> marks = panels(alike.get(0)).stream()
                    .map(panel -> parts.kindOf(panel).mark())
                    .toList();
            PatchKind kind = new PatchKind(number, hand, twin, marks, making.seams(), alike.size());
            for (int i = 0; i < alike.size(); i++) {
                Piece piece = alike.get(i);
                patches.put(piece.number(), new Patch(kind, i + 1, panels(piece), piece.centre()));
            }
        }

        private List<Panel> panels(Piece piece) {
            return order.stream()
                    .map(place -> dome.panels().get(piece.reading().panels().get(place)))
                    .toList();
        }
    }
}
