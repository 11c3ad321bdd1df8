package dev.calotte.nest;

import dev.calotte.stock.Outline;
import dev.calotte.stock.Stock;
import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;

/**
 * Lays convex parts on sheets and rolls. The first plan puts parts where their far end comes nearest to the beginning of
 * the stock; then the steps of the {@link Layout} are spent on better ones. If all stocks have prices the plan spends as
 * little money as it can; else as few sheets or as little length of the one stock there is, or as little area of several.
 *
 * <pre>{@code
 * ConvexPolygon triangle = ConvexPolygon.of(0, 0, 900, 0, 450, 780);
 * Piece piece = new Piece("P1", triangle, 20, false, OptionalDouble.empty());
 * CutPlan laid = SheetPlan.of(List.of(piece), stocks, Layout.quick(5));
 * double used = laid.utilisation();
 * }</pre>
 */
public final class SheetPlan {

    /** Of so many parts a sheet all patterns are listed. */
    private static final int FEW = 5;

    /** Of more triangles, or fewer parts of more corners, the first plan is made in fewer manners. */
    private static final int MANY = 300;

    /** The manners that are the best as a rule. */
    private static final List<Manner> BEST_AS_A_RULE = List.of(Manner.ALONG, Manner.LONGEST_ALONG);

    private final Kinds kinds;
    private final List<Stock> stocks;
    private final Layout layout;
    private final List<Manner> all;
    private final List<Field> fields = new ArrayList<>();
    private final int[] have;
    private final Charges charges;

    /** The first plans that begin with each stock. */
    private final List<List<List<Filled>>> firsts = new ArrayList<>();

    private SheetPlan(List<Piece> pieces, List<? extends Stock> stocks, Layout layout, List<Manner> all) {
        this.all = all;
        this.kinds = new Kinds(pieces);
        this.stocks = List.copyOf(stocks);
        this.layout = layout;
        this.charges = new Charges(kinds, this.stocks);
        this.have = new int[stocks.size()];
        for (int stock = 0; stock < stocks.size(); stock++) {
            fields.add(Field.of(stock, stocks.get(stock)));
            firsts.add(List.of());
            have[stock] = stocks.get(stock).terms().have().orElse(kinds.parts());
        }
    }

    /**
     * Makes a plan.
     *
     * @param pieces the parts, at least one
     * @param stocks sheets, rolls and irregular outlines, at least one
     * @param layout how far parts stay apart, and how long a better plan is looked for
     * @return the plan, the same for the same input and any number of threads
     * @throws IllegalArgumentException if there is no piece or no stock, or a stock is a bar
     * @throws dev.calotte.problem.CalotteException at {@code covers.stock} for each part larger than every stock, at
     *     {@code covers.stock.have} if what there is does not hold all
     */
    public static CutPlan of(List<Piece> pieces, List<? extends Stock> stocks, Layout layout) {
        return planned(pieces, stocks, layout, List.of(Manner.values()));
    }

    static CutPlan planned(List<Piece> pieces, List<? extends Stock> stocks, Layout layout, List<Manner> manners) {
        if (pieces.isEmpty() || stocks.isEmpty()) {
            throw new IllegalArgumentException("a plan needs parts and stock");
        }
        if (stocks.stream().anyMatch(Outline.class::isInstance)) {
            return new OutlinesFirst(pieces, List.copyOf(stocks), layout).plan(manners);
        }
        SheetPlan plan = new SheetPlan(pieces, stocks, layout, manners);
        Room.check(plan.kinds, plan.fields);
        return plan.make();
    }

    /**
     * Makes a first plan in fewer manners than {@link #of} without steps, which therefore never spends more.
     *
     * @param pieces the parts, at least one
     * @param stocks sheets and rolls, at least one
     * @param spacingMm how far parts stay apart
     * @return the plan
     * @throws IllegalArgumentException if there is no piece or no stock, or a stock is a bar
     * @throws dev.calotte.problem.CalotteException as {@link #of} does
     */
    public static CutPlan glance(List<Piece> pieces, List<? extends Stock> stocks, double spacingMm) {
        List<Piece> faceUp = pieces.stream().map(Piece::faceUp).toList();
        return planned(faceUp, stocks, new Layout(spacingMm, 0, 1), BEST_AS_A_RULE);
    }

