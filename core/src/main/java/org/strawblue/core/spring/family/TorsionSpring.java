package org.strawblue.core.spring.family;

/**
 * θ = 10.8 M D n/(E d⁴) turns, σ = K 32 M/(π d³): a coil twisted about its axis, loaded in the sense that winds it up.
 *
 * <p>M moment [N m], D mean diameter [m], n = n_b + (l₁ + l₂)/(3 π D) coils with the legs' share, E [Pa], d wire [m]. 10.8
 * where the theory of bending gives 64/2π = 10.2: the trade's allowance for coils that rub. Finite elements without
 * friction are within 1 % of 10.2. Source: textbook examples of torsion springs.
 *
 * @param wire [m]
 * @param mean coil diameter [m]
 * @param bodyCoils [1]
 * @param legs length of both legs together, as far as they bend [m]
 * @param tension E [Pa]
 */
public record TorsionSpring(double wire, double mean, double bodyCoils, double legs, double tension) implements Spring {

    private static final double SHOP = Laws.OF.number("torsion_turns_shop");
    private static final double CLASSICAL = Laws.OF.number("torsion_angle_classical");
    private static final double LEG = Laws.OF.number("torsion_leg_divisor");
    private static final double BENDING = Laws.OF.number("bending_stress");

    /** D/d [1] */
    public double index() {
        return mean / wire;
    }

    /** [1] */
    public double active() {
        return bodyCoils + legs / (LEG * Math.PI * mean);
    }

    /** Moment for each turn [N m]. */
    public double rate() {
        return 1 / turns(1, active());
    }

    /** Turns of the whole spring, legs and all, under a moment [N m]. */
    public double turns(double moment) {
        return turns(moment, active());
    }

    /** Turns of the body alone, which decide how it closes on its pin. */
    public double bodyTurns(double moment) {
        return turns(moment, bodyCoils);
    }

    private double turns(double moment, double coils) {
        return SHOP * give(moment, coils);
    }

    /** Without friction between the coils, by bending theory [rad]. */
    public double frictionlessAngle(double moment) {
        return CLASSICAL * give(moment, active());
    }

    private double give(double moment, double coils) {
        return moment * mean * coils / (tension * wire * wire * wire * wire);
    }

    /** Greatest bending stress at a moment [N m] [Pa]. */
    public double stress(double moment) {
        return Curvature.inside(index()) * BENDING * moment / (Math.PI * wire * wire * wire);
    }

    /** Moment at which that stress is reached [N m]. */
    public double momentAt(double stress) {
        return stress / stress(1);
    }

    /** D' = n_b D/(n_b + θ): mean diameter when its body is wound up by so many turns [m]. */
    public double woundMean(double bodyTurns) {
        return bodyCoils * mean / (bodyCoils + bodyTurns);
    }

    /** Room left round a pin of diameter [m] on the diameter; below 0 it has seized [m]. */
    public double clearance(double pin, double bodyTurns) {
        return woundMean(bodyTurns) - wire - pin;
    }

    /** d (n_b + 1 + θ): a close-wound body grows by a wire with each turn [m]. */
    public double bodyLength(double turns) {
        return wire * (bodyCoils + 1 + turns);
    }
}
