package org.strawblue.core.spring;

import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/**
 * A pocket's wishes and one wire's limits, as plain numbers for the search.
 *
 * @param moduli at working temperature
 * @param allowable corrected shear stress [Pa]
 * @param strength least tensile strength [Pa]
 * @param bore [m], infinite where there is none
 * @param rod [m], 0 where there is none
 * @param moving whether it is worked often
 */
public record Duty(
        Moduli moduli,
        double allowable,
        double strength,
        double bore,
        double rod,
        double atRest,
        double atFull,
        Band restForce,
        Band fullForce,
        Optional<Seating> seating,
        boolean moving) {

    private static final double MANY = Figures.PRACTICE.number("many_cycles");
    private static final double GUIDE = Figures.PRACTICE.number("guide_clearance");
    private static final Band ANY = new Band(Dimension.FORCE, 0, Double.POSITIVE_INFINITY);

    public static Duty of(Pocket pocket, Moduli moduli, AllowableStress stress) {
        return of(pocket, moduli, stress.stress(), stress.strength());
    }

    static Duty of(Pocket pocket, Moduli moduli, double allowable, double strength) {
        return new Duty(
                moduli,
                allowable,
                strength,
                pocket.bore().orElse(Double.POSITIVE_INFINITY),
                pocket.rod().orElse(0),
                pocket.lengthAtRest(),
                pocket.lengthAtFullTravel(),
                pocket.forceAtRest().orElse(ANY),
                pocket.forceAtFullTravel().orElse(ANY),
                pocket.seating(),
                pocket.cycles().orElse(0) >= MANY);
    }

    /** Seats taken as flat and parallel where the job does not say. */
    public Seating seat() {
        return seating.orElse(Seating.BOTH_FLAT);
    }

    /** Whether bore or rod lies so close that the spring cannot bow out far. */
    public boolean guided(Coil coil) {
        double room = GUIDE * coil.mean();
        return bore - coil.outside() <= room || rod > 0 && coil.inside() - rod <= room;
    }
}
