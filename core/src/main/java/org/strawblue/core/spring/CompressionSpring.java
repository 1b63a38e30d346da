package org.strawblue.core.spring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * What a measured spring does, as it is or cut: each figure with the interval that calliper, coil count, modulus and
 * formula leave.
 *
 * @param spring as measured
 * @param cut absent where the spring is used as it is
 * @param moduli at working temperature
 * @param nominal its geometry after the cut, taken as exact
 */
public record CompressionSpring(
        MeasuredSpring spring, Optional<Cut> cut, SpringMaterial material, Moduli moduli, Coil nominal) {

    public static final StressFactor STRESS_FACTOR = new Bergstraesser();
    private static final RateLaw RATE = new PitchCorrectedRate();
    private static final CoilGrowth HELD = new EndsHeld();
    private static final CoilGrowth FREE = new EndsFree();
    private static final double WANDER = Figures.PRACTICE.number("coil_wander");

    /** @param temperature it works at [K]; absent for room temperature */
    public static CompressionSpring of(MeasuredSpring spring, Optional<Cut> cut, OptionalDouble temperature) {
        SpringMaterial material = SpringMaterial.of(spring);
        Moduli room = material.stiffness(spring.wire()).moduli();
        Moduli moduli = temperature.isPresent() ? room.at(temperature.getAsDouble()) : room;
        return of(spring, cut, material, moduli);
    }

    static CompressionSpring of(MeasuredSpring spring, Optional<Cut> cut, SpringMaterial material, Moduli moduli) {
        return new CompressionSpring(
                spring,
                cut,
                material,
                moduli,
                MeasuredInputs.of(spring, material).nominal(cut));
    }

    public MeasuredInputs inputs() {
        return MeasuredInputs.of(spring, material);
    }

    /** What the wire bears; absent where no table covers this wire. */
    public Optional<AllowableStress> allowable() {
        return material.allowable(spring.wire());
    }

    public Estimate rate() {
        return estimate(Dimension.STIFFNESS, c -> c.rate(moduli), stiffnessBases());
    }

    /** When pressed to a length [m]. */
    public Estimate force(double length) {
        return estimate(Dimension.FORCE, c -> c.force(moduli, length), stiffnessBases());
    }

    /** Greatest shear stress in the wire when pressed to a length [m]. */
    public Estimate stress(double length) {
        List<Basis> bases = stiffnessBases();
        bases.add(STRESS_FACTOR.basis());
        return estimate(Dimension.STRESS, c -> c.stress(moduli, STRESS_FACTOR, length), bases);
    }

    /** Greatest shear stress in the wire with all coils touching. */
    public Estimate stressAtSolid() {
        List<Basis> bases = stiffnessBases();
        bases.add(STRESS_FACTOR.basis());
        return estimate(Dimension.STRESS, c -> c.stress(moduli, STRESS_FACTOR, c.solid()), bases);
    }

    public Estimate freeLength() {
        return estimate(Dimension.LENGTH, Coil::free, geometryBases());
    }

    public Estimate solidLength() {
        return estimate(Dimension.LENGTH, Coil::solid, geometryBases());
    }

    /**
     * Outside diameter when pressed to a length [m]: ends free to turn, a little less if they are held, a little more
     * where single coils wander.
     */
    public Estimate outside(double length) {
        Estimate free = estimate(Dimension.LENGTH, c -> c.outsideAt(moduli, FREE, length), growthBases());
        double held = nominal.outsideAt(moduli, HELD, length);
        double widest = widestOutside(nominal, moduli, length);
        double low = free.value() - Math.hypot(free.value() - free.low(), free.value() - held);
        double high = free.value() + Math.hypot(free.high() - free.value(), widest - free.value());
        return Estimate.of(Dimension.LENGTH, free.value(), low, high, free.bases());
    }

    /** Where single coils reach at a length [m]: the mean growth, ends free, and their wander off the axis [m]. */
    public static double widestOutside(Coil coil, Moduli moduli, double length) {
        return widestAtPitch(coil, moduli, coil.pitchAt(length));
    }

    /** The same, pressed to a pitch [m]. */
    static double widestAtPitch(Coil coil, Moduli moduli, double pitchAt) {
        double growth = FREE.growth(moduli, coil.mean(), coil.wire(), coil.pitch(), pitchAt);
        return coil.outside() + growth + WANDER * Math.max(0, coil.pitch() - pitchAt);
    }

    /** Force from which on it takes a set; absent where no strength is known for this wire. */
    public Optional<Estimate> forceAtSet() {
        return allowable().map(a -> {
            List<Basis> bases = new ArrayList<>(a.bases());
            bases.add(STRESS_FACTOR.basis());
            return estimate(Dimension.FORCE, c -> a.stress() / STRESS_FACTOR.stress(1, c.mean(), c.wire()), bases);
        });
    }

    /** Length to which it may be pressed, coils and least gaps counted. */
    public Estimate shortestLength(boolean moving) {
        List<Basis> bases = geometryBases();
        bases.add(Figures.FORMULAS.basis("least gaps between coils", "gap_index"));
        return estimate(Dimension.LENGTH, c -> c.solid() + c.leastGap(moving), bases);
    }

    /** Lowest frequency at which it swings within itself, both ends seated. */
    public Estimate surge() {
        List<Basis> bases = stiffnessBases();
        bases.add(Figures.FORMULAS.basis("surge frequency", "surge_half"));
        return estimate(Dimension.FREQUENCY, this::surge, bases);
    }

    private double surge(Coil coil) {
        double mass = Surge.activeMass(material.density(), coil.wire(), coil.mean(), coil.active());
        return Surge.frequency(coil.rate(moduli), mass);
    }

    private Estimate estimate(Dimension dimension, ToDoubleFunction<Coil> figure, List<Basis> bases) {
        return inputs().propagate(dimension, cut, figure, bases);
    }

    private List<Basis> stiffnessBases() {
        List<Basis> bases = geometryBases();
        bases.add(RATE.basis());
        bases.add(material.stiffness(spring.wire()).basis());
        bases.add(FewCoils.basis(nominal.active()));
        return bases;
    }

    private static List<Basis> growthBases() {
        return List.of(
                Figures.FORMULAS.basis("growth of the coil", "growth_en_whole"),
                Figures.PRACTICE.basis("wander of single coils", "coil_wander"));
    }

    private static List<Basis> geometryBases() {
        return new ArrayList<>(List.of(EndType.basis()));
    }
}
