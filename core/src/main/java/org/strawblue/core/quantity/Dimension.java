package org.strawblue.core.quantity;

/** What kind of thing a number measures, and the unit in which the core holds it. */
public enum Dimension {
    LENGTH("m"),
    AREA("m²"),
    MASS("kg"),
    TIME("s"),
    TEMPERATURE("K"),
    TEMPERATURE_DIFFERENCE("K"),
    FORCE("N"),
    STIFFNESS("N/m"),
    STRESS("Pa"),
    ENERGY("J"),
    MOMENT("N·m"),
    ANGLE("rad"),
    FREQUENCY("Hz"),
    HEATING_RATE("K/s"),
    HARDNESS("HRC"),
    HARDNESS_VICKERS("HV"),
    IMPACT_ENERGY("J"),
    /** A share, from 0 to 1. */
    FRACTION("1"),
    /** A pure number: coils, turns, an index. */
    NUMBER("1");

    private final String si;

    Dimension(String si) {
        this.si = si;
    }

    /** The symbol of the unit in which the core holds this dimension. */
    public String si() {
        return si;
    }
}
