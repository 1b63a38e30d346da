package org.strawblue.core.evidence.sample;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.strawblue.core.heat.course.FastRun;
import org.strawblue.core.history.Place;
import org.strawblue.core.oxide.GrowthLaw;
import org.strawblue.core.steel.HollomonJaffe;

/**
 * What an ensemble keeps, by place. The fast model tells underside, top and core; the surface is taken as the top; the edge lies
 * between underside and top, in every history at another height, each as likely: reckoned when first asked for.
 */
final class Strands {

    private static final Place[] RUN = {Place.UNDERSIDE, Place.TOP, Place.CORE};
    /** Steps of the golden section: heights that are evenly spread and go with nothing else in a history. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final double[] moments;
    private final int histories;
    private final GrowthLaw growth;
    private final HollomonJaffe exchange;
    private final Map<Place, Strand> kept = new EnumMap<>(Place.class);
    private @Nullable Strand edge;

    Strands(double[] moments, int histories, GrowthLaw growth, HollomonJaffe exchange) {
        this.moments = moments;
        this.histories = histories;
        this.growth = growth;
        this.exchange = exchange;
        for (Place place : RUN) {
            kept.put(place, new Strand(moments, histories));
        }
    }

    /**
     * Keeps one history.
     *
     * @param start temperature before the heat [K]
     * @param level rise above it over that of the run [1]
     */
    void keep(int draw, FastRun run, double start, double level) {
        for (Place place : RUN) {
            double[] kelvin = run.at(place);
            double[] risen = new double[kelvin.length];
            for (int i = 0; i < risen.length; i++) {
                risen[i] = start + (kelvin[i] - start) * level;
            }
            of(place).keep(draw, risen, growth, exchange);
        }
    }

    Strand of(Place place) {
        return switch (place) {
            case UNDERSIDE, TOP, CORE -> run(place);
            case SURFACE -> run(Place.TOP);
            case EDGE -> edge();
        };
    }

    private Strand run(Place place) {
        return Objects.requireNonNull(kept.get(place));
    }

    private synchronized Strand edge() {
        Strand made = edge;
        if (made == null) {
            made = new Strand(moments, histories);
            Strand target = made;
            IntStream.range(0, histories).forEach(i -> target.keep(i, between(i), growth, exchange));
            edge = made;
        }
        return made;
    }

    private double[] between(int draw) {
        double[] under = run(Place.UNDERSIDE).temperatures(draw);
        double[] top = run(Place.TOP).temperatures(draw);
        double height = GOLDEN * (draw + 1) % 1;
        for (int i = 0; i < under.length; i++) {
            under[i] += (top[i] - under[i]) * height;
        }
        return under;
    }
}
