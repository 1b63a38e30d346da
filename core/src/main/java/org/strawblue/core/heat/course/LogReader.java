package org.strawblue.core.heat.course;

import org.strawblue.core.history.Trace;

/** Reads a trace in the order of time; beyond its ends it stays as it was there. */
final class LogReader {

    private final Trace trace;
    private int after = 1;

    LogReader(Trace trace) {
        this.trace = trace;
    }

    /** [K] at a time [s] from the trace's start. */
    double at(double seconds) {
        double time = trace.second(0) + seconds;
        if (time >= trace.second(trace.size() - 1)) {
            return trace.kelvin(trace.size() - 1);
        }
        while (time > trace.second(after)) {
            after++;
        }
        while (after > 1 && time < trace.second(after - 1)) {
            after--;
        }
        double share = (time - trace.second(after - 1)) / (trace.second(after) - trace.second(after - 1));
        return trace.kelvin(after - 1) + Math.max(0, share) * (trace.kelvin(after) - trace.kelvin(after - 1));
    }
}
