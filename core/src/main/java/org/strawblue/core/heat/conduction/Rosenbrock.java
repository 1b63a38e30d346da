package org.strawblue.core.heat.conduction;

import java.util.HashMap;
import java.util.Map;
import org.strawblue.core.table.Table;

/**
 * Stiff integrator with error control: the stiffly accurate Rosenbrock method of order 4 with an embedded one of order 3, six
 * stages, one factorisation a step:
 *
 * <p>(1/(hγ) − J) u_i = f(t + α_i h, y + Σ a_ij u_j) + Σ c_ij u_j / h + d_i h ∂f/∂t; the last stage is the error.
 *
 * <p>Source: Hairer and Wanner 1996.
 */
final class Rosenbrock {

    private static final int STAGES = 6;
    private static final double[][] A = new double[STAGES][STAGES];
    private static final double[][] C = new double[STAGES][STAGES];
    private static final double[] ALPHA = new double[STAGES];
    private static final double[] D = new double[STAGES];
    private static final double[][] DENSE = new double[2][STAGES - 1];
    private static final double GAMMA;

    static {
        Map<String, Double> figures = new HashMap<>();
        Table.of(Rosenbrock.class, "rodas.csv").rows().forEach(r -> figures.put(r.text("key"), r.number("value")));
        GAMMA = figures.getOrDefault("gamma", 0.0);
        for (int i = 0; i < STAGES; i++) {
            for (int j = 0; j < i; j++) {
                A[i][j] = figures.getOrDefault("a" + (i + 1) + (j + 1), 0.0);
                C[i][j] = figures.getOrDefault("c" + (i + 1) + (j + 1), 0.0);
            }
            ALPHA[i] = figures.getOrDefault("t" + (i + 1), 0.0);
            D[i] = figures.getOrDefault("d" + (i + 1), 0.0);
        }
        for (int i = 0; i < STAGES - 1; i++) {
            DENSE[0][i] = figures.getOrDefault("e1" + (i + 1), 0.0);
            DENSE[1][i] = figures.getOrDefault("e2" + (i + 1), 0.0);
        }
        // the last two stages are at the end of the step: all of the fifth, and what it adds, and the sixth
        ALPHA[4] = 1;
        ALPHA[5] = 1;
    }

    /** What is told of each step taken, while its stages are still there to be asked between its ends. */
    interface Listener {
        /** @param power0 through the surface at the beginning [W]; {@code power1} at the end */
        void step(double from, double to, double[] y0, double[] y1, double power0, double power1, Between between);
    }

    /** The state within the step just taken. */
    interface Between {
        /** @param share of the step, 0 to 1 */
        double at(double share, int unknown);

        /** All unknowns. */
        void all(double share, double[] state);
    }

    private final HeatFlow flow;
    private final StepMatrix matrix;
    private final double tolerance;
    private final int n;
    private final double[][] u;
    private final double[] stage;
    private final double[] rate;
    private final double[] next;
    private final double[] drift;

    /** @param tolerance of one step [K] */
    Rosenbrock(HeatFlow flow, Mesh mesh, double tolerance) {
        this.flow = flow;
        this.matrix = new StepMatrix(flow, mesh);
        this.tolerance = tolerance;
        this.n = flow.size();
        this.u = new double[STAGES][n];
        this.stage = new double[n];
        this.rate = new double[n];
        this.next = new double[n];
        this.drift = new double[n];
    }

