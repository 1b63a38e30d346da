package org.strawblue.core.evidence.learn;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.history.Trace;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * What one log of an oven's temperature tells of the oven.
 *
 * <p>Settled part: what comes after the warming up and its overshoot and before the cooling. Mean: average over whole swings, gaps
 * left out; swing: half the range of a swing, times √(1 + (2πτ/P)²) for the probe's own slowness τ; period P: from one rise through
 * the mean to the next. Intervals: scatter from swing to swing, the instrument's error, and, for offset, that the part does
 * not hang where the probe does.
 *
 * @param set what the oven was set to [K]
 * @param mean true mean [K]
 * @param offset true mean less set [K]; absent where the setting is not known
 * @param instrument half the 80 % interval of the instrument's own error, which later logs by it will have too [K]
 * @param swing to either side of the mean [K]
 * @param period of one swing [s]; absent where no whole swing was seen
 * @param swings whole swings seen
 * @param settled length of the settled part [s]
 */
public record OvenLog(
        OptionalDouble set,
        Estimate mean,
        Optional<Estimate> offset,
        double instrument,
        Estimate swing,
        Optional<Estimate> period,
        int swings,
        double settled) {

    /** Reads a log of the oven's air, or of a small thing in it that follows the air. */
    public static Answer<OvenLog> of(Trace trace, OptionalDouble set, TemperatureIndicator by) {
        double least = Figures.seconds("least-settled");
        Optional<Settled> settled = Settled.of(trace);
        double length = settled.map(Settled::seconds).orElse(0.0);
        if (settled.isEmpty() || length < least) {
            return Answer.refused(tooShort(length, least));
        }
        Swings swings = Swings.of(settled.get());
        OvenLog log = log(swings, set, by, length);
        return Answer.of(log, findings(log, swings));
    }

    private static OvenLog log(Swings swings, OptionalDouble set, TemperatureIndicator by, double seconds) {
        Estimate mean = mean(swings, by);
        Optional<Estimate> period = period(swings);
        Optional<Estimate> offset = set.isPresent()
                ? Optional.of(Estimate.of(
                        Dimension.TEMPERATURE_DIFFERENCE,
                        mean.value() - set.getAsDouble(),
                        mean.low() - set.getAsDouble(),
                        mean.high() - set.getAsDouble(),
                        mean.bases()))
                : Optional.empty();
        double instrument = Normal.HALF_OF_80 * by.errorAt(mean.value()).sd();
        return new OvenLog(
                set,
                mean,
                offset,
                instrument,
                swing(swings, period),
                period,
                swings.all().size(),
                seconds);
    }

    private static Estimate mean(Swings swings, TemperatureIndicator by) {
        List<Swings.Swing> all = swings.all();
        double value = all.isEmpty() ? swings.whole().mean() : average(all, Swings.Swing::mean);
        double scatter = all.isEmpty()
                ? Math.max(swings.whole().half() / 2, Figures.kelvin("cycle-mean"))
                : scatter(all, Swings.Swing::mean, Figures.kelvin("cycle-mean"));
        double instrument = by.errorAt(value).sd();
        double half = Normal.HALF_OF_80 * Math.hypot(Math.hypot(scatter, instrument), Figures.kelvin("place"));
        return Estimate.of(
                Dimension.TEMPERATURE,
                value,
                value - half,
                value + half,
                by.errorAt(value).basis(),
                Figures.ALL.basis("cycle-mean"),
                Figures.ALL.basis("place"));
    }

    private static Optional<Estimate> period(Swings swings) {
        if (swings.all().isEmpty()) {
            return Optional.empty();
        }
        double value = average(swings.all(), Swings.Swing::seconds);
        double before = Figures.number("cycle-time") * value;
        double half = Normal.HALF_OF_80 * scatter(swings.all(), Swings.Swing::seconds, before);
        return Optional.of(Estimate.of(
                Dimension.TIME, value, Math.max(0, value - half), value + half, Figures.ALL.basis("cycle-time")));
    }

    private static Estimate swing(Swings swings, Optional<Estimate> period) {
        boolean seen = period.isPresent();
        double value = seen
                ? average(swings.all(), Swings.Swing::half)
                : swings.whole().half();
        double half = Normal.HALF_OF_80
                * (seen
                        ? scatter(swings.all(), Swings.Swing::half, Figures.kelvin("cycle-half"))
                        : Math.max(value / 2, Figures.kelvin("cycle-half")));
        Estimate lag = Figures.ALL.estimate("probe-lag", Dimension.TIME);
        double turns = period.map(p -> 2 * Math.PI / p.value()).orElse(0.0);
        TreeSet<Basis> bases = new TreeSet<>(lag.bases());
        bases.add(Figures.ALL.basis("cycle-half"));
        return Estimate.of(
                Dimension.TEMPERATURE_DIFFERENCE,
                value * Math.hypot(1, turns * lag.value()),
                // a swing of nothing at all is no swing a logarithm can hold
                Math.max(value - half, value / 2) * Math.hypot(1, turns * lag.low()),
                (value + half) * Math.hypot(1, turns * lag.high()),
                bases);
    }

    private static double average(List<Swings.Swing> all, ToDoubleFunction<Swings.Swing> of) {
        return all.stream().mapToDouble(of).average().orElseThrow();
    }

    /** Standard deviation of the average of n swings; what was believed of the scatter counts as one swing more. */
    private static double scatter(List<Swings.Swing> all, ToDoubleFunction<Swings.Swing> of, double before) {
        double average = average(all, of);
        double squares = all.stream()
                .mapToDouble(s -> of.applyAsDouble(s) - average)
                .map(d -> d * d)
                .sum();
        int n = all.size();
        return Math.sqrt((squares + before * before) / n / n);
    }

    /** What it tells of this oven, for {@link ShopKnowledge}. */
    public Map<Influence, Told> told(String from) {
        Map<Influence, Told> told = new EnumMap<>(Influence.class);
        offset.ifPresent(o -> {
            double half = o.band().width() / 2;
            double alone = Math.sqrt(half * half - instrument * instrument);
            told.put(
                    Influence.OVEN_OFFSET, new Told(o.value(), o.value() - alone, o.value() + alone, instrument, from));
        });
        if (swing.low() > 0) {
            told.put(Influence.OVEN_SWING, new Told(swing.value(), swing.low(), swing.high(), from));
        }
        return told;
    }

    /** What to set it to for a true mean of {@code kelvin} [K]; absent where the setting was not known. */
    public Optional<Estimate> settingFor(double kelvin) {
        return offset.map(o ->
                Estimate.of(Dimension.TEMPERATURE, kelvin - o.value(), kelvin - o.high(), kelvin - o.low(), o.bases()));
    }

    private static Finding tooShort(double seconds, double least) {
        return new Finding.Stop(
                Phrase.of(
                        "Only {} of the log are settled; it takes {} or more.",
                        Quantity.time(seconds),
                        Quantity.time(least)),
                Phrase.of("Warming up, the first overshoot and the cooling tell nothing of where the oven settles."),
                Phrase.of("Log an hour with the door closed, from before it comes to heat; more is better."));
    }

    private static List<Finding> findings(OvenLog log, Swings swings) {
        List<Finding> findings = new ArrayList<>();
        log.offset()
                .filter(o -> Math.abs(o.value()) > Figures.kelvin("odd-offset"))
                .ifPresent(o -> findings.add(odd(o)));
        if (log.set().isEmpty()) {
            findings.add(new Finding.Note(
                    Phrase.of("What the oven was set to is not known: its offset cannot be told."),
                    Phrase.of("Mean and swing hold all the same."),
                    Phrase.of("Give the setting with --set.")));
        }
        if (swings.all().isEmpty()) {
            findings.add(new Finding.Note(
                    Phrase.of("No whole swing was seen: the period is not told, and the swing is a guess."),
                    Phrase.of("Either the oven hardly swings, or the log is shorter than one swing."),
                    Phrase.of("Log for an hour.")));
        } else {
            coarse(swings).ifPresent(findings::add);
            drift(log, swings).ifPresent(findings::add);
        }
        return findings;
    }

    private static Finding odd(Estimate offset) {
        return new Finding.Caution(
                Phrase.of("The oven is off by {}: more than ovens usually are.", offset.quantity()),
                Phrase.of("A setting in °F read as °C, a probe that touches a wall, or a dial off its shaft do this."),
                Phrase.of("Check units and probe before you believe it."));
    }

    private static Optional<Finding> coarse(Swings swings) {
        double readings = average(swings.all(), Swings.Swing::readings);
        return readings >= Figures.number("coarse")
                ? Optional.empty()
                : Optional.of(new Finding.Caution(
                        Phrase.of("There are only {} readings to a swing.", Quantity.number(Math.round(readings))),
                        Phrase.of("Between them it may have gone further: the swing is understated."),
                        Phrase.of("Log every minute or oftener.")));
    }

    private static Optional<Finding> drift(OvenLog log, Swings swings) {
        List<Swings.Swing> all = swings.all();
        int n = all.size();
        if (n < 4) {
            return Optional.empty();
        }
        double early = average(all.subList(0, n / 2), Swings.Swing::mean);
        double late = average(all.subList(n - n / 2, n), Swings.Swing::mean);
        boolean much = Math.abs(late - early) > log.swing().value() / 2;
        return much
                ? Optional.of(new Finding.Caution(
                        Phrase.of(
                                "The oven was still drifting: {} from the first half to the second.",
                                Quantity.temperatureDifference(late - early)),
                        Phrase.of("The mean told lies between."),
                        Phrase.of("Let it settle longer before the part goes in, and log again.")))
                : Optional.empty();
    }
}
