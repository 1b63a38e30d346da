package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * With fewer than four active coils a real spring is stiffer than any formula says, and less certain.
 *
 * <p>Bench tests with two and a half to three active coils found rates 3 to 15 % (index 5) and 8 to 19 % (index 7) above
 * the classical formula. The surplus grows here in a straight line from none at four coils. Source: bench tests,
 * bibliography key few-coil-bench-tests.
 */
final class FewCoils {

    private static final double FROM = Figures.PRACTICE.number("few_coils_from");
    private static final double TO = Figures.PRACTICE.number("few_coils_to");
    private static final double STIFFER = Figures.PRACTICE.number("few_coils_stiffer");
    private static final double WIDE = Figures.PRACTICE.number("few_coils_half_width");
    private static final double NARROW = Figures.PRACTICE.number("rate_half_width");

    private FewCoils() {}

    /** Real rate over formula [1]. */
    static double factor(double activeCoils) {
        return 1 + STIFFER * share(activeCoils);
    }

    /** Half-width of the formula's 80 % interval [1]. */
    static double halfWidth(double activeCoils) {
        return NARROW + (WIDE - NARROW) * share(activeCoils);
    }

    static boolean matters(double activeCoils) {
        return activeCoils < FROM;
    }

    static Basis basis(double activeCoils) {
        return matters(activeCoils)
                ? Figures.PRACTICE.basis("rate with few coils", "few_coils_stiffer")
                : Figures.PRACTICE.basis("error of the rate formula", "rate_half_width");
    }

    private static double share(double activeCoils) {
        return Math.max(0, Math.min(1, (FROM - activeCoils) / (FROM - TO)));
    }
}
