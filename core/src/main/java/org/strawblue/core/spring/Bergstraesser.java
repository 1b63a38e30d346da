package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * K = (4C + 2)/(4C − 3), which is EN 13906-1's (w + 0.5)/(w − 0.75).
 *
 * <p>C spring index [1], for 3 to 20. Within 0.5 % of finite elements at index 4, 6 and 10. Source: engineering
 * textbooks, after Bergsträsser.
 */
public record Bergstraesser() implements StressFactor {

    private static final double INDEX = Figures.FORMULAS.number("bergstraesser_index");
    private static final double OVER = Figures.FORMULAS.number("bergstraesser_over");
    private static final double UNDER = Figures.FORMULAS.number("bergstraesser_under");

    @Override
    public double at(double index) {
        return (INDEX * index + OVER) / (INDEX * index - UNDER);
    }

    @Override
    public Basis basis() {
        return Figures.FORMULAS.basis("stress factor after Bergsträsser", "bergstraesser_index");
    }
}
