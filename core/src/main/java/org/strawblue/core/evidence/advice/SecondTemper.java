package org.strawblue.core.evidence.advice;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Temper;

/**
 * Hardness after a second temper, history by history: H_i(P_i ⊕ (T + e_i, t)), by the steel's own law.
 *
 * <p>P_i what history i has been tempered so far, T the temperature meant [K], t its time [s], e_i the error of the shop's own heat
 * source [K]. In the source of the first heat that error is what this history says of it, less what is expected of it (that is
 * known, and set right), and how far two heats by one source differ; in any other it is how well a shop hits a temperature at all. So
 * a history that was hot because the oven runs hot will be hot again, and what the shop has learned of its oven counts.
 */
final class SecondTemper {

    private final Judgement judged;
    private final double[] error;

    SecondTemper(Judgement judged) {
        this.judged = judged;
        this.error = errors(judged);
    }

    private static double[] errors(Judgement judged) {
        Ensemble ensemble = judged.ensemble();
        Optional<Influence> source = source(ensemble);
        double again = difference(source.isPresent() ? "again-spread" : "again-unknown");
        IntToDoubleFunction same = source.<IntToDoubleFunction>map(s -> i -> ensemble.influence(s, i))
                .orElse(i -> 0);
        double expected = judged.weights().mean(ensemble.values(same));
        SplittableRandom random = new SplittableRandom(1);
        return ensemble.values(i ->
                same.applyAsDouble(i) - expected + again * Normal.quantile(random.nextDouble(Double.MIN_NORMAL, 1)));
    }

    private static double difference(String figure) {
        return Costs.ALL.si(figure, Dimension.TEMPERATURE_DIFFERENCE);
    }

    /** What is not known of the source that tempered it; absent where its setting is no temperature of the part. */
    private static Optional<Influence> source(Ensemble ensemble) {
        for (Spell spell : ensemble.course().spells()) {
            Setting setting = spell.setting();
            if (setting instanceof Setting.InOven) {
                return Optional.of(Influence.OVEN_OFFSET);
            }
            if (setting instanceof Setting.OnPlate
                    || setting instanceof Setting.OnSaggingPlate
                    || setting instanceof Setting.InSand) {
                return Optional.of(Influence.PLATE_OFFSET);
            }
        }
        return Optional.empty();
    }

    /** [HRC] of every history. */
    double[] hardness(Temper temper) {
        return judged.ensemble()
                .values(i ->
                        judged.ensemble().hardnessAgain(Place.TOP, temper.kelvin() + error[i], temper.seconds(), i));
    }
}
