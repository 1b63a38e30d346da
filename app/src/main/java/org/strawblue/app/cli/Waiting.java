package org.strawblue.app.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.service.Progress;

/** A line for the person who waits: what is being done, after a second of it, gone when it is done. */
final class Waiting implements Progress, AutoCloseable {

    private static final int PATIENCE = 1000;
    private static final int EVERY = 200;
    private static final String SIGNS = "-\\|/";

    private final PrintWriter err;
    private final boolean watched;
    private final Thread thread;
    private volatile String what = "the part";
    private volatile boolean done;
    private int shown;

    /** @param watched whether a person sees the line as it comes; else it is left out */
    Waiting(PrintWriter err, boolean watched) {
        this.err = err;
        this.watched = watched;
        this.thread = new Thread(this::run, "waiting");
        thread.setDaemon(true);
        if (watched) {
            thread.start();
        }
    }

    @Override
    public void at(String now) {
        what = now;
    }

    private void run() {
        try {
            Thread.sleep(PATIENCE);
            for (int i = 0; !done; i++) {
                show("  " + SIGNS.charAt(i % SIGNS.length()) + " reckoning " + what + " ...");
                Thread.sleep(EVERY);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void show(String line) {
        if (!done) {
            err.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
            err.flush();
            shown = Math.max(shown, line.length());
        }
    }

    @Override
    public void close() {
        end(thread);
    }

    private synchronized void end(@Nullable Thread waiting) {
        done = true;
        if (waiting != null) {
            waiting.interrupt();
        }
        if (watched && shown > 0) {
            err.print("\r" + " ".repeat(shown) + "\r");
            err.flush();
        }
    }
}
