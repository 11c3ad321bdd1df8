package dev.calotte.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whole spheres with all angles and kinds, up to 5.2 million panels. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx4g")
@Warmup(iterations = 5)
@Measurement(iterations = 5)
public class GeometryBench {

    /** The frequency of the icosahedron. */
    @Param({"8", "16", "32", "64", "128", "256", "512"})
    public int frequency;

    /** Made by JMH. */
    public GeometryBench() {}

    /** Dome and parts. */
    @Benchmark
    public long kinds() throws IOException {
        return Work.geometry(frequency).run();
    }
}
