package org.strawblue.core.fit;

/**
 * The law of a {@link Chain} on evenly spaced points: the mass of each link between half-way points, convolved. Error of a
 * chance below one part in a thousand.
 */
final class Grid {

    private static final int CELLS = 1600;

    private final double origin;
    private final double step;
    private final double[] mass;
    private final double low;
    private final double high;

    private Grid(double origin, double step, double[] mass, double low, double high) {
        this.origin = origin;
        this.step = step;
        this.mass = mass;
        this.low = low;
        this.high = high;
    }

    static Grid of(Chain chain) {
        double low = 0;
        double high = 0;
        for (Link link : chain.links()) {
            low += least(link);
            high += greatest(link);
        }
        double step = (high - low) / CELLS;
        double[] mass = {1};
        if (step > 0) {
            for (Link link : chain.links()) {
                mass = convolved(mass, masses(link, step));
            }
        }
        return new Grid(low, step, mass, low, high);
    }

    double below(double x) {
        if (x <= low || x >= high) {
            return x <= low ? 0 : 1;
        }
        double place = (x - origin) / step + 0.5;
        double sum = 0;
        int whole = (int) Math.floor(place);
        for (int i = 0; i < Math.min(whole, mass.length); i++) {
            sum += mass[i];
        }
        return Math.min(1, whole < mass.length ? sum + (place - whole) * mass[whole] : sum);
    }

    double at(double chance) {
        double sum = 0;
        for (int i = 0; i < mass.length; i++) {
            if (sum + mass[i] >= chance) {
                double x = origin + step * (i - 0.5 + (mass[i] == 0 ? 0 : (chance - sum) / mass[i]));
                return Math.max(low, Math.min(high, x));
            }
            sum += mass[i];
        }
        return high;
    }

    private static double[] masses(Link link, double step) {
        double from = least(link);
        int n = (int) Math.round((greatest(link) - from) / step) + 1;
        double[] mass = new double[n];
        double before = 0;
        for (int i = 0; i < n; i++) {
            double upto = i == n - 1 ? 1 : below(link, from + (i + 0.5) * step);
            mass[i] = upto - before;
            before = upto;
        }
        return mass;
    }

    private static double[] convolved(double[] a, double[] b) {
        double[] sum = new double[a.length + b.length - 1];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                sum[i + j] += a[i] * b[j];
            }
        }
        return sum;
    }

    private static double below(Link link, double x) {
        double value = x / link.weight();
        return link.weight() > 0
                ? link.spread().below(value)
                : 1 - link.spread().below(value);
    }

    private static double least(Link link) {
        return Math.min(
                link.weight() * link.spread().low(),
                link.weight() * link.spread().high());
    }

    private static double greatest(Link link) {
        return Math.max(
                link.weight() * link.spread().low(),
                link.weight() * link.spread().high());
    }
}
