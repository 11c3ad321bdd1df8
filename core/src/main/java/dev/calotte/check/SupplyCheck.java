package dev.calotte.check;

import dev.calotte.check.RecordedSupply.Goal;
import dev.calotte.check.RecordedSupply.Line;
import dev.calotte.check.RecordedSupply.Used;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is used of a stock: how many pieces, how much of them becomes parts, which of the stocks they are, and what that costs by
 * the prices of the bill. A bound is believed where it does not contradict what is spent.
 */
public final class SupplyCheck {

    /** A share is printed with nine decimals. */
    private static final double SHARE = 1e-8;

    /** What differs by less than this part is called proven; within a few times of it nothing is said. */
    private static final double ROUNDING = 1e-9;

    private final RecordedSupply supply;
    private final Findings findings;

    private SupplyCheck(RecordedSupply supply, Findings findings) {
        this.supply = supply;
        this.findings = findings;
    }

    /**
     * Counts anew.
     *
     * @param supply what is said of a stock
     * @param findings takes what is wrong
     */
    public static void of(RecordedSupply supply, Findings findings) {
        new SupplyCheck(supply, findings).check();
    }

    private String at(String key) {
        return supply.place() + "." + key;
    }

    private boolean isOfBars() {
        return supply.place().equals("bars");
    }

    private String pieces() {
        return at(isOfBars() ? "bars" : "sheets");
    }

    private void check() {
        double whole = supply.used().stream().mapToDouble(Used::amount).sum();
        double parts = supply.used().stream().mapToDouble(Used::parts).sum();
        findings.same(
                at(isOfBars() ? "used" : "stockUsed"),
                "the number of pieces used",
                supply.count(),
                supply.used().size(),
                0);
        findings.same(at("utilisation"), "the share that becomes parts", supply.utilisation(), parts / whole, SHARE);
        goal(supply.goal());
        lines().ifPresent(this::spent);
    }

    private void goal(Goal goal) {
        word("measure", goal.measure(), List.of("price", "pieces", "length", "area", "area2"));
        word("proof", goal.proof(), List.of("area", "linear-programme", "all-patterns"));
        double within = ROUNDING * Math.abs(goal.spent()) + Printed.RECORD_MM;
        if (!(goal.bound() <= goal.spent() + within)) {
            findings.add(
                    Fault.DIFFERENT,
                    at("bound"),
                    "no plan spends less than " + Findings.text(goal.bound()) + ", and this one spends "
                            + Findings.text(goal.spent()) + ".");
        }
        double gap = goal.spent() - goal.bound();
        if (goal.proven() ? gap > 4 * within : gap < within / 4) {
            findings.add(
                    Fault.DIFFERENT,
                    at("proven"),
                    "it is " + goal.proven() + ", and " + Findings.text(gap) + " could be saved at most.");
        }
    }

    private void word(String key, String word, List<String> known) {
        if (!known.contains(word)) {
            findings.same(at(key), "the word", word, "one of " + String.join(", ", known));
        }
    }

    /** The line of the bill for each stock that is used, by its number. */
    private Optional<Map<Integer, Line>> lines() {
        Map<Integer, List<Used>> stocks = new TreeMap<>();
        int before = Integer.MIN_VALUE;
        for (Used used : supply.used()) {
            if (used.stock() < Math.max(0, before)) {
                findings.add(Fault.DIFFERENT, pieces(), "their stocks do not follow one another.");
                return Optional.empty();
            }
            before = used.stock();
            stocks.computeIfAbsent(used.stock(), stock -> new ArrayList<>()).add(used);
        }
        if (stocks.size() != supply.lines().size()) {
            findings.add(
                    Fault.DIFFERENT,
                    pieces(),
                    "they are of " + stocks.size() + " stocks, the bill has "
                            + supply.lines().size() + " for them.");
            return Optional.empty();
        }
        Map<Integer, Line> lines = new TreeMap<>();
        for (Map.Entry<Integer, List<Used>> stock : stocks.entrySet()) {
            Line line = supply.lines().get(lines.size());
            stock.getValue().forEach(used -> size(used, stock.getValue().get(0), line));
            needed(stock.getValue(), line);
            lines.put(stock.getKey(), line);
        }
        return Optional.of(lines);
    }

    /** Pieces of one stock have its size, which a bill tells too; of a roll any length may be taken. */
    private void size(Used used, Used first, Line line) {
        boolean roll = line.item().equals("roll");
        boolean same = used.name().equals(first.name())
                && used.width() == first.width()
                && used.margin() == first.margin()
                && (roll || used.length() == first.length());
        boolean own = line.item().equals("offcut")
                ? used.name().equals(line.mark())
                : used.name().isEmpty()
                        && near(used.width(), line.width())
                        && (roll || near(used.length(), line.length()));
        if (!same || !own) {
            findings.add(
                    Fault.DIFFERENT,
                    at("stock " + used.stock()),
                    "what is " + Findings.text(used.length()) + " by " + Findings.text(used.width()) + " mm "
                            + (used.name().isEmpty() ? "" : "(" + used.name() + ") ") + "is no " + line.item()
                            + " of this stock.");
        }
    }

    private static boolean near(double seen, double expected) {
        return !Double.isFinite(expected) || Math.abs(seen - expected) <= Printed.RECORD_MM;
    }

    private void needed(List<Used> stock, Line line) {
        double needed = line.item().equals("roll")
                ? stock.stream().mapToDouble(Used::length).sum() / 1000
                : stock.size();
        findings.same(
                "bill " + line.item() + " " + line.mark(),
                "how much is needed",
                line.needed(),
                needed,
                Printed.RECORD_MM * stock.size());
    }

    private void spent(Map<Integer, Line> lines) {
        boolean free = lines.values().stream().allMatch(SupplyCheck::isGiven);
        double all = supply.used().stream()
                .mapToDouble(used -> cost(used, lines.get(used.stock()), false))
                .sum();
        double bought = supply.used().stream()
                .mapToDouble(used -> cost(used, lines.get(used.stock()), true))
                .sum();
        double spent = supply.goal().spent();
        double within = Printed.RECORD_MM * (1 + supply.used().size()) + ROUNDING * Math.abs(all);
        boolean alike = Math.abs(spent - bought) <= within || (free && Math.abs(spent - all) <= within);
        if (Double.isFinite(all) && !alike) {
            findings.same(at("spent"), "what is spent", spent, free ? all : bought, within);
        } else if (supply.goal().measure().equals("price") && !Double.isFinite(all)) {
            findings.add(Fault.DIFFERENT, at("measure"), "it is price, and the bill does not know all prices.");
        }
    }

    /** What is at hand and costs nothing does not count beside what is bought; whether anything is may not show. */
    private static boolean isGiven(Line line) {
        return line.item().equals("offcut") && line.price() == 0;
    }

    private double cost(Used used, Line line, boolean boughtOnly) {
        if (boughtOnly && isGiven(line)) {
            return 0;
        }
        boolean roll = line.item().equals("roll");
        return switch (supply.goal().measure()) {
            case "price" -> line.price() * (roll ? used.length() / 1000 : 1);
            case "pieces" -> 1;
            case "length" -> used.length();
            default -> used.width() == 0 ? used.length() : used.amount();
        };
    }
}
