package org.strawblue.app.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds numbers to what is known of them, and writes them without regard to any locale. */
final class Rounding {

    /** How many steps an interval must span: more would print digits nobody can use, fewer would distort it. */
    private static final double STEPS_PER_INTERVAL = 8;

    private static final double SAME = 1e-7;

    /** What a half may miss in binary and still count as one, as a share. */
    private static final double HALF = 1e-15;

    private Rounding() {}

    /** The step for numbers known only to within {@code width}: the largest 1 or 5 × 10ⁿ that divides it finely. */
    static BigDecimal stepFor(double width, double finest, double coarsest) {
        double wanted = width / STEPS_PER_INTERVAL;
        if (wanted <= finest) {
            return plain(finest);
        }
        if (wanted >= coarsest) {
            return plain(coarsest);
        }
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(exponent(wanted));
        BigDecimal five = power.multiply(BigDecimal.valueOf(5));
        BigDecimal step = five.doubleValue() <= wanted ? five : power;
        return step.max(plain(finest));
    }

    /**
     * The step for a number that comes without an interval: as many figures as the style grants, unless it was plainly
     * written down with more.
     */
    static BigDecimal stepForFigures(double value, int figures, double finest) {
        if (value == 0 || isMultiple(value, finest)) {
            return plain(finest);
        }
        BigDecimal last = BigDecimal.ONE.scaleByPowerOfTen(exponent(Math.abs(value)) + 1 - figures);
        return last.max(plain(finest));
    }

    /** The multiple of {@code step} nearest to {@code value}. */
    static BigDecimal round(double value, BigDecimal step) {
        long steps = Math.round(Math.abs(value) / step.doubleValue() * (1 + HALF));
        return BigDecimal.valueOf(value < 0 ? -steps : steps).multiply(step);
    }

    /** With no more decimals than needed; a true minus sign. */
    static String write(BigDecimal rounded) {
        return sign(rounded, Math.max(0, rounded.stripTrailingZeros().scale()));
    }

    /** With this many decimals. */
    static String write(BigDecimal rounded, int decimals) {
        return sign(rounded, decimals);
    }

    /** Decimals that a group of numbers shares so that their columns agree. */
    static int decimals(BigDecimal... numbers) {
        int most = 0;
        for (BigDecimal n : numbers) {
            most = Math.max(most, n.stripTrailingZeros().scale());
        }
        return most;
    }

    private static String sign(BigDecimal n, int decimals) {
        String digits = n.abs().setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        return n.signum() < 0 ? "−" + digits : digits;
    }

    private static boolean isMultiple(double value, double step) {
        double steps = value / step;
        return Math.abs(steps - Math.rint(steps)) < SAME;
    }

    private static int exponent(double positive) {
        return (int) Math.floor(Math.log10(positive) + 1e-12);
    }

    private static BigDecimal plain(double value) {
        return BigDecimal.valueOf(value);
    }
}
