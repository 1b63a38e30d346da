package org.strawblue.core.heat.conduction;

import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What a part cooled from above the change must be told: its data are those of steel that is heated. */
final class CoolingCaution {

    private static final double CHANGE = Figures.OWN.si("change", Dimension.TEMPERATURE);
    private static final double IN_BATH = Figures.OWN.number("slow-in-bath");
    private static final double IN_AIR = Figures.OWN.number("slow-in-air");

    private CoolingCaution() {}

    /** @param hottest place of the part when the spell begins [K] */
    static Optional<Finding> of(Setting setting, double hottest) {
        boolean bath = setting instanceof Setting.InBath;
        boolean air = setting instanceof Setting.InAir;
        if (hottest < CHANGE || !(bath || air)) {
            return Optional.empty();
        }
        return Optional.of(new Finding.Caution(
                Phrase.of(
                        "From {} down this cooling comes out too slow, by up to {} of its time.",
                        Quantity.temperature(hottest),
                        Quantity.fraction(bath ? IN_BATH : IN_AIR)),
                Phrase.of(
                        "The heat of the change at {} is given back where heating took it up; a quenched part gives it back later or not at all.",
                        Quantity.temperature(CHANGE)),
                Phrase.of("For how hard it gets go by the hardening plan, which reckons with undercooled steel.")));
    }
}
