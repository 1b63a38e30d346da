package org.strawblue.core.steel;

import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/** Says how much austenite is left after a quench. */
public interface RetainedAustenite {

    /** Share of austenite [1] left at {@code kelvin}, for a steel whose martensite starts to form at {@code start} [K]. */
    Estimate share(Estimate start, double kelvin);

    /** Share left in a grade quenched through to {@code kelvin} [K]. */
    static Answer<Estimate> of(Grade grade, double kelvin) {
        return MartensiteStart.of(grade).map(ms -> new KoistinenMarburger().share(ms, kelvin));
    }

    /**
     * f = exp(−0.011 (Ms − T)), Ms, T [K], T below Ms.
     *
     * <p>Fitted to plain iron–carbon alloys and 52100 by X-rays; for alloyed tool steels an indication. The interval takes in
     * that of Ms and an assumed spread of the law itself. Source: Koistinen and Marburger 1959.
     */
    record KoistinenMarburger() implements RetainedAustenite {

        private static final Law LAW = Law.of("koistinen-marburger");

        @Override
        public Estimate share(Estimate start, double kelvin) {
            double rate = LAW.get("rate");
            double value = left(start.value(), kelvin);
            double fromStart = rate * start.band().width() / 2;
            double half = Math.hypot(fromStart, Normal.HALF_OF_80 * Figures.number("retained-ln-sd"));
            TreeSet<Basis> bases = new TreeSet<>(start.bases());
            bases.add(LAW.basis("retained austenite by Koistinen and Marburger"));
            return Estimate.of(
                    Dimension.FRACTION,
                    value,
                    value * Math.exp(-half),
                    Math.max(value, Math.min(1, value * Math.exp(half))),
                    bases);
        }

        private static double left(double start, double kelvin) {
            return Math.min(1, Math.exp(-LAW.get("rate") * (start - kelvin)));
        }
    }
}
