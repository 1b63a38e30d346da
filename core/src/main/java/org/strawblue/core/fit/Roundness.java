package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;

/**
 * Δ = D · ρ: how far the largest and the smallest diameter of a hardened round size differ when it has not been finished.
 *
 * <p>D nominal size [m], ρ share by kind of size [1], from memory: cooling is never even all round.
 */
public final class Roundness {

    private Roundness() {}

    /** [m] */
    public static Estimate likely(Feature.Kind kind, double nominal) {
        Estimate share = Figures.ALL.estimate(
                kind == Feature.Kind.BORE ? "out_of_round_hole" : "out_of_round_shaft", Dimension.NUMBER);
        return Estimate.of(
                Dimension.LENGTH,
                nominal * share.value(),
                nominal * share.low(),
                nominal * share.high(),
                share.bases());
    }

    /** What is likely out of shape, why, and what to do. */
    public static List<Finding> findings(Feature.Kind kind) {
        return List.of(
                kind == Feature.Kind.BORE
                        ? new Finding.Note(
                                Phrase.of("Hardened, the hole is likely oval or belled at its ends."),
                                Phrase.of(
                                        "Ends and thin walls cool first; a slot, a flat or a cross hole beside it pulls it."),
                                Phrase.of(
                                        "Quench it hole upright, moving; leave thin walls thick until it is hard; measure in"
                                                + " three directions at both ends before lapping."))
                        : new Finding.Note(
                                Phrase.of(
                                        "Hardened, the pin is likely bent a little, thick at its ends, and as lobed as its bar was."),
                                Phrase.of(
                                        "One side cools first if it goes in at a slant; lobes of ground bar do not show across two"
                                                + " points."),
                                Phrase.of(
                                        "Quench it straight down on its axis; roll it on a plate before and after; prove it in a ring,"
                                                + " not by micrometer alone.")));
    }
}
