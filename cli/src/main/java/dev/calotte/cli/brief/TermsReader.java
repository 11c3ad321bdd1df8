package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Terms;
import dev.calotte.units.Mass;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads price, mass and number of stock. */
final class TermsReader {

    private static final BigDecimal DEAREST = BigDecimal.valueOf(1e9);
    private static final int MOST = 1_000_000;

    private TermsReader() {}

    /** The terms of a stock whose keys for price and mass have these names. */
    static Terms read(Fields stock, String price, String mass) {
        return new Terms(
                stock.read(price, OptionalDouble.empty(), node -> OptionalDouble.of(price(node))),
                stock.read(mass, OptionalDouble.empty(), node -> OptionalDouble.of(mass(node))),
                stock.read("have", OptionalInt.empty(), node -> OptionalInt.of(count(node))));
    }

    private static double price(Node node) {
        String text = Values.text(node);
        Optional<BigDecimal> price = Numbers.decimal(text);
        if (price.isEmpty() || price.get().compareTo(DEAREST) > 0) {
            throw Refusal.wrong(
                    Seen.text(text) + " is not a price.", "Write a number without its currency, as in 18.40.");
        }
        return price.get().doubleValue();
    }

    private static double mass(Node node) {
        return Values.quantity(node, Mass::parseKg);
    }

    private static int count(Node node) {
        String text = Values.text(node);
        BigInteger count = Numbers.whole(text)
                .orElseThrow(() -> Refusal.wrong(Seen.text(text) + " is not a whole number.", "Write for example 12."));
        if (count.signum() == 0 || count.compareTo(BigInteger.valueOf(MOST)) > 0) {
            throw new Refusal(
                    Code.IMPOSSIBLE,
                    text + " is no number of pieces at hand.",
                    "Write 1 or more, or leave the key out.");
        }
        return count.intValueExact();
    }
}
