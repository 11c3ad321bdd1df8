package dev.calotte.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Threads that share work on things that do not know of each other.
 *
 * @param threads how many there are
 * @param done told after each thing, from whatever thread did it
 */
record Crew(int threads, Runnable done) {

    /** The results in the order of the things, whatever came first. */
    <T, R> List<R> each(List<T> things, Function<T, R> work) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Callable<R>> calls = new ArrayList<>();
            things.forEach(thing -> calls.add(() -> {
                R result = work.apply(thing);
                done.run();
                return result;
            }));
            List<R> results = new ArrayList<>();
            for (Future<R> result : pool.invokeAll(calls)) {
                results.add(result.get());
            }
            return results;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the comparison was interrupted", stopped);
        } catch (ExecutionException failed) {
            throw new IllegalStateException("the comparison failed", failed.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
