package org.strawblue.core.spring;

/**
 * ΔD = 0.1 (p² − 0.8 p d − 0.2 d²)/D, from free to solid, ends free to turn.
 *
 * <p>p free pitch [m], d wire [m], D mean diameter [m]. Knows solid only: the pitch when pressed is not used. Source:
 * EN 13906-1, formula sheet.
 */
public record En13906Growth() implements CoilGrowth {

    private static final double WHOLE = Figures.FORMULAS.number("growth_en_whole");
    private static final double PITCH_WIRE = Figures.FORMULAS.number("growth_en_pitch_wire");
    private static final double WIRE = Figures.FORMULAS.number("growth_en_wire");

    @Override
    public double growth(Moduli moduli, double meanDiameter, double wire, double freePitch, double pitch) {
        double bracket = freePitch * freePitch - PITCH_WIRE * freePitch * wire - WIRE * wire * wire;
        return WHOLE * bracket / meanDiameter;
    }
}
