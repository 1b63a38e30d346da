package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/**
 * d = [D₉₀ − c_max + e, D₁₀ − c_min − e]: the shaft to make for a hole that is there; D = [d₉₀ + c_min + e, d₁₀ + c_max −
 * e]: the hole for a shaft that is there.
 *
 * <p>D₁₀, D₉₀ ends of the measured hole's 80 % interval [m], d₁₀, d₉₀ of the measured shaft's, c clearance wanted [m], e what
 * the reading of the part being made may be wrong by [m].
 */
public final class Matching {

    private Matching() {}

    /** The readings [m] between which the shaft is right. */
    public static Answer<Band> shaftFor(Estimate hole, Band clearance, double error) {
        return band(
                "hole",
                hole,
                clearance,
                error,
                hole.high() - clearance.high() + error,
                hole.low() - clearance.low() - error);
    }

    /** The readings [m] between which the hole is right. */
    public static Answer<Band> holeFor(Estimate shaft, Band clearance, double error) {
        return band(
                "shaft",
                shaft,
                clearance,
                error,
                shaft.high() + clearance.low() + error,
                shaft.low() + clearance.high() - error);
    }

    /** Clearance [m] of two measured parts. */
    public static Chain measured(Estimate hole, Estimate shaft) {
        return new Chain(
                "clearance",
                List.of(Link.plus("hole", new Spread.Told(hole)), Link.minus("shaft", new Spread.Told(shaft))));
    }

    /** Clearance [m] of two parts finished to their limits by what {@code holeBy} and {@code shaftBy} show. */
    public static Chain made(Band hole, Instrument holeBy, Band shaft, Instrument shaftBy) {
        return new Chain(
                "clearance",
                List.of(
                        Link.plus("hole", new Spread.Within(hole)),
                        Link.plus("reading of the hole", new Spread.Told(holeBy.read(0))),
                        Link.minus("shaft", new Spread.Within(shaft)),
                        Link.minus("reading of the shaft", new Spread.Told(shaftBy.read(0)))));
    }

    private static Answer<Band> band(
            String other, Estimate measured, Band clearance, double error, double low, double high) {
        if (low < high) {
            return Answer.of(new Band(Dimension.LENGTH, low, high));
        }
        // equal shares of the width that the fit leaves, less a little to work in
        double need = clearance.width() / 2 * Figures.ALL.number("error_share");
        return Answer.refused(FitFindings.tooCoarse(other, clearance, measured.band(), need));
    }
}
