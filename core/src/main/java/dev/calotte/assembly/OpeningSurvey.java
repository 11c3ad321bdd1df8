package dev.calotte.assembly;

import dev.calotte.assembly.OpeningReport.End;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Spoke;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Looks up for each opening what went with it. A strut or hub between several openings went with the last of them. */
final class OpeningSurvey {

    private static final int STAYS = -1;

    private final Dome dome;
    private final Dome whole;
    private final PieceMarks marks;
    private final PieceMarks wholeMarks;
    /** The opening that took each strut and hub of the whole dome, or {@link #STAYS}. */
    private final int[] strutTakenBy;

    private final int[] hubTakenBy;
    /** How many panels each strut of the whole dome still has. */
    private final int[] panelsLeft;

    OpeningSurvey(Parts parts) {
        this.dome = parts.dome();
        this.whole = dome.whole();
        this.marks = new PieceMarks(parts);
        this.wholeMarks = new PieceMarks(parts.whole());
        this.panelsLeft = new int[whole.struts().size()];
        dome.panels().forEach(p -> p.struts().forEach(s -> panelsLeft[dome.wholeStrut(s)]++));
        this.strutTakenBy = strutTakenBy();
        this.hubTakenBy = hubTakenBy();
    }

    private int[] strutTakenBy() {
        int[] taken = new int[whole.struts().size()];
        Arrays.fill(taken, STAYS);
        for (int i = 0; i < dome.openings().size(); i++) {
            for (int panel : dome.openings().get(i).panels()) {
                for (int strut : whole.panels().get(panel).struts()) {
                    taken[strut] = i;
                }
            }
        }
        IntStream.range(0, dome.struts().size()).forEach(s -> taken[dome.wholeStrut(s)] = STAYS);
        return taken;
    }

    private int[] hubTakenBy() {
        int[] taken = new int[whole.hubs().size()];
        Arrays.fill(taken, STAYS);
        for (Strut strut : whole.struts()) {
            taken[strut.from()] = Math.max(taken[strut.from()], strutTakenBy[strut.index()]);
            taken[strut.to()] = Math.max(taken[strut.to()], strutTakenBy[strut.index()]);
        }
        IntStream.range(0, dome.hubs().size()).forEach(h -> taken[dome.wholeHub(h)] = STAYS);
        return taken;
    }

    List<OpeningReport> reports() {
        List<OpeningReport> reports = new ArrayList<>();
        int redundant = wholeRedundant();
        for (int i = 0; i < dome.openings().size(); i++) {
            int after = redundant - lost(i);
            reports.add(report(i, redundant, after));
            redundant = after;
        }
        return reports;
    }

    private int wholeRedundant() {
        int free = (int) whole.hubs().stream().filter(hub -> !hub.open()).count();
        int count = (int) whole.struts().stream().filter(this::counts).count() - 3 * free;
        return whole.baseRing().isEmpty() ? count + 6 : count;
    }

    /** Whether a strut holds a hub that is not fixed. */
    private boolean counts(Strut strut) {
        return !whole.hubs().get(strut.from()).open()
                || !whole.hubs().get(strut.to()).open();
    }

    private int lost(int opening) {
        long struts = taken(whole.struts(), strutTakenBy, opening)
                .filter(this::counts)
                .count();
        long hubs = taken(whole.hubs(), hubTakenBy, opening)
                .filter(hub -> !hub.open())
                .count();
        return (int) (struts - 3 * hubs);
    }

    private static <T> Stream<T> taken(List<T> all, int[] takenBy, int opening) {
        return IntStream.range(0, takenBy.length)
                .filter(i -> takenBy[i] == opening)
                .mapToObj(all::get);
    }

    private OpeningReport report(int i, int before, int after) {
        Opening opening = dome.openings().get(i);
        List<Panel> gone = opening.panels().stream().map(whole.panels()::get).toList();
        List<Strut> around = here(gone.stream().flatMap(p -> p.struts().stream()), dome.struts(), dome::wholeStrut);
        List<Hub> rim = here(gone.stream().flatMap(p -> p.hubs().stream()), dome.hubs(), dome::wholeHub);
        return new OpeningReport(
                opening.name(),
                gone.stream().map(wholeMarks::of).toList(),
                taken(whole.struts(), strutTakenBy, i).map(wholeMarks::of).toList(),
                taken(whole.hubs(), hubTakenBy, i).map(wholeMarks::of).toList(),
                withPanels(around, 1),
                withPanels(around, 0),
                rim.stream().map(marks::of).toList(),
                rim.stream().flatMap(this::ends).toList(),
                before,
                after);
    }

    /** Those pieces of the dome that are meant by indices of the whole dome and remain, in their order. */
    private static <T> List<T> here(Stream<Integer> wanted, List<T> pieces, IntUnaryOperator wholeIndex) {
        Set<Integer> meant = wanted.collect(Collectors.toCollection(TreeSet::new));
        return IntStream.range(0, pieces.size())
                .filter(i -> meant.contains(wholeIndex.applyAsInt(i)))
                .mapToObj(pieces::get)
                .toList();
    }

    private List<String> withPanels(List<Strut> struts, int count) {
        return struts.stream()
                .filter(s -> panelsLeft[dome.wholeStrut(s.index())] == count)
                .map(marks::of)
                .toList();
    }

    private Stream<End> ends(Hub hub) {
        return dome.around(hub.index()).stream()
                .map(Spoke::strut)
                .map(dome.struts()::get)
                .map(strut -> new End(marks.of(hub), marks.of(strut), strut.lengthMm()));
    }
}
