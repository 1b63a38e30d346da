package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;

/**
 * Where a steel changes on slow heating.
 *
 * @param ac1 lower critical point [K]
 * @param ac3 upper critical point [K]; Accm where carbon exceeds the eutectoid
 */
public record CriticalPoints(Estimate ac1, Estimate ac3) {

    /** Found for this grade where it is catalogued, else by {@link AndrewsCriticalPoints}. */
    public static Answer<CriticalPoints> of(Grade grade) {
        if (grade.found(Property.AC1).isPresent() && grade.found(Property.AC3).isPresent()) {
            return Answer.of(new CriticalPoints(
                    grade.found(Property.AC1).get(), grade.found(Property.AC3).get()));
        }
        return new AndrewsCriticalPoints().of(grade.composition());
    }

    /**
     * The temperature [K] at which a magnet lets go of the steel on heating: the Curie point of ferrite, or where ferrite is
     * gone, whichever is lower. Ferrite is gone at Ac3 below the eutectoid carbon, at Ac1 above it. The thermometer leads the
     * change at workshop rates of heating, which widens the upper side.
     */
    public Estimate magnetLetsGo(double carbonPercent) {
        Estimate curie = Figures.HARDENING.estimate("curie", Dimension.TEMPERATURE);
        Estimate gone = carbonPercent > Figures.number("dissolved-cap") ? ac1 : ac3;
        double value = Math.min(curie.value(), gone.value());
        double lag = Figures.HARDENING.si("magnet-lag", Dimension.TEMPERATURE_DIFFERENCE);
        var bases = new java.util.TreeSet<>(gone.bases());
        bases.addAll(List.of(
                Figures.HARDENING.basis("Curie point of iron", "curie"),
                Figures.HARDENING.basis("lag of the change on heating", "magnet-lag")));
        double low = Math.min(curie.low(), gone.low());
        double high = Math.min(curie.high(), gone.high() + lag);
        return Estimate.of(Dimension.TEMPERATURE, value, Math.min(low, value), Math.max(high, value), bases);
    }
}
