package dev.calotte.sphere;

import dev.calotte.geometry.Groups;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The kinds of struts and panels of a pose. Struts are of one kind where their lengths are equal up to rounding, panels
 * where their three sides are of the same kinds; mirror twins are one kind.
 */
final class Kinds {

    /** Fewest panels first, and of those fewest struts. */
    static final Comparator<Kinds> FEWEST =
            Comparator.comparingInt(Kinds::panels).thenComparingInt(Kinds::struts);

    /** Lengths on the unit sphere that differ by less are equal. */
    static final double SAME = 1e-10;

    private final Web web;
    private final Groups struts;
    private final TreeMap<List<Integer>, Web.Panel> panels = new TreeMap<>(Kinds::compare);

    Kinds(Pose pose) {
        this(pose, SAME);
    }

    /** The kinds when lengths that differ by less than a tolerance are taken as equal. */
    Kinds(Pose pose, double same) {
        this.web = pose.web();
        this.struts = Groups.of(
                IntStream.range(0, web.struts().size())
                        .mapToDouble(pose::length)
                        .toArray(),
                same);
        for (Web.Panel panel : web.panels()) {
            panels.putIfAbsent(sides(panel), panel);
        }
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        return Arrays.compare(
                one.stream().mapToInt(i -> i).toArray(),
                other.stream().mapToInt(i -> i).toArray());
    }

    private List<Integer> sides(Web.Panel panel) {
        return panel.struts().stream().map(struts::of).sorted().toList();
    }

    int struts() {
        return struts.count();
    }

    int panels() {
        return panels.size();
    }

    /** One panel of each kind. */
    List<Web.Panel> examples() {
        return List.copyOf(panels.values());
    }

    /** The kind of each strut orbit, in a text that is the same where the kinds are. */
    String pattern() {
        int[] first = new int[struts.count()];
        Arrays.fill(first, -1);
        StringBuilder pattern = new StringBuilder();
        for (int s = 0; s < web.struts().size(); s++) {
            int kind = struts.of(s);
            first[kind] = first[kind] < 0 ? s : first[kind];
            pattern.append(first[kind]).append(' ');
        }
        return pattern.toString();
    }

    /** As many pairs of struts as say which lengths are equal. */
    List<Web.Strut> equal() {
        int[] last = new int[struts.count()];
        Arrays.fill(last, -1);
        List<Web.Strut> pairs = new ArrayList<>();
        for (int s = 0; s < web.struts().size(); s++) {
            int kind = struts.of(s);
            if (last[kind] >= 0) {
                pairs.add(new Web.Strut(last[kind], s));
            }
            last[kind] = s;
        }
        return pairs;
    }
}
