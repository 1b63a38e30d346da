package org.strawblue.core.steel;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/**
 * dV/V = (1 − Vc − Va) 1.68 C + Va (−4.64 + 2.21 C) [%]; dl/l = 0.65 dV/3V.
 *
 * <p>C carbon in the austenite [mass %], Va retained austenite [1], Vc = (Ctotal − C)/(6.67 − C) undissolved cementite [1].
 * The factor 0.65 brings the formula down to what three tool steels were found to grow (O1, A2, S7); ±0.07 % with it. As
 * quenched from spheroidised; the direction of rolling and the warping of the shape are not in it and are often larger.
 * Source: ASM Handbook 4; the term 1.68 C from memory.
 */
public final class VolumeChange {

    private static final Unit PERCENT = Units.of(Dimension.FRACTION, "%");
    private static final Law AUSTENITE = Law.of("volume-change");
    private static final Law MARTENSITE = Law.of("volume-change-martensite");

    private VolumeChange() {}

    /** dV/V [1] on hardening. */
    public static double volume(double totalPercent, double dissolvedPercent, double retained) {
        double cementite =
                Math.max(0, totalPercent - dissolvedPercent) / (MARTENSITE.get("cementite") - dissolvedPercent);
        double martensite = (1 - cementite - retained) * MARTENSITE.get("carbon") * dissolvedPercent;
        return PERCENT.toSi(martensite + retained * austenite(dissolvedPercent));
    }

    /** dV/V [%] from spheroidised to austenite of this carbon [mass %]. */
    static double austenite(double dissolvedPercent) {
        return AUSTENITE.get("constant") + AUSTENITE.get("carbon") * dissolvedPercent;
    }

    /** dl/l [1] of a grade as quenched to {@code kelvin}: found, or by the formula. */
    public static Answer<Estimate> length(Grade grade, double kelvin) {
        return grade.found(Property.SIZE_CHANGE)
                .map(Answer::of)
                .orElseGet(() -> RetainedAustenite.of(grade, kelvin).map(retained -> computed(grade, retained)));
    }

    /** dl/l [1] by the formula, whatever has been found. */
    static Estimate computed(Grade grade, Estimate retained) {
        double dissolved = Austenite.percent(Austenite.carbon(grade).value());
        double volume = volume(grade.composition().c(), dissolved, retained.value());
        double length = Figures.number("size-scale") * volume / 3;
        double half = Figures.HARDENING.si("size-half-width", Dimension.FRACTION);
        return Estimate.of(
                Dimension.FRACTION,
                length,
                length - half,
                length + half,
                List.of(
                        AUSTENITE.basis("volume change of austenite"),
                        MARTENSITE.basis("volume change of martensite"),
                        Figures.HARDENING.basis("found over computed size change", "size-scale")));
    }
}