    /**
     * What must be used of a stock because of the area alone, whatever it costs and however much of it there is.
     *
     * @param pieces the parts, at least one
     * @param stock a sheet or a roll
     * @param spacingMm how far parts stay apart
     * @return the number of sheets, or the millimetres of roll, that no plan stays below
     * @throws IllegalArgumentException if there is no piece, or the stock is neither a sheet nor a roll
     */
    public static double least(List<Piece> pieces, Stock stock, double spacingMm) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("nothing is cut from nothing");
        }
        Kinds kinds = new Kinds(pieces);
        List<Stock> open = List.of(Charges.open(stock));
        return new AreaBound(kinds, new Charges(kinds, open), spacingMm).of(List.of(Field.of(0, stock)));
    }

    private CutPlan make() {
        List<Filled> best = first();
        double bound = new AreaBound(kinds, charges, layout.spacingMm()).of(fields);
        Goal.Proof proof = Goal.Proof.AREA;
        if (layout.steps() > 0) {
            best = onRolls(best);
        }
        boolean listed = false;
        int left = layout.steps();
        if (layout.steps() > 0 && mostOnASheet(best) <= FEW) {
            SheetMix mix = new SheetMix(kinds, fields, have, charges, layout);
            mix.search();
            best = better(best, mix.best());
            listed = mix.bound() > 0;
            left = Math.max(0, left - mix.steps());
            if (mix.bound() > bound && fields.stream().noneMatch(Field::isRoll)) {
                bound = mix.bound();
                proof = Goal.Proof.ALL_PATTERNS;
            }
        }
        if (layout.steps() > 0 && !listed && charges.cost(best) > bound) {
            best = better(best, new Emptying(kinds, charges, layout.withSteps(left), best).empty());
        }
        List<Filled> inOrder = new ArrayList<>(best);
        inOrder.sort(Comparator.comparingInt(filled -> filled.field().stock()));
        Goal goal = new Goal(charges.measure(), charges.cost(best), bound, proof);
        return new Laying(kinds, stocks, charges, layout.spacingMm()).plan(inOrder, goal);
    }

    private List<Filled> better(List<Filled> one, List<Filled> other) {
        return other.isEmpty() || charges.cost(one) <= charges.cost(other) ? one : other;
    }

    /** How many parts the fullest sheet of a plan holds; more than few if there is no sheet. */
    private static int mostOnASheet(List<Filled> plan) {
        int most = plan.stream()
                .filter(filled -> !filled.field().isRoll())
                .mapToInt(filled -> filled.spots().size())
                .max()
                .orElse(0);
        return most == 0 ? FEW + 1 : most;
    }

    private List<Filled> first() {
        List<Filled> best = List.of();
        for (List<Field> order : orders()) {
            List<List<Filled>> plans = firsts(order);
            firsts.set(order.get(0).stock(), plans);
            for (List<Filled> plan : plans) {
                best = best.isEmpty() ? plan : better(best, plan);
            }
        }
        if (best.isEmpty()) {
            throw Room.tooLittle(kinds);
        }
        return best;
    }

    /** First plans in all manners, of many parts in those only that are the best as a rule. */
    private List<List<Filled>> firsts(List<Field> order) {
        List<Manner> manners = all;
        if (kinds.areGrained()) {
            manners = List.of(Manner.ANY);
        } else if (kinds.inTriangles() > MANY) {
            manners = BEST_AS_A_RULE;
        }
        List<Callable<List<Filled>>> work = new ArrayList<>();
        for (Kinds some : kinds.areMirrored() ? List.of(kinds, kinds.faceUp()) : List.of(kinds)) {
            for (Manner manner : manners) {
                FirstFit fit = new FirstFit(some, order, have, new Manners(layout.spacingMm(), manner));
                work.add(() -> fit.lay(kinds.needed()) ? fit.filled() : List.of());
            }
        }
        List<List<Filled>> plans = new ArrayList<>(new Crew(layout.threads()).all(work));
        plans.removeIf(List::isEmpty);
        return plans;
    }

    /** The best that is found on one roll alone. */
    private List<Filled> onRolls(List<Filled> best) {
        List<Filled> better = best;
        for (Field field : fields) {
            if (field.isRoll() && allFit(field)) {
                List<List<Spot>> given = new ArrayList<>();
                for (List<Filled> plan : firsts.get(field.stock())) {
                    if (plan.size() == 1 && plan.get(0).field().equals(field)) {
                        given.add(plan.get(0).spots());
                    }
                }
                List<Spot> found = new RollSearch(kinds, field, layout).search(given);
                better = found.isEmpty() ? better : better(better, List.of(new Filled(field, found)));
            }
        }
        return better;
    }

    private boolean allFit(Field field) {
        for (int kind = 0; kind < kinds.count(); kind++) {
            if (Room.lackingMm(kinds, kind, field) > Room.TOUCHING_MM) {
                return false;
            }
        }
        return true;
    }

    /** Each stock first in turn, then the others, those that cost least for their area first. */
    private List<List<Field>> orders() {
        List<Field> cheapest = new ArrayList<>(fields);
        cheapest.sort(Comparator.comparingDouble(this::costOfArea));
        List<List<Field>> orders = new ArrayList<>();
        for (Field first : cheapest) {
            List<Field> order = new ArrayList<>(cheapest);
            order.remove(first);
            order.add(0, first);
            orders.add(order);
        }
        return orders;
    }

    private double costOfArea(Field field) {
        double rate = charges.rate(field.stock());
        return field.isRoll() ? rate / field.width() : rate / (field.width() * field.length());
    }
}
