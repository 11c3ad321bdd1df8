package dev.calotte.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicInteger;

/** Counts on one line of a terminal while long work goes on; silent where nobody looks. */
final class Progress implements Runnable {

    private final PrintWriter err;
    private final boolean watched;
    private final String what;
    private int shown;
    private final AtomicInteger done = new AtomicInteger();

    Progress(PrintWriter err, boolean watched, String what) {
        this.err = err;
        this.watched = watched;
        this.what = what;
    }

    static Progress onTerminal(PrintWriter err, String what) {
        return new Progress(err, isWatched(), what);
    }

    static Progress unseen(PrintWriter err) {
        return new Progress(err, false, "");
    }

    /** Whether both ends of the command are at a terminal. */
    @SuppressWarnings("SystemConsoleNull") // newer Java has a console in a pipe as well, and is asked below
    private static boolean isWatched() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException older) {
            return true;
        }
    }

    /** Says what goes on before there is anything to count. */
    void begin(String first) {
        print(first);
    }

    @Override
    public void run() {
        print(what + " " + done.incrementAndGet());
    }

    /** Takes the line away. */
    void end() {
        print("");
    }

    /** In the place of what was said last. */
    private void print(String line) {
        if (watched) {
            synchronized (err) {
                err.print("\r" + " ".repeat(shown) + "\r" + line);
                err.flush();
                shown = line.length();
            }
        }
    }
}