    /** Takes {@code y} from one time [s] to another; returns the steps it took, or less than 0 where it gave up. */
    int run(double from, double to, double[] y, int most, Listener listener) {
        double t = from;
        double power = flow.rate(t, y, rate);
        double h = Math.min(Math.min(first(), flow.longestStep()), to - from);
        int steps = 0;
        while (t < to) {
            matrix.linearise(t, y);
            drift(t, y);
            double error = tried(t, y, h);
            while (!(error <= 1) && h > (to - from) * 1e-13) {
                h *= Double.isNaN(error) ? 0.2 : Math.max(0.2, 0.9 * Math.pow(error, -1.0 / 4));
                error = tried(t, y, h);
            }
            double end = to - (t + h) < h * 1e-9 ? to : t + h;
            double before = power;
            power = flow.rate(end, next, rate);
            listener.step(t, end, y, next, before, power, new Within(y));
            System.arraycopy(next, 0, y, 0, n);
            t = end;
            steps++;
            if (steps >= most) {
                return -1;
            }
            double grow = Math.min(6, 0.9 * Math.pow(Math.max(error, 1e-8), -1.0 / 4));
            h = Math.min(Math.min(h * grow, flow.longestStep()), to - t);
        }
        return steps;
    }

    /** A first step in which the state moves by a tolerance's root, measured as its error is. */
    private double first() {
        return Math.sqrt(tolerance) / Math.max(1e-9, size(rate));
    }

    /** ∂f/∂t, where the surroundings change by themselves. */
    private void drift(double t, double[] y) {
        if (flow.steady()) {
            return;
        }
        double dt = 1e-3;
        flow.rate(t + dt, y, drift);
        for (int i = 0; i < n; i++) {
            drift[i] = (drift[i] - rate[i]) / dt;
        }
    }

    /** Makes {@link #next}; returns the error over the tolerance. */
    private double tried(double t, double[] y, double h) {
        matrix.factorise(1 / (h * GAMMA));
        for (int s = 0; s < STAGES; s++) {
            double[] b = u[s];
            if (s == 0) {
                System.arraycopy(rate, 0, b, 0, n);
            } else {
                argument(s, y);
                flow.rate(t + ALPHA[s] * h, stage, b);
            }
            for (int j = 0; j < s; j++) {
                add(b, u[j], C[s][j] / h);
            }
            if (D[s] != 0 && !flow.steady()) {
                add(b, drift, D[s] * h);
            }
            matrix.solve(b);
        }
        System.arraycopy(stage, 0, next, 0, n);
        add(next, u[STAGES - 1], 1);
        return size(u[STAGES - 1]) / tolerance;
    }

    /** Root of the mean square. */
    private static double size(double[] x) {
        double sum = 0;
        for (double v : x) {
            sum += v * v;
        }
        return Math.sqrt(sum / x.length);
    }

    /** y = (1 − s) y₀ + s [y₁ + (1 − s) (Σ e₁ᵢ uᵢ + s Σ e₂ᵢ uᵢ)], of order 3 and damped as the step itself is. */
    private final class Within implements Between {

        private final double[] y;

        Within(double[] y) {
            this.y = y;
        }

        @Override
        public double at(double s, int i) {
            double sum = (1 - s) * y[i] + s * next[i];
            for (int j = 0; j < STAGES - 1; j++) {
                sum += weight(s, j) * u[j][i];
            }
            return sum;
        }

        @Override
        public void all(double s, double[] state) {
            for (int i = 0; i < n; i++) {
                state[i] = (1 - s) * y[i] + s * next[i];
            }
            for (int j = 0; j < STAGES - 1; j++) {
                add(state, u[j], weight(s, j));
            }
        }

        private double weight(double s, int stage) {
            return s * (1 - s) * (DENSE[0][stage] + s * DENSE[1][stage]);
        }
    }

    private void argument(int s, double[] y) {
        if (s == STAGES - 1) {
            // the sixth stage starts where the fifth ended
            add(stage, u[s - 1], 1);
            return;
        }
        System.arraycopy(y, 0, stage, 0, n);
        for (int j = 0; j < s; j++) {
            add(stage, u[j], A[s][j]);
        }
    }

    private static void add(double[] to, double[] what, double factor) {
        if (factor != 0) {
            for (int i = 0; i < to.length; i++) {
                to[i] += factor * what[i];
            }
        }
    }
}
