package dev.calotte.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Files of 100,000 closed triangles or a million facets, and the same bytes raw. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 10)
@Measurement(iterations = 10)
public class WriterBench {

    /** The format. */
    @Param({"dxf", "svg", "stl"})
    public String format;

    private Path folder;
    private Work writer;
    private Work raw;

    /** Made by JMH. */
    public WriterBench() {}

    /** Makes what is written. */
    @Setup
    public void draw() throws IOException {
        folder = Files.createTempDirectory("bench");
        writer = Work.writer(format, folder);
        raw = Work.raw(writer, format, folder);
    }

    /** Removes what was written. */
    @TearDown
    public void remove() throws IOException {
        Files.delete(folder.resolve("ours." + format));
        Files.deleteIfExists(folder.resolve("raw." + format));
        Files.delete(folder);
    }

    /** As the exporter writes. */
    @Benchmark
    public long write() throws IOException {
        return writer.run();
    }

    /** Nothing but bytes. */
    @Benchmark
    public long bytes() throws IOException {
        return raw.run();
    }
}
