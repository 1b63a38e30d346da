package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;

/**
 * HRC = 20 + 60 √C, C carbon in the austenite [mass %].
 *
 * <p>Range: C to 0.55, above which it rises without end. Root mean square error 3.3 HRC. Source: Just 1969.
 */
public record Just() implements AsQuenchedHardness {

    private static final Law LAW = Law.of("just-1969");

    @Override
    public Answer<Estimate> of(double carbonPercent) {
        List<Finding> stops = LAW.outside(Composition.carbon(carbonPercent), "Just’s formula");
        if (!stops.isEmpty()) {
            return Answer.refused(stops);
        }
        double hrc = LAW.get("constant") + LAW.get("root") * Math.sqrt(carbonPercent);
        return Answer.of(Figures.around(
                Dimension.HARDNESS, hrc, LAW.rms("low"), LAW.basis("as-quenched hardness by Just’s formula")));
    }
}
