package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/**
 * Ms = 545 − 601.2 (1 − exp(−0.868 C)) − 34.4 Mn − 13.7 Si − 9.2 Cr − 17.3 Ni − 15.4 Mo + 10.8 V − 1.4 Al − 16.3 Cu [°C],
 * contents of the austenite [mass %].
 *
 * <p>Root mean square error 25 K for low-alloy steels to 0.6 % C, 21 K from there to 0.85, 50 K above, where carbon of the
 * steel is not carbon in solution, and 69 K for high alloy. Source: Barbier 2014.
 */
public record Barbier() implements MartensiteStart {

    private static final String TITLE = "Barbier’s formula for Ms";
    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Law LAW = Law.of("barbier");
    private static final Law CARBON = Law.of("barbier-carbon");

    @Override
    public Answer<Estimate> of(Composition austenite) {
        List<Finding> stops = LAW.outside(austenite, TITLE);
        if (!stops.isEmpty()) {
            return Answer.refused(stops);
        }
        double carbon = CARBON.get("depth") * -Math.expm1(-CARBON.get("rate") * austenite.c());
        double kelvin = CELSIUS.toSi(LAW.linear(austenite) + carbon);
        return Answer.of(Figures.around(
                Dimension.TEMPERATURE, kelvin, LAW.rms(kind(austenite)), LAW.basis("Ms by Barbier’s formula")));
    }

    private static String kind(Composition austenite) {
        double alloy =
                austenite.mn() + austenite.cr() + austenite.ni() + austenite.mo() + austenite.v() + austenite.w();
        if (alloy > Figures.number("high-alloy")) {
            return "alloy";
        }
        if (austenite.c() > Figures.number("high-carbon")) {
            return "high";
        }
        return austenite.c() > Figures.number("low-carbon") ? "medium" : "low";
    }
}
