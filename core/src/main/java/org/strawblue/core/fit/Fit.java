package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.source.Basis;

/**
 * A hole and what goes into it, by their limits.
 *
 * @param designation as written: "H7/g6", "RC4"
 * @param nominal the size both are made from [m]
 * @param hole smallest and largest hole [m]
 * @param shaft smallest and largest shaft [m]
 */
public record Fit(String designation, double nominal, Band hole, Band shaft, List<Basis> bases) {

    /** What the limits allow. */
    public enum Kind {
        CLEARANCE("clearance: it always goes in by hand"),
        TRANSITION("transition: some pairs have play, some must be tapped in"),
        INTERFERENCE("interference: it always has to be pressed or shrunk in");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Fit {
        bases = List.copyOf(bases);
    }

    /** Least and greatest clearance [m]; below 0 where the shaft is larger than the hole. */
    public Band clearance() {
        return Limits.clearance(hole, shaft);
    }

    public Kind kind() {
        Band clearance = clearance();
        if (clearance.low() >= 0) {
            return Kind.CLEARANCE;
        }
        return clearance.high() > 0 ? Kind.TRANSITION : Kind.INTERFERENCE;
    }

    /** Clearance to expect [m] where hole and shaft are made anywhere within their limits, nobody trying for a place. */
    public Estimate likely() {
        return chain().estimate(bases);
    }

    /** Chance [1] that a pair made so has play. */
    public double chanceOfPlay() {
        return chain().chanceAbove(0);
    }

    private Chain chain() {
        return new Chain(
                "clearance",
                List.of(Link.plus("hole", new Spread.Within(hole)), Link.minus("shaft", new Spread.Within(shaft))));
    }
}
