package org.strawblue.core.fit;

import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;

/** How a size of one part may lie. All in the unit of its dimension. */
public sealed interface Spread {

    /** Least value considered. */
    double low();

    /** Greatest value considered. */
    double high();

    double mean();

    double variance();

    /** Chance [1] of a value below {@code x}. */
    double below(double x);

    /** The value below which a chance [1] lies. */
    double at(double chance);

    /** The limits a drawing would state. */
    Band limits();

    /** Known exactly. */
    record Exact(double value, Band limits) implements Spread {

        public static Exact length(double metres) {
            return new Exact(metres, new Band(org.strawblue.core.quantity.Dimension.LENGTH, metres, metres));
        }

        @Override
        public double low() {
            return value;
        }

        @Override
        public double high() {
            return value;
        }

        @Override
        public double mean() {
            return value;
        }

        @Override
        public double variance() {
            return 0;
        }

        @Override
        public double below(double x) {
            return x > value ? 1 : 0;
        }

        @Override
        public double at(double chance) {
            return value;
        }
    }

    /** Anywhere within limits, no place likelier than another: mean (a + b)/2, variance (b − a)²/12. */
    record Within(Band limits) implements Spread {
        @Override
        public double low() {
            return limits.low();
        }

        @Override
        public double high() {
            return limits.high();
        }

        @Override
        public double mean() {
            return limits.middle();
        }

        @Override
        public double variance() {
            return limits.width() * limits.width() / 12;
        }

        @Override
        public double below(double x) {
            double share = limits.width() == 0 ? (x > low() ? 1 : 0) : (x - low()) / limits.width();
            return Math.max(0, Math.min(1, share));
        }

        @Override
        public double at(double chance) {
            return low() + chance * limits.width();
        }
    }

    /**
     * As an {@link Estimate} tells it: on each side half a normal curve. With σ₁, σ₂ below and above: mean + (σ₂ −
     * σ₁)/√(2π), variance (σ₁² + σ₂²)/2 − (σ₂ − σ₁)²/2π.
     */
    record Told(Estimate estimate) implements Spread {

        /** Standard deviations considered; beyond lies less than one part in a hundred million. */
        private static final double REACH = -Normal.quantile(1e-8);

        @Override
        public double low() {
            return estimate.value() - REACH * below();
        }

        @Override
        public double high() {
            return estimate.value() + REACH * above();
        }

        @Override
        public double mean() {
            return estimate.value() + (above() - below()) / Math.sqrt(2 * Math.PI);
        }

        @Override
        public double variance() {
            double shift = mean() - estimate.value();
            return (below() * below() + above() * above()) / 2 - shift * shift;
        }

        @Override
        public double below(double x) {
            return estimate.chanceBelow(x);
        }

        @Override
        public double at(double chance) {
            double sd = Normal.quantile(Math.max(1e-300, chance));
            return estimate.value() + sd * (sd < 0 ? below() : above());
        }

        @Override
        public Band limits() {
            return estimate.band();
        }

        private double below() {
            return (estimate.value() - estimate.low()) / Normal.HALF_OF_80;
        }

        private double above() {
            return (estimate.high() - estimate.value()) / Normal.HALF_OF_80;
        }
    }
}
