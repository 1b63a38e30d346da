package org.strawblue.core.evidence.diagnosis;

import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.fit.Decarburisation;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.CriticalPoints;
import org.strawblue.core.steel.HardeningHeat;

/** Whether it was hot enough, too hot, long enough in the heat, what that did to its skin, and whether it is too slender for a heat. */
final class HeatChecks {

    private HeatChecks() {}

    static Optional<Check> heat(Known known) {
        if (known.hardenedFrom().isEmpty()) {
            return Optional.empty();
        }
        double told = known.hardenedFrom().getAsDouble();
        return known.window()
                .flatMap(window -> known.grade()
                        .flatMap(g -> CriticalPoints.of(g).value())
                        .map(points -> {
                            // between the lower critical point and the window it hardens in part
                            double needed = (points.ac1().value() + window.low()) / 2;
                            return new Check(
                                    Normal.below((needed - told) / heatSpread(known)),
                                    Phrase.of(
                                            "hardened from {}; it wants {}", Quantity.temperature(told), window.band()),
                                    Check.assumed("error of the hardening heat"));
                        }));
    }

    static Optional<Check> overheated(Known known) {
        if (known.hardenedFrom().isEmpty()) {
            return Optional.empty();
        }
        double told = known.hardenedFrom().getAsDouble();
        double past = Figures.ALL.si("past-window", Dimension.TEMPERATURE_DIFFERENCE);
        return known.window()
                .map(window -> new Check(
                        Normal.below((told - window.high() - past) / heatSpread(known)),
                        Phrase.of(
                                "hardened from {}; it wants no more than {}",
                                Quantity.temperature(told),
                                Quantity.temperature(window.high())),
                        Check.assumed("error of the hardening heat")));
    }

    /** How far the true hardening heat may be from the one told [K]. */
    private static double heatSpread(Known known) {
        double eye = Figures.ALL.si("heat-spread", Dimension.TEMPERATURE_DIFFERENCE);
        return known.source().map(s -> s.traits().offset()).orElse(eye);
    }

    static Optional<Check> soak(Known known) {
        if (known.inTheHeat().isEmpty()
                || known.shape().isEmpty()
                || known.source().isEmpty()) {
            return Optional.empty();
        }
        Optional<Estimate> window = known.window();
        if (window.isEmpty()) {
            return Optional.empty();
        }
        double target = known.hardenedFrom().orElse(window.get().value());
        double told = known.inTheHeat().getAsDouble();
        double soak = known.grade().map(g -> HardeningHeat.soak(g).low()).orElse(0.0);
        return HeatThrough.time(
                        known.shape().get(),
                        known.source().get(),
                        SteelProperties.room(),
                        target,
                        HeatThrough.Surface.SCALING)
                .value()
                .map(through -> new Check(
                        1 - through.chanceBelow(told - soak),
                        Phrase.of(
                                "{} in the heat; to heat through it takes {}, then a soak of {}",
                                Quantity.time(told),
                                through.band(),
                                Quantity.time(soak)),
                        Check.assumed("time to heat through")));
    }

    static Optional<Check> skin(Known known) {
        if (known.hardenedFrom().isEmpty() || known.inTheHeat().isEmpty()) {
            return Optional.empty();
        }
        double least = Figures.ALL.si("soft-skin", Dimension.LENGTH);
        Estimate skin = Decarburisation.skin(
                known.hardenedFrom().getAsDouble(), known.inTheHeat().getAsDouble());
        return Optional.of(new Check(
                1 - skin.chanceBelow(least),
                Phrase.of("a soft skin of {} after so long in air at that heat", skin.band()),
                skin.bases().first()));
    }

    static Optional<Check> slender(Known known) {
        return known.shape().map(shape -> {
            boolean slender = shape instanceof PartShape.Flat f
                    ? f.width() / f.thickness() > HardeningHeat.wideThin()
                            || f.length() / f.thickness() > HardeningHeat.longThin()
                    : length(shape) / shape.section() > HardeningHeat.longThin();
            return new Check(
                    Figures.number(slender ? "slender-chance" : "stout-chance"),
                    Phrase.of(
                            "a section of {}" + (slender ? ", long or wide for that" : ""),
                            Quantity.length(shape.section())),
                    Figures.ALL.basis("slender parts bend", "slender-chance"));
        });
    }

    private static double length(PartShape shape) {
        if (shape instanceof PartShape.RoundBar bar) {
            return bar.length();
        }
        if (shape instanceof PartShape.SquareBar bar) {
            return bar.length();
        }
        if (shape instanceof PartShape.Tube tube) {
            return tube.length();
        }
        return shape instanceof PartShape.SteppedPin pin ? pin.length() : shape.section();
    }
}
