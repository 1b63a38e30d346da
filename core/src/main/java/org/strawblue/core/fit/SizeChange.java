package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.VolumeChange;

/**
 * Δ = nominal · (a − s): what hardening and tempering do to one size.
 *
 * <p>a growth of a length as quenched [1], s what a low temper takes back [1]. A hole may open or close whatever the steel
 * does as a whole: its interval always holds both signs. Source: {@link VolumeChange}; temper and holes from memory.
 */
public final class SizeChange {

    private static final Estimate TEMPER = Figures.ALL.estimate("temper_shrinks", Dimension.NUMBER);
    private static final Estimate UNKNOWN = Figures.ALL.estimate("change_unknown", Dimension.NUMBER);
    private static final double ROOM = Figures.ALL.si("quenched_to", Dimension.TEMPERATURE);
    private static final double CLOSES = Figures.ALL.number("bore_closes");
    private static final double OPENS = Figures.ALL.number("bore_opens");

    private SizeChange() {}

    /** Growth of a length as quenched to room temperature [1]: found, computed, else a wide guess. */
    public static Estimate asQuenched(Grade grade) {
        return VolumeChange.length(grade, ROOM).value().orElse(UNKNOWN);
    }

    /** Change of a feature's size from before hardening to after tempering [m]. */
    public static Estimate of(Feature feature, Estimate asQuenched) {
        return ofShare(feature, share(feature.kind(), asQuenched));
    }

    /** The same as a share of the size [1]. */
    public static Estimate share(Feature.Kind kind, Estimate asQuenched) {
        double value = asQuenched.value() - TEMPER.value();
        Estimate share = Estimate.of(
                        Dimension.FRACTION,
                        value,
                        value - (asQuenched.value() - asQuenched.low()),
                        value + (asQuenched.high() - asQuenched.value()),
                        asQuenched.bases())
                .widened(TEMPER.high() - TEMPER.value(), TEMPER.value() - TEMPER.low(), TEMPER.bases());
        return kind == Feature.Kind.BORE ? bothSigns(share) : share;
    }

    private static Estimate bothSigns(Estimate share) {
        Estimate wide = share.widened(0, 0, List.of(Figures.ALL.basis("bore_closes"), Figures.ALL.basis("bore_opens")));
        return Estimate.of(
                Dimension.FRACTION,
                share.value(),
                Math.min(share.low(), CLOSES),
                Math.max(share.high(), OPENS),
                wide.bases());
    }

    /** Change [m] of a feature that changes by a share of its size [1]. */
    public static Estimate ofShare(Feature feature, Estimate share) {
        double size = feature.nominal();
        return Estimate.of(
                Dimension.LENGTH, size * share.value(), size * share.low(), size * share.high(), share.bases());
    }
}
