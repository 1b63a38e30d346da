package org.strawblue.app.report;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Amount;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/**
 * Writes numbers for people in the units they think in, rounded to what is known of them: "204 °C (400 °F)",
 * "200–210 °C (392–410 °F)", "60 HRC (58.5–61.5)", "0.375 in", "45 min". The same in every locale.
 */
public record AmountWriter(UnitSystem system) implements Function<Amount, String> {

    /** Both a plain number and a band; what a {@link Phrase} needs. */
    @Override
    public String apply(Amount amount) {
        return amount instanceof Quantity q ? write(q) : write((Band) amount);
    }

    /** The sentence with its numbers. */
    public String write(Phrase phrase) {
        return phrase.write(this);
    }

    public String write(Quantity quantity) {
        if (!Double.isFinite(quantity.si())) {
            return Double.isNaN(quantity.si()) ? "unknown" : quantity.si() < 0 ? "−∞" : "∞";
        }
        if (quantity.dimension() == Dimension.TIME) {
            return TimeWriter.write(quantity.si());
        }
        NumberStyle style = NumberStyle.of(system, quantity.dimension(), quantity.si());
        String first = single(quantity, style);
        return style.second(system, quantity.si())
                .map(second -> first + " (" + single(quantity, second) + ")")
                .orElse(first);
    }

    /** In the reader's own unit alone. */
    public String first(Quantity quantity) {
        return single(quantity, NumberStyle.of(system, quantity.dimension(), quantity.si()));
    }

    public String write(Band band) {
        if (band.width() == 0 || !Double.isFinite(band.width())) {
            return band.width() == 0 ? write(new Quantity(band.dimension(), band.low())) : open(band);
        }
        if (band.dimension() == Dimension.TIME) {
            return TimeWriter.write(band);
        }
        NumberStyle style = NumberStyle.of(system, band.dimension(), size(band));
        String first = pair(band, style) + unit(style);
        Optional<NumberStyle> second = style.second(system, size(band));
        return second.map(s -> first + " (" + pair(band, s) + unit(s) + ")").orElse(first);
    }

    /** The value, and in brackets its 80 % interval. */
    public String write(Estimate estimate) {
        if (estimate.low() == estimate.high()) {
            return write(estimate.quantity());
        }
        if (estimate.dimension() == Dimension.TIME) {
            return TimeWriter.write(estimate.value()) + " (" + TimeWriter.write(estimate.band()) + ")";
        }
        NumberStyle style = NumberStyle.of(system, estimate.dimension(), size(estimate.band()));
        String first = estimate(estimate, style);
        return style.second(system, estimate.value())
                .map(second -> first + " · " + estimate(estimate, second))
                .orElse(first);
    }

    /** The value alone, rounded to what its interval warrants. */
    public String value(Estimate estimate) {
        NumberStyle style = NumberStyle.of(system, estimate.dimension(), size(estimate.band()));
        double value = style.unit().fromSi(estimate.value());
        return Rounding.write(Rounding.round(value, step(estimate.band(), style))) + unit(style);
    }

    private static String estimate(Estimate estimate, NumberStyle style) {
        BigDecimal step = step(estimate.band(), style);
        BigDecimal value = Rounding.round(style.unit().fromSi(estimate.value()), step);
        BigDecimal low = Rounding.round(style.unit().fromSi(estimate.low()), step);
        BigDecimal high = Rounding.round(style.unit().fromSi(estimate.high()), step);
        if (low.compareTo(high) == 0) {
            return Rounding.write(value) + unit(style);
        }
        boolean half = step.stripTrailingZeros().unscaledValue().intValue() == 5; // "60 HRC", though limits may be 58.5
        int decimals = half ? Rounding.decimals(low, high) : Rounding.decimals(value, low, high);
        String middle = half ? Rounding.write(value) : Rounding.write(value, decimals);
        return middle + unit(style) + " (" + range(low, high, decimals) + ")";
    }

    private static String single(Quantity quantity, NumberStyle style) {
        double value = style.unit().fromSi(quantity.si());
        BigDecimal step = Rounding.stepForFigures(value, style.figures(), style.finest());
        return Rounding.write(Rounding.round(value, step)) + unit(style);
    }

    private static String pair(Band band, NumberStyle style) {
        BigDecimal step = step(band, style);
        BigDecimal low = Rounding.round(style.unit().fromSi(band.low()), step);
        BigDecimal high = Rounding.round(style.unit().fromSi(band.high()), step);
        if (low.compareTo(high) == 0) {
            return Rounding.write(low);
        }
        return range(low, high, Rounding.decimals(low, high));
    }

    private static String range(BigDecimal low, BigDecimal high, int decimals) {
        String from = Rounding.write(low, decimals);
        String to = Rounding.write(high, decimals);
        return low.signum() >= 0 ? from + "–" + to : from + " to " + (high.signum() > 0 ? "+" : "") + to;
    }

    private static BigDecimal step(Band band, NumberStyle style) {
        double width = style.unit().fromSi(band.high()) - style.unit().fromSi(band.low());
        return Rounding.stepFor(width, style.finest(), style.coarsest());
    }

    private String open(Band band) {
        return Double.isFinite(band.low())
                ? write(new Quantity(band.dimension(), band.low())) + " or more"
                : "up to " + write(new Quantity(band.dimension(), band.high()));
    }

    private static double size(Band band) {
        return Math.max(Math.abs(band.low()), Math.abs(band.high()));
    }

    private static String unit(NumberStyle style) {
        return style.symbol().isEmpty() ? "" : style.symbol().equals("°") ? "°" : " " + style.symbol();
    }
}
