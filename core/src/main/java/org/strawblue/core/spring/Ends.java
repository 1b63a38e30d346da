package org.strawblue.core.spring;

/** The two ends of a spring, which differ once it has been cut. */
public record Ends(EndType first, EndType second) {

    public static Ends both(EndType type) {
        return new Ends(type, type);
    }

    /** Coils that do no work [1]. */
    public double inactive() {
        return first.inactive() + second.inactive();
    }

    /** [wire diameters] beyond coils × wire, at solid */
    public double solidWires() {
        return first.solidWires() + second.solidWires();
    }

    /** [pitches] in the free length beyond pitch × active coils */
    public double lengthPitches() {
        return first.lengthPitches() + second.lengthPitches();
    }

    /** [wire diameters] in the free length beyond pitch × active coils */
    public double lengthWires() {
        return first.lengthWires() + second.lengthWires();
    }
}
