package dev.calotte.compare;

import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Where domes are drafted, estimated and planned. */
final class Bench {

    /** So much work is spent on leaders in all, however many pieces they have. */
    private static final long MOST_WORK = 1_500_000;

    private final Request request;
    private final Optional<Column> wanted;
    private final Effort effort;
    private final Runnable done;

    /** In the order of candidates. */
    private final List<Entry> entries;

    Bench(Request request, List<Candidate> candidates, Optional<Column> wanted, Effort effort, Runnable done) {
        this.request = request;
        this.wanted = wanted;
        this.effort = effort;
        this.done = done;
        this.entries = new ArrayList<>(each(candidates, candidate -> Entry.drafted(request, candidate)));
    }

    private <T> List<Entry> each(List<T> things, Function<T, Entry> work) {
        return new Crew(effort.threads())
                .all(things.stream()
                        .map(thing -> (Callable<Entry>) () -> {
                            Entry entry = work.apply(thing);
                            done.run();
                            return entry;
                        })
                        .toList());
    }

    Comparison compare() {
        int pilot = request.hasStock() ? pilot() : entries.size();
        Optional<Compared> first = pilot < entries.size() ? entries.get(pilot).row() : Optional.empty();
        List<StockUse> uses = first.map(Compared::stocks).orElse(List.of());
        entries.replaceAll(entry -> entry.row().isPresent() ? entry : entry.estimated(request, uses));
        if (first.isPresent()) {
            planLeaders();
        }
        return ranked();
    }

    /** Lays the first that fits and whose stock is enough; tells its place, or behind the last if there is none. */
    private int pilot() {
        for (int place = 0; place < entries.size(); place++) {
            if (entries.get(place).fitsStock()) {
                entries.set(place, planned(place));
                if (entries.get(place).row().isPresent()) {
                    return place;
                }
            }
        }
        return entries.size();
    }

    private Entry planned(int place) {
        return entries.get(place).planned(request, effort.steps());
    }

    private void planLeaders() {
        List<Integer> leaders = leaders();
        List<Entry> plans = each(leaders, this::planned);
        for (int i = 0; i < plans.size(); i++) {
            entries.set(leaders.get(i), plans.get(i));
        }
    }

    /** The places of those that are worth a plan and have none. */
    private List<Integer> leaders() {
        List<Compared> rows = rows();
        Ranking ranking = Ranking.of(request.common(), rows);
        Comparator<Compared> order = Comparator.comparing((Compared row) -> !ranking.isBest(row, rows))
                .thenComparing(Ranking.by(wanted.orElse(ranking.usual())));
        List<Integer> sorted = IntStream.range(0, entries.size())
                .boxed()
                .filter(place ->
                        entries.get(place).row().filter(row -> !row.planned()).isPresent())
                .sorted(Comparator.comparing(place -> entries.get(place).row().orElseThrow(), order))
                .toList();
        List<Integer> leaders = new ArrayList<>();
        long work = 0;
        for (int place : sorted) {
            work += entries.get(place).work();
            if (leaders.size() < effort.plans() - 1 && work <= MOST_WORK) {
                leaders.add(place);
            }
        }
        return leaders;
    }

    private List<Compared> rows() {
        return entries.stream().flatMap(entry -> entry.row().stream()).toList();
    }

    private Comparison ranked() {
        List<Compared> rows = rows();
        Ranking ranking = Ranking.of(request.common(), rows);
        Column column = wanted.orElse(ranking.usual());
        return new Comparison(
                rows.stream()
                        .map(row -> row.withBest(ranking.isBest(row, rows)))
                        .sorted(Ranking.by(column))
                        .toList(),
                entries.stream().flatMap(entry -> entry.out().stream()).toList(),
                column,
                ranking.criteria());
    }
}
