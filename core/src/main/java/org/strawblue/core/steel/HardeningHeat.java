package org.strawblue.core.steel;

import java.util.TreeSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;

/** The temperature to harden from and the time to hold it, found for the grade or by the usual rule above its critical point. */
public final class HardeningHeat {

    private HardeningHeat() {}

    /** Aim and window [K]: found, or Ac3 + 30 to 50 K below the eutectoid carbon, Ac1 + 40 to 70 K above it. */
    public static Estimate window(Grade grade, CriticalPoints points) {
        return grade.found(Property.AUSTENITISE).orElseGet(() -> {
            boolean rich = grade.composition().c() > Figures.number("dissolved-cap");
            String rule = rich ? "above-ac1" : "above-ac3";
            Estimate from = rich ? points.ac1() : points.ac3();
            Estimate above = Figures.HARDENING.estimate(rule, Dimension.TEMPERATURE_DIFFERENCE);
            TreeSet<Basis> bases = new TreeSet<>(from.bases());
            bases.addAll(above.bases());
            double value = from.value();
            return Estimate.of(
                    Dimension.TEMPERATURE, value + above.value(), value + above.low(), value + above.high(), bases);
        });
    }

    /** Time at heat after heating through [s]. */
    public static Estimate soak(Grade grade) {
        return grade.found(Property.SOAK).orElseGet(() -> Figures.HARDENING.estimate("plain-soak", Dimension.TIME));
    }

    /** Whether so much austenite is left that the card must speak of it. */
    public static boolean muchRetained(Estimate share) {
        return share.value() >= Figures.number("much-retained");
    }

    /** Whether a magnet tells anything of this hardening temperature [K]. */
    public static boolean magnetGuides(Estimate magnet, Estimate window) {
        return window.value() - magnet.value()
                <= Figures.HARDENING.si("magnet-of-use", Dimension.TEMPERATURE_DIFFERENCE);
    }

    /** Hardness below which a part is not called a hardened tool [HRC]. */
    public static double toolHardness() {
        return Figures.HARDENING.si("tool-hardness", Dimension.HARDNESS);
    }

    /** Length over section from which a part is likely to bend. */
    public static double longThin() {
        return Figures.number("long-thin");
    }

    /** Width over thickness from which a plate is likely to warp. */
    public static double wideThin() {
        return Figures.number("wide-thin");
    }
}
