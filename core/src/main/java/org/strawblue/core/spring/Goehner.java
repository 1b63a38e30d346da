package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/**
 * K = 1 + 5/(4C) + 7/(8C²) + 1/C³.
 *
 * <p>C spring index [1], for 3 to 20. Within 0.5 % of finite elements at index 4, 6 and 10. Source: from memory, after
 * Göhner.
 */
public record Goehner() implements StressFactor {

    private static final double FIRST = Figures.FORMULAS.number("goehner_first");
    private static final double SECOND = Figures.FORMULAS.number("goehner_second");
    private static final double THIRD = Figures.FORMULAS.number("goehner_third");

    @Override
    public double at(double index) {
        return 1 + (FIRST + (SECOND + THIRD / index) / index) / index;
    }

    @Override
    public Basis basis() {
        return Figures.FORMULAS.basis("stress factor after Göhner", "goehner_first");
    }
}
