package dev.calotte.pattern;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.PatternKey.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * Panels by the pattern that they need, and how each is turned in it.
 *
 * <p>Coded notches are found in two steps. First panels are sorted without them. Then every joint is known by the two
 * patterns and the sides that meet in it; each such joint gets a number, and panels are sorted again by those numbers
 * and by which way each side reads its strut.
 */
final class PatternSorting {

    final Neighbours neighbours;
    final PatternKeys keys;
    final List<PatternKey> patterns;
    final int[] patternOf;
    /** Which of the panel's sides is side 0 of the pattern. */
    final int[] turnOf;

    private final Parts parts;
    private final List<PanelKind> kinds;
    private final Map<String, Integer> placeOf = new TreeMap<>();
    private final int[] counts;
    private int joints;

    PatternSorting(Parts parts, Cover cover) {
        this.parts = parts;
        this.kinds = parts.panelKinds();
        kinds.forEach(kind -> placeOf.put(kind.mark(), placeOf.size()));
        this.neighbours = new Neighbours(parts.dome());
        this.keys = new PatternKeys(parts, cover, neighbours);
        this.patternOf = new int[parts.dome().panels().size()];
        this.turnOf = new int[patternOf.length];
        List<PatternKey> sorted = sort((panel, k) -> Code.NONE);
        this.patterns = cover.treatment().coded() ? coded(cover, sorted) : sorted;
        this.counts = new int[patterns.size()];
        for (int pattern : patternOf) {
            counts[pattern]++;
        }
    }

    /** Openings take codes away and leave the others as they are, or one door would make every panel another pattern. */
    private List<PatternKey> coded(Cover cover, List<PatternKey> sorted) {
        Dome dome = parts.dome();
        if (dome.openings().isEmpty()) {
            return refined(sorted);
        }
        PatternSorting whole = new PatternSorting(parts.whole(), cover);
        joints = whole.joints;
        return sort((panel, k) -> neighbours.across(panel, panel.struts().get(k)) == Neighbours.NONE
                ? Code.NONE
                : whole.code(dome.wholePanel(panel.index()), k));
    }

    private Code code(int panel, int k) {
        return patterns.get(patternOf[panel]).codes().get(Math.floorMod(k - turnOf[panel], 3));
    }

    /** Sorts by the joints again and again, until no pattern falls into several by what its neighbours are. */
    private List<PatternKey> refined(List<PatternKey> sorted) {
        List<PatternKey> finer = sort(codes(sorted));
        return finer.size() > sorted.size() ? refined(finer) : finer;
    }

    private List<PatternKey> sort(BiFunction<Panel, Integer, Code> code) {
        Map<PatternKey, Integer> places = new TreeMap<>();
        List<PatternKey> keyOf = new ArrayList<>();
        for (Panel panel : parts.dome().panels()) {
            keyOf.add(key(panel, code));
            places.put(keyOf.get(panel.index()), 0);
        }
        List<PatternKey> sorted = List.copyOf(places.keySet());
        IntStream.range(0, sorted.size()).forEach(i -> places.put(sorted.get(i), i));
        IntStream.range(0, patternOf.length).forEach(i -> patternOf[i] = places.get(keyOf.get(i)));
        return sorted;
    }

    /** The smallest of the keys under which the panel's sides lie as the pattern wants them; notes the turn. */
    private PatternKey key(Panel panel, BiFunction<Panel, Integer, Code> code) {
        PanelKind kind = keys.kind(panel);
        List<Integer> wanted = PatternKeys.struts(kind);
        PatternKey least = null;
        for (int turn = 0; turn < 3; turn++) {
            List<Integer> around = around(turn);
            if (around.stream().map(k -> keys.strut(panel, k)).toList().equals(wanted)) {
                PatternKey key = new PatternKey(
                        placeOf.get(kind.mark()),
                        around.stream().map(k -> keys.slot(panel, k)).toList(),
                        around.stream().map(k -> code.apply(panel, k)).toList());
                if (least == null || key.compareTo(least) < 0) {
                    least = key;
                    turnOf[panel.index()] = turn;
                }
            }
        }
        return least;
    }

    private static List<Integer> around(int turn) {
        return List.of(turn, (turn + 1) % 3, (turn + 2) % 3);
    }

    /** A joint: pattern and side of the panel that reads the strut downwards, and of the one that reads it upwards. */
    private record Joint(int down, int downSide, int up, int upSide) {
        static final Comparator<Joint> ORDER = Comparator.comparingInt(Joint::down)
                .thenComparingInt(Joint::downSide)
                .thenComparingInt(Joint::up)
                .thenComparingInt(Joint::upSide);
    }

    private BiFunction<Panel, Integer, Code> codes(List<PatternKey> sorted) {
        Joint[] jointOf = new Joint[parts.dome().struts().size()];
        Map<Joint, Integer> numbers = new TreeMap<>(Joint.ORDER);
        for (Panel panel : parts.dome().panels()) {
            for (int k = 0; k < 3; k++) {
                int strut = panel.struts().get(k);
                int across = neighbours.across(panel, strut);
                if (across != Neighbours.NONE && neighbours.runsDown(panel, k)) {
                    Panel other = parts.dome().panels().get(across);
                    int otherSide = other.struts().indexOf(strut);
                    jointOf[strut] = new Joint(
                            patternOf[panel.index()],
                            side(panel, k, sorted),
                            patternOf[across],
                            side(other, otherSide, sorted));
                    numbers.put(jointOf[strut], 0);
                }
            }
        }
        joints = 0;
        for (Map.Entry<Joint, Integer> entry : numbers.entrySet()) {
            entry.setValue(joints++);
        }
        return (panel, k) -> {
            Joint joint = jointOf[panel.struts().get(k)];
            return joint == null ? Code.NONE : new Code(numbers.get(joint), neighbours.runsDown(panel, k));
        };
    }

    /** The pattern's number of a panel's side; 0 for all where they cannot be told apart. */
    private int side(Panel panel, int k, List<PatternKey> sorted) {
        PatternKey key = sorted.get(patternOf[panel.index()]);
        return key.isTurnable(kinds.get(key.kind())) ? 0 : Math.floorMod(k - turnOf[panel.index()], 3);
    }

    /** How many different joints have codes. */
    int joints() {
        return joints;
    }

    int count(int pattern) {
        return counts[pattern];
    }

    PanelKind kind(int pattern) {
        return kinds.get(patterns.get(pattern).kind());
    }

    String mark(int pattern) {
        int kind = patterns.get(pattern).kind();
        long before = patterns.subList(0, pattern).stream()
                .filter(key -> key.kind() == kind)
                .count();
        long all = patterns.stream().filter(key -> key.kind() == kind).count();
        return kinds.get(kind).mark() + (all > 1 ? "." + (before + 1) : "");
    }

    /** The mark of the mirror image, if the dome has it and no codes set them apart. */
    Optional<String> mirror(int pattern) {
        PatternKey key = patterns.get(pattern);
        PanelKind kind = kinds.get(key.kind());
        Optional<PanelKind> twin = kind.hand().mirror() == kind.hand()
                ? Optional.of(kind)
                : kind.twin().map(placeOf::get).map(kinds::get);
        return twin.map(t -> key.mirrored(placeOf.get(t.mark()), PatternKeys.struts(kind), PatternKeys.struts(t)))
                .map(patterns::indexOf)
                .filter(place -> place >= 0 && joints == 0)
                .map(this::mark);
    }
}
