package org.strawblue.core.colour;

/**
 * The black body.
 *
 * <p>L(λ, T) = c₁ / (π λ⁵ (exp(c₂/λT) − 1)) [W/(m² sr m)], λ wavelength [m], T temperature [K]. Exact; constants from the
 * SI brochure.
 */
public final class Planck {

    private static final double C1 = Figures.ALL.inUnit("first_radiation_constant", "W m²");
    private static final double C2 = Figures.ALL.inUnit("second_radiation_constant", "m K");
    private static final double EFFICACY = Figures.ALL.inUnit("luminous_efficacy", "lm/W");

    private Planck() {}

    /** Spectral radiance [W/(m² sr m)]. */
    public static double radiance(double wavelength, double kelvin) {
        return C1 / (Math.PI * Math.pow(wavelength, 5) * Math.expm1(C2 / (wavelength * kelvin)));
    }

    /** X, Y, Z of a black body, Y its luminance [cd/m²]. */
    public static Tristimulus light(double kelvin) {
        double[] spectrum = StandardObserver.sample(l -> radiance(l, kelvin));
        return StandardObserver.weigh(spectrum).times(EFFICACY * StandardObserver.step());
    }

    /** c₂ [m K]. */
    public static double secondConstant() {
        return C2;
    }
}
