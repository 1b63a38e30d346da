package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.source.Basis;

/**
 * How slowly a steel may be quenched: the time from the hardening temperature half-way to the bath in which half of it still
 * turns to martensite.
 *
 * <p>By composition: t = Fo(∞) (D_I/2)²/a, a the thermal diffusivity of austenite, D_I by {@link A255IdealDiameter}. By found
 * sections: the half-temperature time at the centre of the bar that was found to harden, by {@link Cooling}. Where a section was
 * found for full hardness, 95 % martensite, the ideal diameter for half is larger by 1/0.70. What is known is drawn together in
 * ln t by the inverse of its variance; where the opinions differ more than their spreads allow, the spread is widened.
 *
 * @param critical time to half temperature with half martensite [s]
 * @param lnSd standard deviation of its logarithm
 * @param computed the same by composition alone
 * @param found the same by found sections alone
 */
public record Hardenability(Estimate critical, double lnSd, Optional<Estimate> computed, Optional<Estimate> found) {

    /** A found section and the bath it was found in. */
    private record Section(Property property, String quench, boolean full) {}

    private static final List<Section> SECTIONS = List.of(
            new Section(Property.HALF_HARD_IN_BRINE, "brine", false),
            new Section(Property.HALF_HARD_IN_WATER, "water", false),
            new Section(Property.FULLY_HARD_IN_WATER, "water", true),
            new Section(Property.HALF_HARD_IN_OIL, "fast-oil", false),
            new Section(Property.FULLY_HARD_IN_OIL, "fast-oil", true),
            new Section(Property.FULLY_HARD_IN_AIR, "still-air", true));

    /** A bar so long that its ends do not count [m]. */
    private static final double LONG = 1e6;

    /** An opinion of ln t and its standard deviation. */
    private record Opinion(double ln, double sd) {}

    /** By the very object: a catalogued grade exists once, and to compare two of them figure by figure is slow. */
    private static final Map<Grade, Answer<Hardenability>> KNOWN = Collections.synchronizedMap(new IdentityHashMap<>());

    public static Answer<Hardenability> of(Grade grade) {
        return grade.catalogued() ? KNOWN.computeIfAbsent(grade, Hardenability::reckon) : reckon(grade);
    }

    private static Answer<Hardenability> reckon(Grade grade) {
        List<Opinion> found = new ArrayList<>();
        TreeSet<Basis> foundBases = new TreeSet<>();
        for (Section section : SECTIONS) {
            grade.found(section.property).ifPresent(size -> {
                found.add(opinion(grade, section, size));
                foundBases.addAll(size.bases());
                foundBases.add(UndercooledAustenite.BASIS);
            });
        }
        Answer<Estimate> ideal = grade.formulas() ? new A255IdealDiameter().of(grade) : Answer.refused();
        if (ideal.value().isEmpty() && found.isEmpty()) {
            return Answer.refused(ideal.findings().isEmpty() ? List.of(unknown(grade)) : ideal.findings());
        }
        List<Opinion> computed = ideal.value().map(d -> List.of(opinion(d))).orElse(List.of());
        return Answer.of(join(
                computed,
                ideal.value().map(Estimate::bases).map(TreeSet::new).orElseGet(TreeSet::new),
                found,
                foundBases));
    }

    /** Share of martensite, by time to half temperature over the critical time x: 1/(1 + x^p), 0.95 at x = 0.7². */
    static double share(double ratio) {
        return 1 / (1 + Math.pow(ratio, steepness()));
    }

    /** Time at which 95 % turns over time at which half does. */
    static double fullOverHalf() {
        double diameters = Figures.number("ideal-diameter-at-95");
        return diameters * diameters;
    }

    /** Time at which enough turns for a place to count as hard, over time at which half does. */
    static double hardOverHalf() {
        double share = Figures.number("through-share");
        return Math.pow(1 / share - 1, 1 / steepness());
    }

