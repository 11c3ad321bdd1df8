package dev.calotte.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs pieces of work that do not know of each other on several threads. */
final class Parallel {

    private Parallel() {}

    /** The results in the order of the work, whatever came first. */
    static <T> List<T> all(int threads, List<Callable<T>> work) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> result : pool.invokeAll(work)) {
                results.add(result.get());
            }
            return results;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the layout was interrupted", stopped);
        } catch (ExecutionException failed) {
            throw new IllegalStateException("the layout failed", failed.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
