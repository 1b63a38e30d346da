package org.strawblue.core.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.quantity.Quantity;

/**
 * What is at hand. Lists are empty where the file says nothing.
 *
 * @param drawer name of the file that lists the springs in the drawer
 */
public record Shop(
        List<Thing> hardeningHeat,
        List<Thing> temperingHeat,
        List<Thing> quenchants,
        List<Thing> indicators,
        List<Thing> hardnessChecks,
        Optional<String> drawer,
        Paper paper) {

    public Shop {
        hardeningHeat = List.copyOf(hardeningHeat);
        temperingHeat = List.copyOf(temperingHeat);
        quenchants = List.copyOf(quenchants);
        indicators = List.copyOf(indicators);
        hardnessChecks = List.copyOf(hardnessChecks);
    }

    /** One thing of the shop: what it is, and what the file tells of it. */
    public record Thing(String kind, Map<String, Quantity> figures) {
        public Thing {
            figures = Map.copyOf(figures);
        }
    }

    public enum Paper {
        A4,
        LETTER
    }
}
