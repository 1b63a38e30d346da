package org.strawblue.core.evidence.sample;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.AsQuenchedHardness;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;
import org.strawblue.core.steel.TemperingLaw;

/**
 * Hardness of a steel as a table over the Hollomon–Jaffe parameter P, its spread parted into that of the batch, that of the
 * law and that of the quench: HRC = mean(P) + b(P) B + r(P) L + a(P) Q, and no more than as quenched.
 *
 * <p>B departure of the batch [HRC], L the law's remaining error in its own deviations [1], Q departure of the hardness as
 * quenched [HRC]. With the usual belief in B, b and r together make the law's own interval; a is the law's own answer to a
 * hardness as quenched one point higher.
 */
final class TemperedBatch {

    private static final int NODES = 1 << 8;

    private final HollomonJaffe exchange;
    private final double first;
    private final double step;
    private final Node[] nodes;
    private final double quenched;
    private final SortedSet<Basis> bases = new TreeSet<>();

    /** NaN throughout where the law tells nothing. */
    private record Node(double mean, double batch, double law, double quench) {}

    private TemperedBatch(TemperingLaw law, Steel steel, double hold) {
        this.exchange = law.exchange();
        this.quenched = quenched(steel);
        Band range = Tempering.temperatures();
        this.first = exchange.parameter(range.low(), hold);
        this.step = (exchange.parameter(range.high(), hold) - first) / (NODES - 1);
        Optional<TemperingLaw> plain = quenchedLaw(steel, 0);
        Optional<TemperingLaw> harder = quenchedLaw(steel, 1);
        this.nodes = new Node[NODES];
        for (int i = 0; i < NODES; i++) {
            double kelvin = range.clamp(exchange.kelvin(first + i * step, hold));
            Temper temper = new Temper(kelvin, hold);
            double quench = mean(harder, temper) - mean(plain, temper);
            nodes[i] = node(law, temper, Double.isNaN(quench) ? 0 : quench);
        }
    }

    /**
     * Empty where no law tells of the steel.
     *
     * @param hold a time [s] such as the histories have at their peak: short ones are known worse
     */
    static Optional<TemperedBatch> of(Steel steel, double hold) {
        double held = Tempering.times().clamp(hold);
        return Tempering.law(steel).value().map(law -> new TemperedBatch(law, steel, held));
    }

    /** The exchange of time for temperature in this steel. */
    static Optional<HollomonJaffe> exchange(Steel steel) {
        return Tempering.law(steel).value().map(TemperingLaw::exchange);
    }

    private static double mean(Optional<TemperingLaw> law, Temper temper) {
        return law.flatMap(l -> l.hardness(temper).value()).map(Estimate::value).orElse(Double.NaN);
    }

    private Optional<TemperingLaw> quenchedLaw(Steel steel, double more) {
        return Double.isNaN(quenched)
                ? Optional.empty()
                : Tempering.law(steel.asQuenched(quenched + more)).value();
    }

    private static double quenched(Steel steel) {
        if (steel.asQuenched().isPresent()) {
            return steel.asQuenched().getAsDouble();
        }
        return steel.grade()
                .flatMap(key ->
                        Grades.all().stream().filter(g -> g.name().equals(key)).findFirst())
                .flatMap(g -> AsQuenchedHardness.of(g).value())
                .map(Estimate::value)
                .orElse(Double.NaN);
    }

    private Node node(TemperingLaw law, Temper temper, double quench) {
        Optional<Estimate> told = law.hardness(temper).value();
        if (told.isEmpty()) {
            return new Node(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        bases.addAll(told.get().bases());
        double all = told.get().band().width() / (2 * Normal.HALF_OF_80);
        Distribution usual = Priors.usual().of(Influence.STEEL_BATCH);
        double batch = (usual.high() - usual.low()) / (2 * Normal.HALF_OF_80);
        double rest = Math.sqrt(Math.max(all * all - batch * batch, all * all / 4));
        return new Node(told.get().value(), Math.sqrt(all * all - rest * rest) / batch, rest, quench);
    }

    SortedSet<Basis> bases() {
        return Collections.unmodifiableSortedSet(bases);
    }

    /** [HRC]; NaN where nothing is known of it. */
    double asQuenched(double quench) {
        return quenched + quench;
    }

    /** Hardness [HRC] at P [K]; as quenched where the steel has hardly been warm. */
    double hardness(double parameter, double batch, double law, double quench) {
        double place = (parameter - first) / step;
        if (!(place >= 0)) {
            return asQuenched(quench);
        }
        int i = (int) place;
        if (i >= NODES - 1) {
            return Double.NaN;
        }
        double part = place - i;
        double told = told(nodes[i], batch, law, quench) * (1 - part) + told(nodes[i + 1], batch, law, quench) * part;
        return Double.isNaN(quenched) ? told : Math.min(told, asQuenched(quench));
    }

    private static double told(Node node, double batch, double law, double quench) {
        return node.mean() + node.batch() * batch + node.law() * law + node.quench() * quench;
    }
}
