package dev.calotte.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicInteger;

/** Counts on one line of a terminal while long work goes on; silent where nobody looks. */
final class Progress implements Runnable {

    private final PrintWriter err;
    private final boolean watched;
    private final String what;
    private final AtomicInteger done = new AtomicInteger();

    Progress(PrintWriter err, boolean watched, String what) {
        this.err = err;
        this.watched = watched;
        this.what = what;
    }

    /** Whether both ends of the command are at a terminal. */
    @SuppressWarnings("SystemConsoleNull") // newer Java has a console in a pipe as well, and is asked below
    static boolean isWatched() {
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

    @Override
    public void run() {
        int count = done.incrementAndGet();
        if (watched) {
            synchronized (err) {
                err.print("\r" + what + " " + count);
                err.flush();
            }
        }
    }

    /** Takes the line away. */
    void end() {
        if (watched) {
            err.print("\r" + " ".repeat(what.length() + 12) + "\r");
            err.flush();
        }
    }
}
