package org.strawblue.core.fit;

import java.util.List;
import java.util.TreeSet;
import org.hipparchus.special.Erf;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/**
 * C/C₀ = erf(x / (2 √(D t))): carbon left at a depth under a skin that air keeps free of carbon.
 *
 * <p>x depth [m], t time [s], D diffusion of carbon in austenite [m²/s]. An upper bound: below about 910 °C a skin of
 * ferrite holds the carbon back, and part of the poor skin turns to scale. No measured depth for tool steel in air was
 * found to set it against. Source: diffusion theory; two printed sets of D.
 */
public final class Decarburisation {

    private static final double CARBON_KEPT = Figures.ALL.number("carbon_kept");
    private static final double LIKELY = Figures.ALL.number("skin_share");
    private static final double NONE_BELOW = Figures.ALL.si("no_loss_below", Dimension.TEMPERATURE);

    private Decarburisation() {}

    /** Depth [m] at which the share {@code carbonLeft} of the carbon is left, for one D [m²/s] and time [s]. */
    public static double depth(double diffusion, double seconds, double carbonLeft) {
        return 2 * Math.sqrt(diffusion * seconds) * Erf.erfInv(carbonLeft);
    }

    /** Skin that will not harden fully after a time in air at a temperature [K] [m]; its upper limit is the bound. */
    public static Estimate skin(double kelvin, double seconds) {
        TreeSet<Basis> bases = new TreeSet<>();
        double bound = 0;
        for (Diffusion carbon : Diffusion.carbon()) {
            bases.add(carbon.basis());
            bound = Math.max(bound, depth(carbon.at(kelvin), seconds, CARBON_KEPT));
        }
        bases.add(Figures.ALL.basis("skin_share"));
        bases.add(Figures.ALL.basis("no_loss_below"));
        double most = kelvin < NONE_BELOW ? 0 : bound;
        return Estimate.of(Dimension.LENGTH, LIKELY * most, 0, most, bases);
    }

    /**
     * Metal that turns to scale on each side, √(k_p t) of scale over the ratio of the two thicknesses [m]. k_p is of pure
     * iron and from memory, so it is a bound for tool steel.
     */
    public static Estimate scaleLoss(double kelvin, double seconds) {
        Diffusion scale = Diffusion.scale();
        double most = Math.sqrt(scale.at(kelvin) * seconds) / Figures.ALL.number("scale_oxide_over_metal");
        return Estimate.of(
                Dimension.LENGTH,
                LIKELY * most,
                0,
                most,
                List.of(scale.basis(), Figures.ALL.basis("scale_oxide_over_metal"), Figures.ALL.basis("skin_share")));
    }
}
