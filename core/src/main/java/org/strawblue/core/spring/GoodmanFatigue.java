package org.strawblue.core.spring;

/**
 * 1/n = τ_a/S_e + τ_m/S_u, S_e after {@link Zimmerli}, S_u = 0.67 R_m: the straight line, on the safe side of {@link
 * GerberFatigue}.
 *
 * <p>For unpeened wire under 10 mm. Source: textbook, working springs.
 */
public record GoodmanFatigue() implements FatigueLaw {

    @Override
    public double safety(double amplitude, double mean, double strength) {
        return 1 / (amplitude / Zimmerli.endurance(strength) + mean / Zimmerli.shearStrength(strength));
    }
}
