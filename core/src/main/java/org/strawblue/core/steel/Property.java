package org.strawblue.core.steel;

import java.util.Arrays;
import org.strawblue.core.quantity.Dimension;

/** What {@code grade-figures.csv} may tell of a grade. */
public enum Property {
    /** Lower critical point on slow heating [K]. */
    AC1("ac1", Dimension.TEMPERATURE),
    /** Upper critical point on slow heating [K]; Accm where carbon exceeds the eutectoid. */
    AC3("ac3", Dimension.TEMPERATURE),
    /** Where martensite starts to form on cooling [K]. */
    MARTENSITE_START("ms", Dimension.TEMPERATURE),
    /** Carbon in solution in the austenite after a usual soak [1], by mass. */
    DISSOLVED_CARBON("dissolved-carbon", Dimension.FRACTION),
    /** Hardening temperature, with the aim [K]. */
    AUSTENITISE("austenitise", Dimension.TEMPERATURE),
    PREHEAT("preheat", Dimension.TEMPERATURE),
    SECOND_PREHEAT("preheat-2", Dimension.TEMPERATURE),
    /** Time at heat after heating through [s]. */
    SOAK("soak", Dimension.TIME),
    /** Hardness where fully hardened, before any temper [HRC]. */
    AS_QUENCHED("as-quenched", Dimension.HARDNESS),
    /** Usual tempering temperatures [K]. */
    TEMPER("temper", Dimension.TEMPERATURE),
    /** Round bar with half martensite at its centre [m]. */
    HALF_HARD_IN_BRINE("section-brine-half", Dimension.LENGTH),
    HALF_HARD_IN_WATER("section-water-half", Dimension.LENGTH),
    HALF_HARD_IN_OIL("section-oil-half", Dimension.LENGTH),
    /** Round bar fully hard at its centre [m]. */
    FULLY_HARD_IN_WATER("section-water-full", Dimension.LENGTH),
    FULLY_HARD_IN_OIL("section-oil-full", Dimension.LENGTH),
    FULLY_HARD_IN_AIR("section-air-full", Dimension.LENGTH),
    /** Growth of a length on hardening, as quenched [1]. */
    SIZE_CHANGE("size-change", Dimension.FRACTION);

    private final String word;
    private final Dimension dimension;

    Property(String word, Dimension dimension) {
        this.word = word;
        this.dimension = dimension;
    }

    /** The word used in data files. */
    public String word() {
        return word;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** @throws IllegalArgumentException where the word is none of ours */
    static Property of(String word) {
        return Arrays.stream(values())
                .filter(p -> p.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown property '" + word + "'"));
    }
}
