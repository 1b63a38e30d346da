package org.strawblue.core.evidence.sample;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.table.Row;

/** What is believed of every influence before this heat is looked at. */
public record Priors(Map<Influence, Prior> all) {

    /** One belief and what it rests on. */
    public record Prior(Distribution distribution, Basis basis) {}

    public Priors {
        if (all.size() != Influence.values().length) {
            throw new IllegalArgumentException("something must be believed of every influence");
        }
        all = Map.copyOf(all);
    }

    /** What is usual in small shops, from {@code influences.csv}. */
    public static Priors usual() {
        return Usual.PRIORS;
    }

    public Distribution of(Influence influence) {
        return prior(influence).distribution();
    }

    public Basis basis(Influence influence) {
        return prior(influence).basis();
    }

    private Prior prior(Influence influence) {
        Prior prior = all.get(influence);
        if (prior == null) {
            throw new IllegalStateException("nothing believed of " + influence);
        }
        return prior;
    }

    /** The same, one influence better known. */
    public Priors with(Influence influence, Distribution better, Basis because) {
        return with(Map.of(influence, new Prior(better, because)));
    }

    /** The same, some influences better known: what the shop has learned. */
    public Priors with(Map<Influence, Prior> better) {
        Map<Influence, Prior> next = new EnumMap<>(all);
        next.putAll(better);
        return new Priors(next);
    }

    /** The same, one influence known as an estimate tells it, its bell on the scale it had. */
    public Priors with(Influence influence, Estimate better) {
        Distribution.Kind kind = of(influence).kind();
        Basis because =
                better.bases().isEmpty() ? basis(influence) : better.bases().first();
        return with(influence, new Distribution(kind, better.value(), better.low(), better.high()), because);
    }

    /** What it all rests on. */
    public List<Basis> bases() {
        return all.values().stream().map(Prior::basis).sorted().toList();
    }

    /** Read when first asked for. */
    private static final class Usual {

        private static final Constants TABLE = Constants.of(Priors.class, "influences.csv");
        private static final Priors PRIORS = read();

        private static Priors read() {
            Map<Influence, Prior> all = new EnumMap<>(Influence.class);
            for (Influence influence : Influence.values()) {
                all.put(influence, prior(influence.key()));
            }
            return new Priors(all);
        }

        private static Prior prior(String key) {
            Row row = Objects.requireNonNull(TABLE.rows().get(key), key);
            Distribution.Kind kind = Distribution.Kind.of(row.text("kind"));
            Estimate belief = TABLE.estimate(key, Dimension.valueOf(row.text("dimension")));
            return new Prior(new Distribution(kind, belief.value(), belief.low(), belief.high()), TABLE.basis(key));
        }
    }
}
