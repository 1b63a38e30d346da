package org.strawblue.core.spring;

/**
 * 1/n = τ_m/S_sy + (τ_a/S'_se)(2 − S'_se/S_sy): a straight line to yield through the limit for stress from zero.
 *
 * <p>S'_se = share of R_m borne from zero to a peak for ever (0.21 for cold-drawn, 0.22 for oil-hardened wire), S_sy =
 * share of R_m at yield (0.42, 0.45). Source: textbook examples of springs under fatigue.
 *
 * @param pulsating S'_se/R_m [1]
 * @param yield S_sy/R_m [1]
 */
public record SoderbergFatigue(double pulsating, double yield) implements FatigueLaw {

    @Override
    public double safety(double amplitude, double mean, double strength) {
        double steep = 2 - pulsating / yield;
        return strength / (mean / yield + steep * amplitude / pulsating);
    }
}
