package org.strawblue.core.evidence.learn;

import java.util.SplittableRandom;
import org.strawblue.core.history.Trace;

/**
 * An oven and its log: warms up, overshoots, swings about its mean, is perhaps switched off at the end; the log has a probe's lag,
 * a sensor's error, noise, and perhaps gaps.
 */
record SimulatedOven(double set, double offset, double swing, double period, double sensor, boolean sine) {

    static SimulatedOven drawn(SplittableRandom random) {
        return new SimulatedOven(
                420 + 90 * random.nextDouble(),
                15 * HierarchyTest.normal(random),
                10 + 12 * random.nextDouble(),
                300 + 1200 * random.nextDouble(),
                0,
                random.nextBoolean());
    }

    SimulatedOven sensor(double error) {
        return new SimulatedOven(set, offset, swing, period, error, sine);
    }

    /** @param hours after it has come to heat; @param step between readings [s] */
    Trace log(SplittableRandom random, double hours, double step, double noise, boolean gaps, boolean off) {
        double room = 295;
        double warm = 900;
        double end = warm + hours * 3600;
        int n = (int) (end / step);
        double[] s = new double[n];
        double[] k = new double[n];
        int kept = 0;
        double phase = random.nextDouble();
        double shown = room;
        double gapFrom = warm + (end - warm) * random.nextDouble();
        for (int i = 0; i < n; i++) {
            double t = i * step;
            double air = t < warm ? room + (set + offset + swing - room) * t / warm : mean(t - warm, phase);
            if (off && t > end - 600) {
                air = mean(end - 600 - warm, phase) - (t - end + 600) * 0.15;
            }
            shown += (air - shown) * (1 - Math.exp(-step / 20));
            boolean gap = gaps && t > gapFrom && t < gapFrom + 1200;
            if (!gap) {
                s[kept] = t;
                k[kept++] = shown + sensor + noise * HierarchyTest.normal(random);
            }
        }
        return new Trace(java.util.Arrays.copyOf(s, kept), java.util.Arrays.copyOf(k, kept));
    }

    private double mean(double t, double phase) {
        double turn = t / period + phase;
        double part = turn - Math.floor(turn);
        double wave = sine ? Math.sin(2 * Math.PI * turn) : part < 0.4 ? 5 * part - 1 : 1 - (part - 0.4) * 2 / 0.6;
        double overshoot = 12 * Math.exp(-t / 400);
        return set + offset + swing * wave + overshoot;
    }
}
