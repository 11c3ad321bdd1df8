package dev.calotte.choose;

import dev.calotte.dome.Size;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The largest dome that was found whose cover is cut from so much stock. That the cover of this dome is cut from it is
 * certain: the plan is kept. That no larger one is, is certain only where the dome reaches the bound; between the two a
 * better plan may exist.
 *
 * <p>The bound is the radius at which a panel no longer fits the stock, or at which the panels with the gaps round them
 * cover more than there is. The search begins there. It makes first plans of ever smaller domes until one can be cut,
 * then tries larger ones again in strides that are halved until they are 0.05 % of the radius, first with first plans,
 * then with plans on which some work is spent. A plan can happen to use more for one size than for a slightly larger one;
 * that is why larger ones are tried after one has failed.
 *
 * <pre>{@code
 * WidestFrom.Question question = new WidestFrom.Question(cover, stocks.get(0), 5, Supply.sheets(6));
 * WidestFrom found = WidestFrom.of(size -> Parts.of(Dome.of(spec.withSize(size)), joinery), question, 2);
 * int sheets = found.plan().plan().sheets().size();
 * }</pre>
 *
 * @param size the radius of that dome
 * @param plan a plan of its cover that stays within the supply
 * @param steps how much work makes that plan, see {@link Layout}
 * @param boundMm no dome of a larger radius can be cut; nothing where panels may be divided, since gaps at seams make
 *     them smaller
 */
public record WidestFrom(Size size, CoverPlan plan, int steps, OptionalDouble boundMm) {

    private static final double ROUNDING = 1e-9;

    /**
     * What is asked for.
     *
     * @param cover the cover; its seams lie where panels would not fit otherwise
     * @param stock the sheet or roll that it is cut from; of an irregular outline its number is known already
     * @param spacingMm how far pieces stay apart
     * @param supply how much there is of the stock
     */
    public record Question(Cover cover, Stock stock, double spacingMm, Supply supply) {

        /**
         * Checks the stock.
         *
         * @param cover the cover
         * @param stock the sheet or roll that it is cut from
         * @param spacingMm how far pieces stay apart
         * @param supply how much there is of the stock
         * @throws IllegalArgumentException if the stock is neither a sheet nor a roll
         */
        public Question {
            if (!(stock instanceof Sheet || stock instanceof Roll)) {
                throw new IllegalArgumentException("nobody asks for the widest dome from " + stock);
            }
        }
    }

    /**
     * Finds the dome.
     *
     * @param domes the parts of the dome in any size, which must not change what stays of the sphere
     * @param question what it is to be cut from
     * @param threads how many threads share the work; they change nothing but the time it takes
     * @return the largest that was found, the same for the same input
     * @throws dev.calotte.problem.CalotteException at {@code size.widest-from} if no dome is small enough for the
     *     supply
     */
    public static WidestFrom of(Function<Size, Parts> domes, Question question, int threads) {
        return new WidestFromSearch(domes, question, threads).largest();
    }

    /**
     * Whether it is certain that no larger dome can be cut.
     *
     * @return true if the bound is reached
     */
    public boolean proven() {
        return boundMm.isPresent() && size.value() >= boundMm.getAsDouble() * (1 - ROUNDING);
    }
}
