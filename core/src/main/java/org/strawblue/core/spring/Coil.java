package org.strawblue.core.spring;

/**
 * The plain geometry of one compression spring, every size taken as exact.
 *
 * @param wire d [m]
 * @param outside diameter, free [m]
 * @param free length L₀ [m]
 * @param total coils [1]
 * @param stiffness real shear modulus and formula error together, over the tabled modulus [1]
 */
public record Coil(double wire, double outside, double free, double total, Ends ends, double stiffness) {

    private static final RateLaw RATE = new PitchCorrectedRate();
    private static final double GAP_INDEX = Figures.FORMULAS.number("gap_index");
    private static final double GAP_WIRE = Figures.FORMULAS.number("gap_wire");
    private static final double GAP_MOVING = Figures.FORMULAS.number("gap_moving");

    public static Coil of(double wire, double outside, double free, double total, Ends ends) {
        return new Coil(wire, outside, free, total, ends, 1);
    }

    /** The same with its stiffness factor times as high. */
    Coil stiffer(double times) {
        return new Coil(wire, outside, free, total, ends, stiffness * times);
    }

    /** D [m] */
    public double mean() {
        return outside - wire;
    }

    /** [m] */
    public double inside() {
        return outside - 2 * wire;
    }

    /** C = D/d [1] */
    public double index() {
        return mean() / wire;
    }

    /** n: total coils less what the ends take [1]. */
    public double active() {
        return total - ends.inactive();
    }

    /** p: what is left of the free length for each coil after the ends [m]. */
    public double pitch() {
        return (free - ends.lengthWires() * wire) / (active() + ends.lengthPitches());
    }

    /** Length with all coils touching [m]. */
    public double solid() {
        return (total + ends.solidWires()) * wire;
    }

    /** Pitch when pressed to a length [m], counted on the coils as they were when free [m]. */
    public double pitchAt(double length) {
        return pitch() - (free - length) / active();
    }

    /** [N/m] */
    public double rate(Moduli moduli) {
        return stiffness * RATE.rate(moduli, wire, mean(), active(), pitch());
    }

    /** [N] */
    public double force(Moduli moduli, double length) {
        return rate(moduli) * (free - length);
    }

    /** Corrected shear stress when pressed to a length [m] [Pa]. */
    public double stress(Moduli moduli, StressFactor factor, double length) {
        return factor.stress(force(moduli, length), mean(), wire);
    }

    /** Widest outside diameter when pressed to a length [m], ends free to turn [m]. */
    public double outsideAt(Moduli moduli, CoilGrowth growth, double length) {
        return outside + growth.growth(moduli, mean(), wire, pitch(), pitchAt(length));
    }

    /**
     * Sum of the gaps that should be left at full travel, n (0.0015 D²/d + 0.1 d), half as much again where it is worked
     * often [m]. Source: EN 13906-1, formula sheet.
     */
    public double leastGap(boolean moving) {
        return active() * leastGapOfOne(wire, mean(), moving);
    }

    /** 0.0015 D²/d + 0.1 d for each coil, half as much again where it is worked often [m]. */
    static double leastGapOfOne(double wire, double mean, boolean moving) {
        return (GAP_INDEX * mean * mean / wire + GAP_WIRE * wire) * (moving ? GAP_MOVING : 1);
    }
}