    private static double steepness() {
        double share = Figures.number("full-share");
        return Math.log(share / (1 - share)) / -Math.log(fullOverHalf());
    }

    /** Whether found and computed section differ enough to be told. */
    public Optional<Finding> disagreement(Grade grade) {
        if (computed.isEmpty() || found.isEmpty()) {
            return Optional.empty();
        }
        double ratio = Math.sqrt(found.get().value() / computed.get().value());
        double limit = Figures.number("disagree");
        return ratio < limit && ratio > 1 / limit ? Optional.empty() : Optional.of(disagrees(grade));
    }

    private static Finding disagrees(Grade grade) {
        return new Finding.Note(
                Phrase.of("Published sections and the formula disagree on how deep " + grade.name() + " hardens."),
                Phrase.of("The answer leans on the published sections; its interval spans both."),
                Phrase.of("Trust a test piece of the same section over either."));
    }

    private static Finding unknown(Grade grade) {
        return new Finding.Stop(
                Phrase.of("How deep " + grade.name() + " hardens is not known."),
                Phrase.of("No section has been found for it, and it lies outside the formula."),
                Phrase.of("Ask the steel's maker for the largest section, or harden and break a test piece."));
    }

    private static Opinion opinion(Estimate ideal) {
        return new Opinion(
                Math.log(Figures.number("half-fo") * Math.pow(ideal.value() / 2, 2) / UndercooledAustenite.DIFFUSIVITY),
                2 * Math.log(ideal.high() / ideal.low()) / (2 * Normal.HALF_OF_80));
    }

    private static Opinion opinion(Grade grade, Section section, Estimate size) {
        double low = seconds(grade, section, size.low());
        double high = seconds(grade, section, size.high());
        return new Opinion(
                Math.log(seconds(grade, section, size.value())), Math.log(high / low) / (2 * Normal.HALF_OF_80));
    }

    private static double seconds(Grade grade, Section section, double diameter) {
        Quenchant quench = Quenchants.of(section.quench);
        double hot = grade.found(Property.AUSTENITISE).orElseThrow().value();
        Cooling.Body body = Bodies.of(new PartShape.RoundBar(diameter, LONG));
        double half = Cooling.of(
                        body,
                        quench.film(),
                        quench.strength().value(),
                        hot,
                        quench.bath().value())
                .atCentre();
        return section.full ? half / fullOverHalf() : half;
    }

    private static Hardenability join(
            List<Opinion> computed, TreeSet<Basis> computedBases, List<Opinion> found, TreeSet<Basis> foundBases) {
        List<Opinion> all = new ArrayList<>(computed);
        all.addAll(found);
        TreeSet<Basis> bases = new TreeSet<>(computedBases);
        bases.addAll(foundBases);
        Opinion joined = join(all);
        return new Hardenability(
                estimate(joined, bases),
                joined.sd,
                computed.isEmpty() ? Optional.empty() : Optional.of(estimate(join(computed), computedBases)),
                found.isEmpty() ? Optional.empty() : Optional.of(estimate(join(found), foundBases)));
    }

    /** Weighted mean; its standard deviation no less than the scatter of the opinions. */
    private static Opinion join(List<Opinion> opinions) {
        double weights = 0;
        double sum = 0;
        for (Opinion o : opinions) {
            double w = 1 / (o.sd * o.sd);
            weights += w;
            sum += w * o.ln;
        }
        double mean = sum / weights;
        double scatter = 0;
        for (Opinion o : opinions) {
            scatter += (o.ln - mean) * (o.ln - mean) / (o.sd * o.sd);
        }
        return new Opinion(mean, Math.max(Figures.number("critical-least-sd"), Math.sqrt((1 + scatter) / weights)));
    }

    private static Estimate estimate(Opinion opinion, TreeSet<Basis> bases) {
        double spread = Math.exp(Normal.HALF_OF_80 * opinion.sd);
        double value = Math.exp(opinion.ln);
        return Estimate.of(Dimension.TIME, value, value / spread, value * spread, bases);
    }
}
