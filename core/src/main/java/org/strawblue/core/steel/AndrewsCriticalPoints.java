package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/**
 * Ac1 = 723 − 10.7 Mn − 16.9 Ni + 29.1 Si + 16.9 Cr + 6.38 W; Ac3 = 910 − 203 √C − 15.2 Ni + 44.7 Si + 104 V + 31.5 Mo +
 * 13.1 W, [°C], contents [mass %].
 *
 * <p>Short form, without the added terms for Mn, Cr, P and Al, which put the Ac3 of 4140 some 30 K low. Range: carbon to
 * the eutectoid for Ac3, and the contents of {@code law-limits.csv}. Error ±15 K, from memory. Source: Andrews 1965.
 */
public record AndrewsCriticalPoints() {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Law LOWER = Law.of("andrews-ac1");
    private static final Law UPPER = Law.of("andrews-ac3");
    private static final Law CARBON = Law.of("andrews-ac3-carbon");

    public Answer<CriticalPoints> of(Composition composition) {
        List<Finding> stops = new ArrayList<>(LOWER.outside(composition, "Andrews’ formula for Ac1"));
        stops.addAll(UPPER.outside(composition, "Andrews’ formula for Ac3"));
        return stops.isEmpty()
                ? Answer.of(new CriticalPoints(
                        estimate(lower(composition), LOWER, "Ac1 by Andrews"),
                        estimate(upper(composition), UPPER, "Ac3 by Andrews")))
                : Answer.refused(stops);
    }

    private static double lower(Composition composition) {
        return LOWER.linear(composition);
    }

    private static double upper(Composition composition) {
        return UPPER.linear(composition) + CARBON.get("root") * Math.sqrt(composition.c());
    }

    private static Estimate estimate(double celsius, Law law, String what) {
        double half = Figures.HARDENING.si("andrews-half-width", Dimension.TEMPERATURE_DIFFERENCE);
        double kelvin = CELSIUS.toSi(celsius);
        return Estimate.of(Dimension.TEMPERATURE, kelvin, kelvin - half, kelvin + half, law.basis(what));
    }
}
