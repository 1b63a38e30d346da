package org.strawblue.core.spring.family;

import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Bergstraesser;
import org.strawblue.core.spring.ClassicalRate;
import org.strawblue.core.spring.Moduli;
import org.strawblue.core.spring.RateLaw;
import org.strawblue.core.spring.ShearStress;
import org.strawblue.core.spring.StressFactor;

/**
 * F = F_i + k y: an extension spring with two hooks, wound so that its coils press together with F_i.
 *
 * <p>k as for a compression spring with n = n_b + G/E coils, since the hooks give as well. Stress in the hook's bend
 * σ = F [K_A 16 D/(π d³) + 4/(π d²)], C₁ = 2 r₁/d; at the side bend τ = K_B 8 F D/(π d³), C₂ = 2 r₂/d. Source: textbook,
 * extension springs, from memory.
 *
 * @param wire [m]
 * @param mean coil diameter [m]
 * @param bodyCoils [1]
 * @param initialTension F_i [N]
 * @param hookRadius r₁, of the loop, to the wire's middle [m]
 * @param sideRadius r₂, of the bend from body to loop, to the wire's middle [m]
 */
public record ExtensionSpring(
        double wire,
        double mean,
        double bodyCoils,
        double initialTension,
        double hookRadius,
        double sideRadius,
        Moduli moduli)
        implements AxialSpring {

    private static final RateLaw RATE = new ClassicalRate();
    private static final StressFactor FACTOR = new Bergstraesser();
    private static final double BENDING = Laws.OF.number("extension_hook_bending");
    private static final double DIRECT = Laws.OF.number("extension_hook_direct");
    private static final double SCALE = Laws.OF.si("initial_tension_scale", Dimension.STRESS);
    private static final double FALL = Laws.OF.number("initial_tension_fall");
    private static final double SPREAD = Laws.OF.si("initial_tension_spread", Dimension.STRESS);
    private static final double FOUR = Laws.OF.number("initial_tension_spread_four");
    private static final double FROM = Laws.OF.number("initial_tension_spread_from");
    private static final double PER = Laws.OF.number("initial_tension_spread_per");

    /** D/d [1] */
    public double index() {
        return mean / wire;
    }

    /** n_b + G/E [1] */
    public double active() {
        return bodyCoils + moduli.ratio();
    }

    /** [N/m] */
    public double rate() {
        return RATE.rate(moduli, wire, mean, active(), wire);
    }

    /** Before the coils part there is no deflection; from then on initial tension and rate. */
    @Override
    public double force(double deflection) {
        return deflection <= 0 ? 0 : initialTension + rate() * deflection;
    }

    /** Corrected shear stress in the body. */
    @Override
    public double stress(double deflection) {
        return bodyStress(force(deflection));
    }

    @Override
    public double greatestDeflection() {
        return Double.POSITIVE_INFINITY;
    }

    /** In the coils at a force [N] [Pa]. */
    public double bodyStress(double force) {
        return FACTOR.stress(force, mean, wire);
    }

    /** Bending and pull at the inside of the loop at a force [N] [Pa]. */
    public double hookBending(double force) {
        double section = Math.PI * wire * wire;
        double curved = Curvature.inside(2 * hookRadius / wire);
        return force * (curved * BENDING * mean / (section * wire) + DIRECT / section);
    }

    /** Torsion where the loop leaves the body at a force [N] [Pa]. */
    public double hookTorsion(double force) {
        return Curvature.torsion(2 * sideRadius / wire) * ShearStress.uncorrected(force, mean, wire);
    }

    /** Between the insides of the loops, free: 2(D − d) + (n_b + 1) d [m]. */
    public double freeLength() {
        return 2 * (mean - wire) + (bodyCoils + 1) * wire;
    }

    /**
     * What initial tension makers can wind in, as straight torsion: 231 e^(−0.105 C) ± 6.9 (4 − (C − 3)/6.5) MPa. For
     * index 4 to 16; from memory [Pa].
     */
    public static Band initialTensionStress(double index) {
        double middle = SCALE * Math.exp(-FALL * index);
        double half = SPREAD * (FOUR - (index - FROM) / PER);
        return Band.between(Dimension.STRESS, middle - half, middle + half);
    }

    /** The same as a force for wire and coil [N]. */
    public static Band initialTension(double wire, double mean) {
        Band stress = initialTensionStress(mean / wire);
        double one = ShearStress.uncorrected(1, mean, wire);
        return new Band(Dimension.FORCE, Math.max(0, stress.low()) / one, stress.high() / one);
    }
}
