package dev.calotte.cli.brief;

import dev.calotte.choose.Supply;
import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Stock;
import dev.calotte.units.UnitSystem;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

/**
 * Reads how much stock of a cover there is.
 *
 * @param fields the keys of {@code widest-from}
 * @param units what a bare number means
 * @param covers the covers of the brief
 */
record SupplyReader(Fields fields, UnitSystem units, List<Covering> covers) {

    private static final int MOST = 1_000_000;
    private static final String EXAMPLE = "Write for example widest-from: { cover: glazing, count: 40 }.";

    /** The wish; nothing if something is wrong with it. */
    Optional<SizeWish> wish() {
        fields.require("cover", EXAMPLE);
        Optional<Covering> covering =
                fields.read("cover", Optional.empty(), node -> Optional.of(CoverName.covering(node, covers)));
        int count = fields.read("count", 0, SupplyReader::count);
        double length = fields.read("length", 0.0, Measured.size(units));
        fields.notTogether(List.of("count", "length"));
        if (covering.isPresent()) {
            check(covering.get());
        }
        fields.close();
        if (covering.isEmpty() || (count == 0 && length == 0)) {
            return Optional.empty();
        }
        Supply supply = count > 0 ? Supply.sheets(count) : Supply.roll(length);
        return Optional.of(new SizeWish.WidestFrom(covering.get().cover().name(), supply));
    }

    private static int count(Node node) {
        String text = Values.text(node);
        BigInteger count = Numbers.whole(text)
                .orElseThrow(() -> Refusal.wrong(Seen.text(text) + " is not a whole number.", "Write for example 40."));
        if (count.signum() == 0 || count.compareTo(BigInteger.valueOf(MOST)) > 0) {
            throw new Refusal(
                    Code.IMPOSSIBLE, text + " is no number of sheets.", "Write something from 1 to " + MOST + ".");
        }
        return count.intValueExact();
    }

    /** Sheets are counted, rolls measured. */
    private void check(Covering covering) {
        String name = covering.cover().name();
        if (covering.stocks().size() > 1) {
            fields.refuse(
                    "cover",
                    new Refusal(
                            Code.CONFLICT,
                            name + " has several stocks, so that it is not clear which of them there is so much of.",
                            "Keep one of its stocks."));
            return;
        }
        if (covering.stocks().get(0) instanceof Outline) {
            fields.refuse(
                    "cover",
                    new Refusal(
                            Code.CONFLICT,
                            name + " comes from an irregular outline, for which no largest dome is looked for.",
                            "Give the radius, or a cover with a sheet or a roll."));
            return;
        }
        boolean roll = covering.stocks().get(0) instanceof Roll;
        String wrong = roll ? "count" : "length";
        String right = roll ? "length" : "count";
        if (fields.has(wrong)) {
            fields.refuse(
                    wrong,
                    new Refusal(
                            Code.CONFLICT,
                            name
                                    + (roll
                                            ? " comes from a roll, which is measured."
                                            : " comes in sheets, which are counted."),
                            roll ? "Write for example length: 40 m." : "Write for example count: 40."));
        } else if (!fields.has(right)) {
            fields.require(right, roll ? "Write for example length: 40 m." : "Write for example count: 40.");
        } else {
            checkHave(covering.stocks().get(0), right);
        }
    }

    private void checkHave(Stock stock, String key) {
        stock.terms().have().ifPresent(have -> fields.refuse(key, twice(have)));
    }

    private static Refusal twice(int have) {
        return new Refusal(
                Code.CONFLICT,
                "how much there is of the stock is also said by its have: " + have + ".",
                "Leave have out of the stock.");
    }
}
