package org.strawblue.core.evidence.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.advice.Advice.Deed;
import org.strawblue.core.evidence.advice.Advice.Option;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.judge.NextLook;
import org.strawblue.core.history.Place;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/**
 * Weighs what could be done by its expected loss: Σ P(hardness) × cost of it, plus the cost of the work. No verdict where the
 * hardness is too uncertain for one, or where what was seen conflicts.
 *
 * <p>A second temper that leaves the part too hard is not lost: part of such parts are noticed by a file and tempered once more.
 */
public final class Adviser {

    private final Judgement judged;
    private final Steel steel;
    private final Band wanted;
    private final Costs costs;
    private final double[] hrc;

    private Adviser(Judgement judged, Steel steel, Band wanted, Costs costs) {
        this.judged = judged;
        this.steel = steel;
        this.wanted = wanted;
        this.costs = costs;
        double end = judged.ensemble().duration();
        this.hrc = judged.ensemble().values(i -> judged.ensemble().hardness(Place.TOP, end, i));
    }

    /** @param candidates looks that could still be taken */
    public static Optional<Advice> of(
            Judgement judged, Steel steel, Band wanted, Costs costs, List<NextLook.Candidate> candidates) {
        return judged.hardness().isEmpty()
                ? Optional.empty()
                : Optional.of(new Adviser(judged, steel, wanted, costs).advise(candidates));
    }

    private Advice advise(List<NextLook.Candidate> candidates) {
        List<Option> options = options();
        Optional<NextLook> look = NextLook.ranked(judged, hrc, candidates).stream()
                .filter(l -> l.gain() > Costs.ALL.si("worth-a-look", Dimension.HARDNESS))
                .findFirst();
        List<Finding> refusals = refusals(look);
        // two deeds that differ by less than a look there and back are told apart by a look
        boolean close = options.get(1).loss() - options.get(0).loss() < 2 * costs.look() && look.isPresent();
        Deed deed = refusals.isEmpty() && !close ? options.get(0).deed() : Deed.LOOK_FIRST;
        return new Advice(deed, soft(), within(hrc), hard(), options, look, refusals);
    }

    /** What could be done, the cheapest first. */
    private List<Option> options() {
        List<Option> options = new ArrayList<>();
        double used = costs.soft() * soft() + costs.hard() * hard();
        options.add(new Option(Deed.ACCEPT, used, within(hrc), Optional.empty()));
        temperAgain().ifPresent(options::add);
        options.add(new Option(
                Deed.HARDEN_AGAIN, costs.hardenAgain() + again(), Costs.ALL.number("good-again"), Optional.empty()));
        options.sort(Comparator.comparingDouble(Option::loss));
        return options;
    }

    /** Why no verdict can be given. */
    private List<Finding> refusals(Optional<NextLook> look) {
        List<Finding> refusals = new ArrayList<>();
        Estimate told = judged.hardness().orElseThrow();
        double most = wanted.width() + Costs.ALL.si("refuse-beyond", Dimension.HARDNESS);
        boolean sure = Math.max(soft(), hard()) > Costs.ALL.number("sure");
        if (told.high() - told.low() > most && !sure) {
            refusals.add(tooWide(told, most, look.isPresent()));
        }
        if (judged.conflicting()) {
            refusals.add(conflict());
        }
        return refusals;
    }

    private double soft() {
        return chance(hrc, Double.NEGATIVE_INFINITY, wanted.low());
    }

    private double hard() {
        return chance(hrc, wanted.high(), Double.POSITIVE_INFINITY);
    }

    private double within(double[] hardness) {
        return chance(hardness, wanted.low(), wanted.high());
    }

    private double chance(double[] hardness, double from, double to) {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < hardness.length; i++) {
            if (!Double.isNaN(hardness[i])) {
                all += judged.weights().of(i);
                sum += hardness[i] >= from && hardness[i] < to
                        ? judged.weights().of(i)
                        : 0;
            }
        }
        return all > 0 ? sum / all : 0;
    }

    private double again() {
        return (1 - Costs.ALL.number("good-again")) * costs.soft() * Costs.ALL.number("soft-again");
    }

    /** The second temper with the least expected loss; absent where the steel's law tells of none. */
    private Optional<Option> temperAgain() {
        double peak = judged.peak().value();
        double step = Costs.ALL.si("temper-step", Dimension.TEMPERATURE_DIFFERENCE);
        double lowest = peak - Costs.ALL.si("temper-below", Dimension.TEMPERATURE_DIFFERENCE);
        double highest = peak + Costs.ALL.si("temper-most", Dimension.TEMPERATURE_DIFFERENCE);
        SecondTemper second = new SecondTemper(judged);
        Option best = null;
        // round figures: what an oven can be set to
        for (double kelvin = round(lowest, step); kelvin <= highest; kelvin += step) {
            Temper temper = new Temper(kelvin, Costs.ALL.si("temper-time", Dimension.TIME));
            if (Tempering.hardness(steel, List.of(temper)).value().isEmpty()) {
                continue;
            }
            Option option = tempered(second.hardness(temper), temper);
            if (best == null || option.loss() < best.loss() - 1e-9) {
                best = option;
            }
        }
        return Optional.ofNullable(best);
    }

    private static double round(double kelvin, double step) {
        double zero = Units.of(Dimension.TEMPERATURE, "°C").toSi(0);
        return zero + step * Math.ceil((kelvin - zero) / step);
    }

    private Option tempered(double[] then, Temper temper) {
        double noticed = Costs.ALL.number("hard-noticed");
        double stillHard =
                noticed * Math.min(costs.hard(), costs.look() + costs.temperAgain()) + (1 - noticed) * costs.hard();
        double loss = costs.temperAgain()
                + costs.soft() * chance(then, Double.NEGATIVE_INFINITY, wanted.low())
                + stillHard * chance(then, wanted.high(), Double.POSITIVE_INFINITY);
        return new Option(Deed.TEMPER_AGAIN, loss, within(then), Optional.of(temper));
    }

    private static Finding tooWide(Estimate told, double most, boolean look) {
        return new Finding.Stop(
                Phrase.of(
                        "No verdict: the hardness may be anything from {} to {}.",
                        Quantity.hardness(told.low()),
                        Quantity.hardness(told.high())),
                Phrase.of("That is wider than {}, the wanted band and a little more.", Quantity.hardness(most)),
                Phrase.of(
                        look
                                ? "Take the look named first."
                                : "Nothing that can still be seen would tell enough: temper a piece"
                                        + " of the same bar beside the next one and try that."));
    }

    private static Finding conflict() {
        return new Finding.Stop(
                Phrase.of("No verdict while what was seen conflicts."),
                Phrase.of("One of the looks must be wrong, and which one decides what to do."),
                Phrase.of("Look again by another means at the one that does not fit."));
    }
}
