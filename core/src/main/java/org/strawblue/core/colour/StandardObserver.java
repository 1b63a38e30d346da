package org.strawblue.core.colour;

import java.util.function.DoubleUnaryOperator;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * The eye: the 2° standard observer of 1931, from {@code observer_1931.csv}.
 *
 * <p>X = Σ S(λ) x̄(λ) Δλ and so on, over 380 to 780 nm in steps of 5 nm.
 */
public final class StandardObserver {

    private static final double NANO = 1e-9;
    private static final Row[] ROWS =
            Table.of(StandardObserver.class, "observer_1931.csv").rows().toArray(Row[]::new);
    private static final double[] WAVELENGTHS = column("wavelength_nm", NANO);
    private static final double[] X = column("x", 1);
    private static final double[] Y = column("y", 1);
    private static final double[] Z = column("z", 1);

    private StandardObserver() {}

    /** The wavelengths of the sums [m], rising. */
    public static double[] wavelengths() {
        return WAVELENGTHS.clone();
    }

    /** The step between them [m]. */
    public static double step() {
        return WAVELENGTHS[1] - WAVELENGTHS[0];
    }

    /** Weighs a spectrum given at {@link #wavelengths()}: ΣS x̄, ΣS ȳ, ΣS z̄, without Δλ. */
    public static Tristimulus weigh(double[] spectrum) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < X.length; i++) {
            x += spectrum[i] * X[i];
            y += spectrum[i] * Y[i];
            z += spectrum[i] * Z[i];
        }
        return new Tristimulus(x, y, z);
    }

    /** A function of wavelength [m], taken at {@link #wavelengths()}. */
    public static double[] sample(DoubleUnaryOperator spectrum) {
        return java.util.Arrays.stream(WAVELENGTHS).map(spectrum).toArray();
    }

    private static double[] column(String name, double factor) {
        return java.util.Arrays.stream(ROWS)
                .mapToDouble(r -> r.number(name) * factor)
                .toArray();
    }
}
