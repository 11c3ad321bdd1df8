package dev.calotte.threads;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/**
 * Threads that share pieces of work that do not know of each other.
 *
 * <pre>{@code
 * List<Double> lengths = Crew.everyCore().all(List.of(() -> dome.struts().get(0).lengthMm()));
 * }</pre>
 *
 * @param threads how many there are, at least 1
 */
public record Crew(int threads) {

    private static final int MANY = 100_000;
    /** For each thread, so that one that was slow does not keep the others waiting for long. */
    private static final int STRETCHES = 4;

    /**
     * A crew.
     *
     * @param threads how many there are
     * @throws IllegalArgumentException if there are none
     */
    public Crew {
        if (threads < 1) {
            throw new IllegalArgumentException("a crew of " + threads + " does no work");
        }
    }

    /**
     * Does all of the work. Of pieces that fail, the first in the order of the work tells why, so that what is told does
     * not depend on the threads.
     *
     * @param work the pieces of work
     * @param <T> what each gives
     * @return the results, in the order of the work; unmodifiable
     * @throws IllegalStateException if a piece fails with a checked exception, which is its cause, or if the thread is
     *     interrupted; whatever else a piece throws is thrown as it is
     */
    public <T> List<T> all(List<Callable<T>> work) {
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, work.size())));
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> future : pool.invokeAll(work)) {
                results.add(result(future));
            }
            return Collections.unmodifiableList(results);
        } catch (InterruptedException stopped) {
            throw interrupted(stopped);
        } finally {
            pool.shutdownNow();
        }
    }

    /**
     * A crew for work on many small things: one thread if there are so few that a second one would not pay.
     *
     * @param things how many things there are
     * @return as many threads as the machine has, or one
     */
    public static Crew forMany(int things) {
        return things < MANY ? new Crew(1) : everyCore();
    }

    /**
     * The largest crew that pays.
     *
     * @return as many threads as the machine runs at once
     */
    public static Crew everyCore() {
        return new Crew(Math.max(1, Runtime.getRuntime().availableProcessors()));
    }

    /** Work on things that stand in a row. */
    public interface Stretch {
        /**
         * Does it.
         *
         * @param from the first thing
         * @param to behind the last thing
         */
        void work(int from, int to);
    }

    /**
     * Does work on all things of a row, in several stretches if there are several threads.
     *
     * @param count how many things there are
     * @param stretch what is done; must not mind that other stretches are worked on meanwhile
     */
    public void along(int count, Stretch stretch) {
        if (threads == 1) {
            stretch.work(0, count);
            return;
        }
        int pieces = STRETCHES * threads;
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            int from = (int) ((long) count * i / pieces);
            int to = (int) ((long) count * (i + 1) / pieces);
            work.add(() -> {
                stretch.work(from, to);
                return true;
            });
        }
        all(work);
    }

    /**
     * What becomes of a thing that was made.
     *
     * @param <T> what was made
     * @param <E> what may go wrong
     */
    public interface Taker<T, E extends Exception> {
        /**
         * Takes it.
         *
         * @param thing what was made
         * @throws E if it cannot be taken
         */
        void take(T thing) throws E;
    }

    /**
     * Makes things that stand in a row, and takes each in its turn, on the thread that calls, while others make the next
     * few. A thing that cannot be made is told when its turn comes, so that all before it were taken.
     *
     * @param count how many things there are
     * @param make makes a thing by its number; must not mind that others are made meanwhile
     * @param taker takes them, in order
     * @param <T> what is made
     * @param <E> what taking may throw
     * @throws E if a thing cannot be taken; what makes a thing fail is thrown as it is
     * @throws IllegalStateException if the thread is interrupted
     */
    public <T, E extends Exception> void inTurn(int count, IntFunction<T> make, Taker<T, E> taker) throws E {
        if (threads == 1) {
            for (int i = 0; i < count; i++) {
                taker.take(make.apply(i));
            }
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            Deque<Future<T>> made = new ArrayDeque<>();
            for (int i = 0; i < count; i++) {
                int number = i;
                made.add(pool.submit(() -> make.apply(number)));
                if (made.size() > 2 * threads) {
                    taker.take(result(made.remove()));
                }
            }
            while (!made.isEmpty()) {
                taker.take(result(made.remove()));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static <T> T result(Future<T> made) {
        try {
            return made.get();
        } catch (InterruptedException stopped) {
            throw interrupted(stopped);
        } catch (ExecutionException failed) {
            throw unchecked(failed.getCause());
        }
    }

    private static IllegalStateException interrupted(InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return new IllegalStateException("the work was interrupted", stopped);
    }

    private static RuntimeException unchecked(Throwable cause) {
        if (cause instanceof RuntimeException exception) {
            return exception;
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return new IllegalStateException("the work failed", cause);
    }
}
