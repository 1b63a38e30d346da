package org.strawblue.core.evidence.sample;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.FastRun;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.history.Place;
import org.strawblue.core.oxide.FilmGrowth;
import org.strawblue.core.oxide.GrowthLaw;
import org.strawblue.core.oxide.GrowthLaws;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.HollomonJaffe;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Tempering;

/**
 * Histories one heat may have had: each a full set of influences and what the part did under them by the fast model, whose own
 * error is one of the influences. Evidence weighs them by the logarithm of its likelihood, history by history; what is asked
 * without weights is the belief before evidence.
 *
 * <p>The same seed gives the same histories. Histories are kept as single-precision numbers: 0.00003 K at 500 K.
 */
public final class Ensemble {

    private static final HollomonJaffe NO_STEEL = new HollomonJaffe(20);

    private final Course course;
    private final double duration;
    private final Optional<Steel> steel;
    private final Priors priors;
    private final long seed;
    private final Scores scores;
    private final double[] moments;
    /** By influence and history: each look at each history asks for some. */
    private final double[][] influences;

    private final GrowthLaw growth = GrowthLaws.central();
    private final HollomonJaffe exchange;
    private final Strands strands;
    private final Optional<TemperedBatch> batch;

    private Ensemble(Course course, Optional<Steel> steel, Priors priors, Scores scores, long seed, double[] moments) {
        this.course = course;
        this.duration = course.duration();
        this.steel = steel;
        this.priors = priors;
        this.seed = seed;
        this.scores = scores;
        this.moments = moments;
        this.influences = influences(priors, scores);
        this.exchange = steel.flatMap(TemperedBatch::exchange).orElse(NO_STEEL);
        this.strands = new Strands(moments, scores.size(), growth, exchange);
        IntStream.range(0, scores.size()).parallel().forEach(this::run);
        this.batch = steel.flatMap(s -> TemperedBatch.of(s, typicalHold()));
    }

    /**
     * Draws histories. Whether the fast model may be asked of this course, {@link Reduced#findings} tells.
     *
     * @param n how many; 5,000 tell an 80 % interval's ends to a few hundredths of its width
     * @param asked times [s] from the start at which something was seen: kept exactly, others are read between moments
     */
    public static Ensemble draw(
            Course course, Optional<Steel> steel, Priors priors, int n, long seed, double... asked) {
        return new Ensemble(course, steel, priors, Scores.latin(n, seed), seed, Moments.of(course, asked));
    }

    private void run(int draw) {
        double time = influence(Influence.FAST_TIME, draw) * Reduced.timeError();
        double level = 1 + influence(Influence.FAST_LEVEL, draw) * Reduced.levelError();
        FastRun run = new Reduced(Math.exp(time)).run(drawn(draw), moments);
        strands.keep(draw, run, course.start(), level);
    }

    /** Number of histories. */
    public int size() {
        return scores.size();
    }

    /** Length of the whole course [s]. */
    public double duration() {
        return duration;
    }

    public Course course() {
        return course;
    }

    public Priors priors() {
        return priors;
    }

    /** The course as one history has it. */
    public Course drawn(int draw) {
        return new Conditions(priors, scores.z()[draw]).of(course);
    }

    /** An influence in one history, in the core's unit. */
    public double influence(Influence influence, int draw) {
        return influences[influence.ordinal()][draw];
    }

    private static double[][] influences(Priors priors, Scores scores) {
        return Arrays.stream(Influence.values())
                .map(influence -> Arrays.stream(scores.z())
                        .mapToDouble(z -> priors.of(influence).at(z[influence.ordinal()]))
                        .toArray())
                .toArray(double[][]::new);
    }

    /** ln by which a history counts before evidence: 0 but in an ensemble drawn closer, where it sets right how it was drawn. */
    public double logPrior(int draw) {
        return scores.correction()[draw];
    }

    /** Temperature [K] of a place after a time [s] from the start of the course. */
    public double kelvin(Place place, double seconds, int draw) {
        return strands.of(place).kelvin(draw, seconds);
    }

    /** Highest temperature [K] of a place. */
    public double peak(Place place, int draw) {
        return strands.of(place).peak(draw);
    }

    /** Time [s] at the peak that tempers as much as the whole history; 0 where it never got warm. */
    public double seconds(Place place, int draw) {
        Strand strand = strands.of(place);
        return exchange.seconds(strand.tempered(draw, duration), strand.peak(draw));
    }

    /** Film thickness [m] on a place after a time [s]. */
    public double film(Place place, double seconds, int draw) {
        return film(place, seconds, draw, 1);
    }

