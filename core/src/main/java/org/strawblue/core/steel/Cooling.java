package org.strawblue.core.steel;

/**
 * How long each depth of a part takes to come half-way from the hardening temperature to the bath's.
 *
 * <p>ρ c ∂T/∂t = r⁻ⁿ ∂/∂r (k rⁿ ∂T/∂r), n = 0 for a plate, 1 for a round bar; −k ∂T/∂r = h(T) (T − T_bath) at the surface.
 * Twelve cells, implicit steps of about 1/40 of the fall. Properties those of undercooled austenite and constant; heat of
 * transformation left out. Checked against the series of the long cylinder to 2 %.
 *
 * @param size radius of the round bar or half thickness of the plate [m]
 * @param halfTimes time to half temperature [s] from the surface cell to the one at the centre
 */
@SuppressWarnings("ArrayRecordComponent") // made here, never handed out
record Cooling(double size, double[] halfTimes) {

    private static final int CELLS = 12;
    /** No step is shorter than this part of the one the whole body would allow. */
    private static final int FEWEST = 8;

    private static final double STEP = 1.0 / 40;

    double atSurface() {
        return halfTimes[0];
    }

    double atCentre() {
        return halfTimes[CELLS - 1];
    }

    /** Depth [m] to which half temperature is reached within {@code seconds}; the whole {@link #size} where all of it is. */
    double depthWithin(double seconds) {
        double cell = size / CELLS;
        if (seconds >= atCentre()) {
            return size;
        }
        if (seconds <= atSurface()) {
            return seconds / atSurface() * cell / 2;
        }
        int i = 1;
        while (halfTimes[i] < seconds) {
            i++;
        }
        double share = (seconds - halfTimes[i - 1]) / (halfTimes[i] - halfTimes[i - 1]);
        return cell * (i - 1.0 / 2 + share);
    }

    /** Cools {@code body} from {@code hot} [K] in a bath at {@code cold} [K], its film multiplied by {@code strength}. */
    static Cooling of(Body body, Film film, double strength, double hot, double cold) {
        return new Run(body, film, strength, hot, cold).run();
    }

    /** A plate or round bar that stands for the part. */
    record Body(boolean round, double size) {}

    private static final class Run {
        private final Body body;
        private final Film film;
        private final double strength;
        private final double cold;
        private final double hot;
        private final double width;
        private final double[] t = new double[CELLS];
        private final double[] volume = new double[CELLS];
        private final double[] conductance = new double[CELLS];
        private final double[] half = new double[CELLS];
        private final double[] below = new double[CELLS];
        private final double[] rest = new double[CELLS];
        private final double[] before = new double[CELLS];

        /** Cell 0 lies at the surface. */
        Run(Body body, Film film, double strength, double hot, double cold) {
            if (!(body.size() > 0 && strength > 0 && hot > cold)) {
                throw new IllegalArgumentException("nothing to cool: " + body + " from " + hot + " to " + cold);
            }
            this.body = body;
            this.film = film;
            this.strength = strength;
            this.hot = hot;
            this.cold = cold;
            this.width = body.size() / CELLS;
            for (int i = 0; i < CELLS; i++) {
                t[i] = hot;
                volume[i] = body.round() ? width * (radius(i) + radius(i + 1)) / 2 : width;
                conductance[i] = UndercooledAustenite.CONDUCTIVITY / width * area(i + 1);
            }
            conductance[CELLS - 1] = 0;
        }

        private double radius(int face) {
            return body.size() - face * width;
        }

        private double area(int face) {
            return body.round() ? radius(face) : 1;
        }

        Cooling run() {
            double time = 0;
            double middle = (hot + cold) / 2;
            while (half[CELLS - 1] == 0) {
                System.arraycopy(t, 0, before, 0, CELLS);
                double step = step();
                advance(step);
                for (int i = 0; i < CELLS; i++) {
                    if (half[i] == 0 && t[i] <= middle) {
                        half[i] = time + step * (before[i] - middle) / (before[i] - t[i]);
                    }
                }
                time += step;
            }
            return new Cooling(body.size(), half);
        }

        /** Film and half a cell in series [W/K], per radian and metre for the round bar. */
        private double loss() {
            return area(0) / (1 / (strength * film.at(t[0])) + width / 2 / UndercooledAustenite.CONDUCTIVITY);
        }

        /** The time in which the surface cell alone, or the whole body as one, would fall by {@link #STEP} of the range. */
        private double step() {
            double flow = loss() * (t[0] - cold);
            double whole = 0;
            for (double v : volume) {
                whole += v;
            }
            double surface = UndercooledAustenite.CAPACITY * volume[0] * STEP * (hot - cold) / flow;
            double body = UndercooledAustenite.CAPACITY * whole * STEP * (hot - cold) / flow;
            return Math.min(body, Math.max(surface, body / FEWEST));
        }

        /** One implicit step: the three-diagonal system by elimination from the centre outward. */
        private void advance(double step) {
            for (int i = CELLS - 1; i >= 0; i--) {
                double outer = i == 0 ? loss() : conductance[i - 1];
                double inner = conductance[i];
                double store = UndercooledAustenite.CAPACITY * volume[i] / step;
                double carried = i == CELLS - 1 ? 0 : inner * below[i + 1];
                double added = i == CELLS - 1 ? 0 : inner * rest[i + 1];
                double diagonal = store + outer + inner - carried;
                below[i] = outer / diagonal;
                rest[i] = (store * t[i] + added) / diagonal;
            }
            double outside = cold;
            for (int i = 0; i < CELLS; i++) {
                t[i] = rest[i] + below[i] * outside;
                outside = t[i];
            }
        }
    }
}
