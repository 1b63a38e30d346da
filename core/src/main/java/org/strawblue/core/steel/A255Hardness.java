package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;

/**
 * HRC = c₀ + c₁C + … + c₅C⁵, C carbon in the austenite [mass %]: hardness of martensite, or of a structure half of it.
 *
 * <p>Range: C 0.10 to 0.70. Root mean square error 2.4 HRC against seven as-quenched heats. Source: ASTM A255.
 */
public final class A255Hardness implements AsQuenchedHardness {

    private static final Law FULL = Law.of("a255-full");
    private static final Law HALF = Law.of("a255-half");

    private final Law law;
    private final String title;

    private A255Hardness(Law law, String title) {
        this.law = law;
        this.title = title;
    }

    /** All martensite: the initial hardness of the standard. */
    public static A255Hardness full() {
        return new A255Hardness(FULL, "A255 hardness of martensite");
    }

    /** Half martensite. */
    public static A255Hardness half() {
        return new A255Hardness(HALF, "A255 hardness of half martensite");
    }

    @Override
    public Answer<Estimate> of(double carbonPercent) {
        List<Finding> stops = law.outside(Composition.carbon(carbonPercent), title);
        return stops.isEmpty() ? Answer.of(estimate(law.polynomial(carbonPercent))) : Answer.refused(stops);
    }

    /**
     * The same, held level above its range, where hardness of martensite no longer rises with carbon; below its range,
     * refused.
     */
    Answer<Estimate> held(double carbonPercent) {
        double top = Law.limit(law.name(), Element.C).high();
        double within = Math.min(carbonPercent, top);
        Answer<Estimate> answer = of(within);
        return carbonPercent > top && law.name().equals(FULL.name())
                ? answer.map(e -> estimate(Figures.HARDENING.si("eutectoid-hold", Dimension.HARDNESS)))
                : answer;
    }

    private Estimate estimate(double hrc) {
        return Figures.around(Dimension.HARDNESS, hrc, FULL.rms("low"), law.basis(title));
    }
}
