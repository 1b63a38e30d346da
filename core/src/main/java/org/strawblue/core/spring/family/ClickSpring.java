package org.strawblue.core.spring.family;

/**
 * F = E b t³ y/(4 L³), σ = 3 E t y/(2 L²): a flat strip held at one end, as in a click or detent.
 *
 * <p>b width, t thickness, L free length, y deflection at the tip, all [m], E [Pa]. A wide strip is held flat across and
 * is stiffer by up to 1/(1 − μ²). For y up to about a tenth of L. Source: beam theory.
 *
 * @param tension E [Pa]
 */
public record ClickSpring(double length, double width, double thickness, double tension) implements AxialSpring {

    private static final double WIDE = Laws.OF.number("click_wide_from");
    private static final double POISSON = Laws.OF.number("poisson");

    @Override
    public double force(double deflection) {
        return rate() * deflection;
    }

    @Override
    public double stress(double deflection) {
        return 3 * tension * thickness * deflection / (2 * length * length);
    }

    @Override
    public double greatestDeflection() {
        return Double.POSITIVE_INFINITY;
    }

    /** [N/m] */
    public double rate() {
        double slim = thickness / length;
        return tension * width * slim * slim * slim / 4;
    }

    /** By how much a strip as wide as this may be stiffer than beam theory says [1]. */
    public double stiffer() {
        return width >= WIDE * thickness ? 1 / (1 - POISSON * POISSON) : 1;
    }

    /** Deflection at which a stress [Pa] is reached [m]. */
    public double deflectionAt(double stress) {
        return stress / stress(1);
    }
}
