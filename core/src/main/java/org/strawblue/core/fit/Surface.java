package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;

/**
 * What air does to the skin at heat.
 *
 * @param skin poor in carbon, on each side [m]
 * @param scale metal turned to scale, on each side [m]
 */
record Surface(Estimate skin, Estimate scale) {

    static Surface of(Heating heating) {
        return heating.shielded()
                ? new Surface(none(), none())
                : new Surface(
                        Decarburisation.skin(heating.kelvin(), heating.seconds()),
                        Decarburisation.scaleLoss(heating.kelvin(), heating.seconds()));
    }

    private static Estimate none() {
        return Estimate.of(Dimension.LENGTH, 0, 0, 0, List.of());
    }
}
