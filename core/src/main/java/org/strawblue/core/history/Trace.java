package org.strawblue.core.history;

import java.util.Arrays;

/**
 * Temperature against time at one place, straight lines between its points.
 *
 * @param seconds times [s], rising, the first 0
 * @param kelvin temperatures [K] at those times
 */
@SuppressWarnings("ArrayRecordComponent") // the arrays are copied in and out
public record Trace(double[] seconds, double[] kelvin) {

    public Trace {
        seconds = seconds.clone();
        kelvin = kelvin.clone();
        if (seconds.length < 2 || seconds.length != kelvin.length) {
            throw new IllegalArgumentException("a trace needs two points or more, as many times as temperatures");
        }
        for (int i = 1; i < seconds.length; i++) {
            if (!(seconds[i] > seconds[i - 1])) {
                throw new IllegalArgumentException("times must rise: " + seconds[i - 1] + ", " + seconds[i]);
            }
        }
    }

    @Override
    public double[] seconds() {
        return seconds.clone();
    }

    @Override
    public double[] kelvin() {
        return kelvin.clone();
    }

    public int size() {
        return seconds.length;
    }

    /** [s] */
    public double second(int i) {
        return seconds[i];
    }

    /** [K] */
    public double kelvin(int i) {
        return kelvin[i];
    }

    /** [s] */
    public double duration() {
        return seconds[seconds.length - 1] - seconds[0];
    }

    /** The highest temperature [K]. */
    public double peak() {
        double peak = kelvin[0];
        for (double k : kelvin) {
            peak = Math.max(peak, k);
        }
        return peak;
    }

    /** Temperature [K] at a time [s]; before the start that of the start, after the end that of the end. */
    public double at(double time) {
        int i = before(time);
        if (i < 0) {
            return kelvin[0];
        }
        if (i >= size() - 1) {
            return kelvin[size() - 1];
        }
        double share = (time - seconds[i]) / (seconds[i + 1] - seconds[i]);
        return kelvin[i] + share * (kelvin[i + 1] - kelvin[i]);
    }

    /** Index of the last point not later than a time [s]; −1 before the start. */
    public int before(double time) {
        int i = Arrays.binarySearch(seconds, time);
        return i >= 0 ? i : -i - 2;
    }

    /** This trace as far as a time [s] after its start and before its end. */
    public Trace until(double time) {
        int n = before(Math.nextDown(time)) + 1;
        if (n < 1 || n >= size()) {
            throw new IllegalArgumentException(
                    time + " s is not within " + seconds[0] + " to " + seconds[size() - 1] + " s");
        }
        double[] s = Arrays.copyOf(seconds, n + 1);
        double[] k = Arrays.copyOf(kelvin, n + 1);
        s[n] = time;
        k[n] = at(time);
        return new Trace(s, k);
    }

    /** This trace from a time [s] before its end on, which becomes its 0. */
    public Trace from(double time) {
        int first = before(time) + 1;
        int n = size() - first;
        if (n < 1) {
            throw new IllegalArgumentException(time + " s is not before " + seconds[size() - 1] + " s");
        }
        double[] s = new double[n + 1];
        double[] k = new double[n + 1];
        k[0] = at(time);
        for (int i = 1; i <= n; i++) {
            s[i] = seconds[first + i - 1] - time;
            k[i] = kelvin[first + i - 1];
        }
        return new Trace(s, k);
    }

    /** This trace, then the other one, which starts where this one ends in time. */
    public Trace then(Trace next) {
        double[] s = new double[size() + next.size()];
        double[] k = new double[s.length];
        for (int i = 0; i < size(); i++) {
            s[i] = seconds[i];
            k[i] = kelvin[i];
        }
        // a jump is a line one millionth of the whole long
        double gap = Math.max(duration() + next.duration(), 1) * 1e-6;
        for (int i = 0; i < next.size(); i++) {
            s[size() + i] = seconds[size() - 1] + gap + next.seconds[i] - next.seconds[0];
            k[size() + i] = next.kelvin[i];
        }
        return new Trace(s, k);
    }

    /** One temperature [K] for a time [s]. */
    public static Trace hold(double kelvin, double seconds) {
        return new Trace(new double[] {0, seconds}, new double[] {kelvin, kelvin});
    }

    /** A straight rise or fall from one temperature [K] to another in a time [s]. */
    public static Trace ramp(double fromKelvin, double toKelvin, double seconds) {
        return new Trace(new double[] {0, seconds}, new double[] {fromKelvin, toKelvin});
    }
}
