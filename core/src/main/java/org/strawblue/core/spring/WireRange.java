package org.strawblue.core.spring;

import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** Which trade sizes of music wire could be wound into a spring that a pocket would take, closed and ground ends. */
final class WireRange {

    private static final Ends ENDS = Ends.both(EndType.CLOSED_GROUND);
    private static final double LEAST_ACTIVE = Figures.PRACTICE.number("least_active");
    private static final double STEP = Figures.PRACTICE.number("cut_step");
    private static final double INDEX_LOW = Figures.PRACTICE.number("index_low");
    private static final double INDEX_HIGH = Figures.PRACTICE.number("index_high");
    private static final int DIAMETERS = 6;

    private WireRange() {}

    static Optional<Band> of(Pocket pocket) {
        double[] fitting = TradeWire.sizes().stream()
                .mapToDouble(w -> w)
                .filter(w -> some(pocket, w))
                .toArray();
        return fitting.length == 0
                ? Optional.empty()
                : Optional.of(new Band(Dimension.LENGTH, fitting[0], fitting[fitting.length - 1]));
    }

    private static boolean some(Pocket pocket, double wire) {
        SpringMaterial music = SpringMaterial.of(SpringMaterial.Key.MUSIC);
        Optional<AllowableStress> stress = music.allowable(wire);
        if (stress.isEmpty()) {
            return false;
        }
        Duty duty = Duty.of(pocket, music.stiffness(wire).moduli(), stress.get());
        double narrow = Math.max(duty.rod() + 2 * wire, (INDEX_LOW + 1) * wire);
        double wide = Math.min(duty.bore(), (INDEX_HIGH + 1) * wire);
        for (int i = 0; i < DIAMETERS && wide >= narrow; i++) {
            if (some(duty, wire, narrow + (wide - narrow) * i / (DIAMETERS - 1))) {
                return true;
            }
        }
        return false;
    }

    private static boolean some(Duty duty, double wire, double outside) {
        for (double active = LEAST_ACTIVE; active * wire < duty.atFull(); active += STEP) {
            // the range asks the growth at this length only, where longer springs grow a little more
            Coil coil = Coil.of(wire, outside, duty.atRest() + wire, active + ENDS.inactive(), ENDS);
            if (!FreeLengthRange.of(coil, duty).none()) {
                return true;
            }
        }
        return false;
    }
}
