package org.strawblue.core.job;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.evidence.HardnessCheck;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.steel.Quenchant;

/**
 * What is at hand. Lists are empty where the file says nothing.
 *
 * @param drawer the springs in the drawer; absent where the file names none
 */
public record Shop(
        List<HeatSource> hardeningHeat,
        List<HeatSource> temperingHeat,
        List<Quenchant> quenchants,
        List<TemperatureIndicator> indicators,
        List<HardnessCheck> hardnessChecks,
        Optional<List<MeasuredSpring>> drawer,
        Paper paper) {

    /** A shop of which nothing is said. */
    public static final Shop UNTOLD =
            new Shop(List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty(), Paper.A4);

    public Shop {
        hardeningHeat = List.copyOf(hardeningHeat);
        temperingHeat = List.copyOf(temperingHeat);
        quenchants = List.copyOf(quenchants);
        indicators = List.copyOf(indicators);
        hardnessChecks = List.copyOf(hardnessChecks);
        drawer = drawer.map(List::copyOf);
    }

    public enum Paper {
        A4,
        LETTER
    }
}
