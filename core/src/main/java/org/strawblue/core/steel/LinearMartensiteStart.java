package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** Ms = constant + Σ coefficient · content [°C], contents [mass %]: the form of the older laws. */
abstract sealed class LinearMartensiteStart implements MartensiteStart permits AndrewsLinear, StevenHaynes {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");

    private final Law law;
    private final String title;

    LinearMartensiteStart(String law, String title) {
        this.law = Law.of(law);
        this.title = title;
    }

    @Override
    public Answer<Estimate> of(Composition austenite) {
        List<Finding> stops = law.outside(austenite, title);
        return stops.isEmpty() ? Answer.of(unchecked(austenite)) : Answer.refused(stops);
    }

    /** The law's number whether or not it holds: for showing how wrong it goes. */
    public Estimate unchecked(Composition austenite) {
        double kelvin = CELSIUS.toSi(law.linear(austenite));
        return Figures.around(Dimension.TEMPERATURE, kelvin, law.rms("low"), law.basis("Ms by " + title));
    }
}
