package org.strawblue.core.evidence.sample;

import java.util.Arrays;
import org.strawblue.core.estimate.Normal;

/**
 * What is believed of an influence: f(x) = f(centre) + s z, z standard normal, f the identity, ln or ln x/(1 − x); s is
 * set by {@code low} below the centre and by {@code high} above it.
 *
 * @param centre median
 * @param low one chance in ten that the truth lies below
 * @param high one chance in ten that the truth lies above
 */
public record Distribution(Kind kind, double centre, double low, double high) {

    /** The scale on which the bell is a bell. */
    public enum Kind {
        /** Any number. */
        NORMAL("normal"),
        /** Greater than 0. */
        LOGNORMAL("lognormal"),
        /** A share, between 0 and 1. */
        LOGITNORMAL("logitnormal"),
        /** Anything from 0 to 1, all alike. */
        EVEN("even");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in data files. */
        public String word() {
            return word;
        }

        /** @throws IllegalArgumentException where the word is none of ours */
        public static Kind of(String word) {
            return Arrays.stream(values())
                    .filter(k -> k.word.equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("unknown distribution '" + word + "'"));
        }

        /** f(x): onto the scale on which the bell is a bell. */
        public double scaled(double x) {
            return switch (this) {
                case NORMAL, EVEN -> x;
                case LOGNORMAL -> Math.log(x);
                case LOGITNORMAL -> Math.log(x / (1 - x));
            };
        }

        /** Back from that scale. */
        public double unscaled(double y) {
            return switch (this) {
                case NORMAL, EVEN -> y;
                case LOGNORMAL -> Math.exp(y);
                case LOGITNORMAL -> 1 / (1 + Math.exp(-y));
            };
        }
    }

    public Distribution {
        if (!(low <= centre && centre <= high)) {
            throw new IllegalArgumentException("not in order: " + low + ", " + centre + ", " + high);
        }
        if (!Double.isFinite(kind.scaled(low)) || !Double.isFinite(kind.scaled(high))) {
            throw new IllegalArgumentException(kind + " cannot reach from " + low + " to " + high);
        }
    }

    /** A bell about {@code mean}. */
    public static Distribution normal(double mean, double sd) {
        double half = Normal.HALF_OF_80 * sd;
        return new Distribution(Kind.NORMAL, mean, mean - half, mean + half);
    }

    /** As good as known. */
    public static Distribution known(double value) {
        return new Distribution(Kind.NORMAL, value, value, value);
    }

    /** The value that lies {@code z} standard deviations from the middle. */
    public double at(double z) {
        if (kind == Kind.EVEN) {
            return Normal.below(z);
        }
        return kind.unscaled(kind.scaled(centre) + (z < 0 ? below() : above()) * z);
    }

    /** Standard deviations from the middle at which a value lies; 0 where all is known. */
    public double score(double value) {
        if (kind == Kind.EVEN) {
            return Normal.quantile(value);
        }
        double off = kind.scaled(value) - kind.scaled(centre);
        double s = off < 0 ? below() : above();
        return s == 0 ? 0 : off / s;
    }

    private double below() {
        return (kind.scaled(centre) - kind.scaled(low)) / Normal.HALF_OF_80;
    }

    private double above() {
        return (kind.scaled(high) - kind.scaled(centre)) / Normal.HALF_OF_80;
    }
}
