package dev.calotte.nest;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Plans with budgets that a build does not spend: how long they take, and beside it what they reach (sheets, or mm of a
 * roll), what any plan needs at least, and the best known before, of which domes.json tells more.
 *
 * <p>Measured on two cores of which others had a part, OpenJDK 17, with two threads: D1 11 sheets in 2 s, with a grain 14,
 * proven, in 0.1 s; D3 53 sheets in 0.5 s (4,000 steps), with a grain 65, proven, in 0.1 s; D2 59.13 m with and 59.10 m
 * without mirroring in 55 s (59.2 m in 5 s with 10,000 steps), with a grain 60.86 and 60.85 m in 9 s; fu 31.00, which is
 * 91.9 %, in 75 s; ten of the published bins 81 for an optimum of 67, 2 to 13 s each.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class NestBench {

    private static final int THREADS = 2;

    /** A dome of domes.json, {@code fu}, or {@code bin-} and the number of one of the published bins; then the steps. */
    @Param({
        "D1_free_m 20000",
        "D1_180_m 20000",
        "D3_free_m 4000",
        "D3_180_m 20000",
        "D2_free_m 10000",
        "D2_180_m 10000",
        "fu 10000",
        "bin-0 20000"
    })
    public String plan;

    private Instance instance;
    private int steps;
    private CutPlan made;

    /** What a plan came to. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Reached {

        /** Sheets, or mm of a roll. */
        public double reached;

        /** What any plan needs at least. */
        public double bound;

        /** The best known before. */
        public double knownBefore;

        /** Made by JMH. */
        public Reached() {}
    }

    /** Made by JMH. */
    public NestBench() {}

    /** Reads the parts. */

    @Setup(Level.Trial)
    public void read() {
        String[] words = plan.split(" ", -1);
        steps = Integer.parseInt(words[1]);
        instance = words[0].equals("fu")
                ? Instance.fu()
                : words[0].startsWith("bin-")
                        ? Instance.terashima().get(Integer.parseInt(words[0].substring(4)))
                        : Instance.dome(words[0]);
    }

    /** Looks for a plan. */
    @Benchmark
    public CutPlan nest(Reached counters) {
        made = instance.plan(steps, THREADS);
        counters.reached = made.goal().reached();
        counters.bound = made.goal().bound();
        counters.knownBefore = instance.best();
        return made;
    }

    /** A plan that does not hold is no figure. */
    @TearDown(Level.Iteration)
    public void check() {
        PlanCheck.check(made, instance.pieces(), instance.spacing());
    }
}
