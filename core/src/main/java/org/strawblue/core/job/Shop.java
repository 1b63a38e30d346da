package org.strawblue.core.job;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.evidence.HardnessCheck;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.steel.Quenchant;

/**
 * What is at hand. Lists are empty where the file says nothing.
 *
 * @param drawer name of the file that lists the springs in the drawer
 */
public record Shop(
        List<HeatSource> hardeningHeat,
        List<HeatSource> temperingHeat,
        List<Quenchant> quenchants,
        List<TemperatureIndicator> indicators,
        List<HardnessCheck> hardnessChecks,
        Optional<String> drawer,
        Paper paper) {

    public Shop {
        hardeningHeat = List.copyOf(hardeningHeat);
        temperingHeat = List.copyOf(temperingHeat);
        quenchants = List.copyOf(quenchants);
        indicators = List.copyOf(indicators);
        hardnessChecks = List.copyOf(hardnessChecks);
    }

    public enum Paper {
        A4,
        LETTER
    }
}
