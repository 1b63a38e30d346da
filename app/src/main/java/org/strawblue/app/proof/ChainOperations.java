package org.strawblue.app.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.fit.Demand;
import org.strawblue.core.fit.Draws;
import org.strawblue.core.fit.Link;
import org.strawblue.core.fit.Spread;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;

/** Chains of tolerances: worst case, root sum square, chances. */
final class ChainOperations {

    private static final int SAMPLES = 1_000_000;
    private static final long SEED = 1905;

    private ChainOperations() {}

    static Map<String, Operation> all() {
        return Map.of(
                "chain-worst-half-width", in -> length(alike(in).worstCase().width() / 2),
                "chain-root-sum-square", in -> length(alike(in).rootSumSquare()),
                "chain-chance-of-interference", in -> share(1 - pair(in).chanceAbove(0)),
                "chain-chance-of-interference-drawn", in -> share(1 - drawn(pair(in))),
                "chain-clearance-exceeded", in -> length(exceeded(pair(in), in.number("share"))),
                "chain-chance-by-worst-case", in -> share(pair(in).worstCase().low() > 0 ? 0 : 1));
    }

    /** So many links of one tolerance either way. */
    private static Chain alike(Inputs in) {
        double half = in.length("tolerance");
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < in.number("links"); i++) {
            links.add(Link.plus("link " + i, new Spread.Within(new Band(Dimension.LENGTH, -half, half))));
        }
        return new Chain("alike", links);
    }

    /** A hole and a shaft, each normal about its mean. */
    private static Chain pair(Inputs in) {
        return new Chain(
                "clearance", List.of(Link.plus("hole", normal(in, "hole")), Link.minus("shaft", normal(in, "shaft"))));
    }

    private static Spread normal(Inputs in, String part) {
        double mean = in.length(part);
        double half = Normal.HALF_OF_80 * in.length(part + "-sd");
        return new Spread.Told(Estimate.of(Dimension.LENGTH, mean, mean - half, mean + half));
    }

    private static double drawn(Chain chain) {
        Band play = new Band(Dimension.LENGTH, 0, Double.POSITIVE_INFINITY);
        return Draws.of(List.of(new Demand(chain, play)), SAMPLES, SEED).all();
    }

    /** The clearance that a share of pairs exceeds. */
    private static double exceeded(Chain chain, double share) {
        double low = chain.worstCase().low() - chain.worstCase().width();
        double high = chain.worstCase().high();
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (chain.chanceAbove(middle) > share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static Result length(double metres) {
        return new Result.Number(Quantity.length(metres));
    }

    private static Result share(double share) {
        return new Result.Number(Quantity.fraction(share));
    }
}
