package org.strawblue.core.spring;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * The five things about a spring that are not known exactly, each with the half-width of its 80 % interval: wire,
 * outside diameter, free length, coils, and stiffness (modulus and formula together, as a factor). They are taken as
 * independent; that a wrong wire also makes the mean diameter wrong comes out by itself, since D = outside − wire.
 *
 * @param tested rate of the whole spring where a push test has told it, whatever the sizes are; else 0 [N/m]
 * @param room moduli at room temperature
 */
public record MeasuredInputs(double[] middle, double[] halfWidth, Ends ends, double tested, Moduli room) {

    static final int WIRE = 0;
    static final int OUTSIDE = 1;
    static final int FREE = 2;
    static final int COILS = 3;
    static final int STIFFNESS = 4;
    public static final int COUNT = 5;

    static MeasuredInputs of(MeasuredSpring spring, SpringMaterial material) {
        Ends ends = spring.ends().orElse(Ends.both(EndType.CLOSED));
        MeasuredInputs bySizes = of(
                spring.wire(),
                spring.outsideDiameter(),
                spring.freeLength(),
                spring.totalCoils(),
                spring.allErrors(),
                ends,
                material.stiffness(spring.wire()));
        return spring.seen().rate().map(bySizes::tested).orElse(bySizes);
    }

    /** The rate is told by a test: stiffness is now the test's factor, 1 in the middle. */
    private MeasuredInputs tested(org.strawblue.core.estimate.Estimate rate) {
        double[] known = middle.clone();
        double[] doubt = halfWidth.clone();
        known[STIFFNESS] = 1;
        doubt[STIFFNESS] = (rate.high() - rate.low()) / 2 / rate.value();
        return new MeasuredInputs(known, doubt, ends, rate.value(), room);
    }

    static MeasuredInputs of(
            double wire,
            double outside,
            double free,
            double coils,
            MeasurementErrors e,
            Ends ends,
            SpringMaterial.Stiffness stiffness) {
        double shear = stiffness.moduli().shear();
        double shearHalf = (stiffness.shearHigh() - stiffness.shearLow()) / 2 / shear;
        double centre = (stiffness.shearHigh() + stiffness.shearLow()) / 2 / shear;
        return new MeasuredInputs(
                new double[] {wire, outside, free, coils, centre},
                new double[] {e.wire(), e.outside(), e.freeLength(), e.coils(), shearHalf},
                ends,
                0,
                stiffness.moduli());
    }

    public Coil nominal(Optional<Cut> cut) {
        return coil(cut, middle[WIRE], middle[OUTSIDE], middle[FREE], middle[COILS], middle[STIFFNESS]);
    }

    /**
     * The spring that these inputs describe, after the cut. {@code stiffness} holds for many coils; what few coils add
     * is put in here.
     */
    Coil coil(Optional<Cut> cut, double wire, double outside, double free, double coils, double stiffness) {
        Coil whole = whole(wire, outside, free, coils, stiffness);
        Coil made = cut.isPresent() ? cut.get().of(whole) : whole;
        double few = FewCoils.factor(made.active());
        return few == 1 ? made : made.stiffer(few);
    }

    /** The spring as measured, before any cut, without what few coils add. */
    Coil whole() {
        return whole(middle[WIRE], middle[OUTSIDE], middle[FREE], middle[COILS], middle[STIFFNESS]);
    }

    private Coil whole(double wire, double outside, double free, double coils, double stiffness) {
        Coil plain = new Coil(wire, outside, free, coils, ends, stiffness);
        if (tested == 0) {
            return plain;
        }
        double bySizes = plain.rate(room) / stiffness * FewCoils.factor(plain.active());
        return plain.stiffer(tested / bySizes);
    }

    /** Half-width of the stiffness factor for a spring with so many active coils, the formula's own error in it. */
    double stiffnessHalfWidth(double activeCoils) {
        double formula = FewCoils.halfWidth(activeCoils);
        double unknown = tested == 0 ? formula : formula - FewCoils.halfWidth(middle[COILS] - ends.inactive());
        return Math.hypot(halfWidth[STIFFNESS], Math.max(0, unknown));
    }

    /** One spring that may be the true one: the inputs so many standard deviations from their middle, uncut. */
    public Coil sampled(double[] z, int from) {
        double[] x = middle.clone();
        for (int i = 0; i < COUNT; i++) {
            double half = i == STIFFNESS ? stiffnessHalfWidth(middle[COILS] - ends.inactive()) : halfWidth[i];
            x[i] += z[from + i] * half / Normal.HALF_OF_80;
        }
        return coil(Optional.empty(), x[WIRE], x[OUTSIDE], x[FREE], x[COILS], x[STIFFNESS]);
    }

    /** A figure of the spring with its 80 % interval, by linear propagation of the five errors. */
    Estimate propagate(Dimension dimension, Optional<Cut> cut, ToDoubleFunction<Coil> figure, List<Basis> bases) {
        Coil nominal = nominal(cut);
        double value = figure.applyAsDouble(nominal);
        double square = 0;
        for (int i = 0; i < COUNT; i++) {
            double half = i == STIFFNESS ? stiffnessHalfWidth(nominal.active()) : halfWidth[i];
            double slope = (shifted(cut, figure, i, half) - shifted(cut, figure, i, -half)) / 2;
            square += slope * slope;
        }
        double spread = Math.sqrt(square);
        return Estimate.of(dimension, value, value - spread, value + spread, bases);
    }

    private double shifted(Optional<Cut> cut, ToDoubleFunction<Coil> figure, int input, double by) {
        double[] x = middle.clone();
        x[input] += by;
        return figure.applyAsDouble(coil(cut, x[WIRE], x[OUTSIDE], x[FREE], x[COILS], x[STIFFNESS]));
    }
}
