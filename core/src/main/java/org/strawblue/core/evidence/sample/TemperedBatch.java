package org.strawblue.core.evidence.sample;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.AsQuenchedHardness;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.steel.TemperingLaw;

/**
 * Hardness of a steel as a table over the Hollomon–Jaffe parameter, its spread parted into that of the batch, that of the
 * law and that of the quench: HRC = mean(P) + b(P) batch + r(P) law + a(P) quench, no more than as quenched. b and r together
 * make the law's own interval where batch and law are as widely believed as usual.
 */
final class TemperedBatch {

    private static final int NODES = 1 << 8;
    private static final double HOUR = 3600;

    private final HollomonJaffe exchange;
    private final double first;
    private final double step;
    private final double[][] figures;
    private final OptionalDouble quenched;
    private final TreeSet<Basis> bases = new TreeSet<>();

    private TemperedBatch(TemperingLaw law, Optional<TemperingLaw> harder, OptionalDouble quenched, double hold) {
        this.exchange = law.exchange();
        this.quenched = quenched;
        this.first = exchange.parameter(COLDEST, hold);
        this.step = (exchange.parameter(HOTTEST, hold) - first) / (NODES - 1);
        double usual = deviation(Priors.usual().of(Influence.STEEL_BATCH));
        this.figures = new double[NODES][];
        for (int i = 0; i < NODES; i++) {
            Temper temper = new Temper(exchange.kelvin(first + i * step, hold), hold);
            figures[i] = figures(law, harder, temper, usual);
        }
    }

    private static final double COLDEST = 363.15;
    private static final double HOTTEST = 973.15;

    /** Empty where no law tells of the steel. */
    static Optional<TemperedBatch> of(Steel steel, double hold) {
        return Tempering.law(steel).value().map(law -> {
            OptionalDouble quenched = quenched(steel);
            Optional<TemperingLaw> plain = law(steel, quenched, 0);
            Optional<TemperingLaw> harder = law(steel, quenched, 1);
            return new TemperedBatch(law, plain.isPresent() ? harder : plain, quenched, hold);
        });
    }

    private static Optional<TemperingLaw> law(Steel steel, OptionalDouble quenched, double more) {
        return quenched.isPresent()
                ? Tempering.law(steel.asQuenched(quenched.getAsDouble() + more)).value()
                : Optional.empty();
    }

    private static OptionalDouble quenched(Steel steel) {
        return OptionalDouble.empty();
    }

    private double[] figures(TemperingLaw law, Optional<TemperingLaw> harder, Temper temper, double usual) {
        return new double[0];
    }

    private static double deviation(Distribution d) {
        return (d.high() - d.low()) / (2 * Normal.HALF_OF_80);
    }
}