    /** The same had it grown so many times as fast [1]. */
    public double film(Place place, double seconds, int draw, double rate) {
        double grown = strands.of(place).grown(draw, seconds) * influence(Influence.FILM_RATE, draw) * rate;
        return growth.thickness(FilmGrowth.airFormed(), grown);
    }

    /** Hollomon–Jaffe parameter [K] of a place after a time [s]. */
    public double tempered(Place place, double seconds, int draw) {
        return strands.of(place).tempered(draw, seconds);
    }

    /** Hardness as quenched [HRC]; NaN where nothing is known of it. */
    public double asQuenched(int draw) {
        double quench = influence(Influence.AS_QUENCHED, draw);
        return batch.map(b -> b.asQuenched(quench)).orElse(Double.NaN);
    }

    /**
     * Hardness [HRC] of a place had it been cooled after a time [s]; NaN where no law tells, and before the shortest time any
     * law answers.
     */
    public double hardness(Place place, double seconds, int draw) {
        return seconds < Tempering.times().low()
                ? Double.NaN
                : hardness(strands.of(place).tempered(draw, seconds), draw);
    }

    /** The same after the whole course and one more temper at [K] for [s]. */
    public double hardnessAgain(Place place, double kelvin, double seconds, int draw) {
        return hardness(exchange.after(strands.of(place).tempered(draw, duration), kelvin, seconds), draw);
    }

    private double hardness(double tempered, int draw) {
        return batch.map(b -> b.hardness(
                        tempered,
                        influence(Influence.STEEL_BATCH, draw),
                        influence(Influence.TEMPERING_LAW, draw),
                        influence(Influence.AS_QUENCHED, draw)))
                .orElse(Double.NaN);
    }

    private double typicalHold() {
        double[] holds = values(i -> seconds(Place.TOP, i));
        Arrays.sort(holds);
        return holds[holds.length / 2];
    }

    /** One value of every history. */
    public double[] values(IntToDoubleFunction of) {
        return IntStream.range(0, size()).mapToDouble(of).toArray();
    }

    /** What each history counts before evidence. */
    public Weights weights() {
        return Weights.of(scores.correction());
    }

    /** What each history counts in the light of evidence. */
    public Weights weights(Likelihood evidence) {
        return Weights.of(logs(evidence));
    }

    private double[] logs(Likelihood evidence) {
        return IntStream.range(0, size())
                .parallel()
                .mapToDouble(i -> evidence.log(this, i) + logPrior(i))
                .toArray();
    }

    /** Temperature [K] of a place after a time [s], before evidence. */
    public Estimate band(Place place, double seconds) {
        return band(place, seconds, weights());
    }

    /** The same, in the light of evidence. */
    public Estimate band(Place place, double seconds, Weights weights) {
        return weights.estimate(Dimension.TEMPERATURE, values(i -> kelvin(place, seconds, i)), bases());
    }

    /** What the temperatures rest on. */
    public Collection<Basis> bases() {
        TreeSet<Basis> bases = new TreeSet<>(Set.of(SteelProperties.basis()));
        Conditions.acting(course).forEach(i -> bases.add(priors.basis(i)));
        return bases;
    }

    /** What the hardness rests on, temperatures included. */
    public Collection<Basis> hardnessBases() {
        TreeSet<Basis> bases = new TreeSet<>(bases());
        batch.ifPresent(b -> bases.addAll(b.bases()));
        return bases;
    }

    /**
     * As many histories again, drawn where this evidence puts its weight. Each keeps its {@link #logPrior}; the evidence is to
     * be weighed anew.
     */
    public Ensemble refine(Likelihood evidence) {
        return refine(logs(evidence));
    }

    /** @param logWeights of every history, evidence and {@link #logPrior} together */
    public Ensemble refine(double[] logWeights) {
        // a further round must not draw the same numbers again
        long next = seed * 31 + 1;
        return new Ensemble(course, steel, priors, Closer.around(scores, logWeights, next), next, moments);
    }

    /**
     * This ensemble, or one drawn closer, in so many rounds at most, in which the evidence leaves enough histories in play.
     *
     * @param effective histories that must count, see {@link Weights#effective}
     */
    public Ensemble refined(Likelihood evidence, double effective, int rounds) {
        Ensemble ensemble = this;
        for (int i = 0; i < rounds; i++) {
            double[] logs = ensemble.logs(evidence);
            if (Weights.of(logs).effective() >= effective) {
                return ensemble;
            }
            ensemble = ensemble.refine(logs);
        }
        return ensemble;
    }
}
