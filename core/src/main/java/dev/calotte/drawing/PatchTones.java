package dev.calotte.drawing;

import dev.calotte.assembly.Patch;
import dev.calotte.document.Picture.Tone;
import dev.calotte.dome.Panel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Tones for patches so that neighbours differ, of one kind if at all possible and then all. Patches choose one after the
 * other, in their order.
 */
final class PatchTones {

    /** A neighbour of the same kind counts for more than all others. */
    private static final int SAME_KIND = 1000;

    private final Map<String, Tone> tones = new LinkedHashMap<>();

    private PatchTones() {}

    static PatchTones of(List<Patch> patches) {
        PatchTones chosen = new PatchTones();
        Map<Integer, List<Patch>> atStrut = new LinkedHashMap<>();
        for (Patch patch : patches) {
            TreeSet<Integer> struts = new TreeSet<>();
            for (Panel panel : patch.panels()) {
                struts.addAll(panel.struts());
            }
            List<Patch> before = struts.stream()
                    .flatMap(strut -> atStrut.getOrDefault(strut, List.of()).stream())
                    .distinct()
                    .toList();
            chosen.tones.put(patch.mark(), chosen.best(patch, before));
            struts.forEach(strut ->
                    atStrut.computeIfAbsent(strut, none -> new ArrayList<>()).add(patch));
        }
        return chosen;
    }

    private Tone best(Patch patch, List<Patch> neighbours) {
        return Stream.of(Tone.values())
                .min(Comparator.comparingInt(tone -> cost(patch, tone, neighbours)))
                .orElse(Tone.USUAL);
    }

    private int cost(Patch patch, Tone tone, List<Patch> neighbours) {
        return neighbours.stream()
                .filter(other -> of(other) == tone)
                .mapToInt(other -> other.kind().number() == patch.kind().number() ? SAME_KIND : 1)
                .sum();
    }

    Tone of(Patch patch) {
        return tones.get(patch.mark());
    }
}
