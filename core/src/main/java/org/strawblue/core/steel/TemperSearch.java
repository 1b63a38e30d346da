package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/** Walks a law over all temperatures of one hold: to draw its curve, or to find the temperature for a wanted hardness. */
record TemperSearch(TemperingLaw law, double seconds) {

    /** Steps of about a kelvin: a shop holds no better. */
    private static final int STEPS = 1 << 9;

    Answer<List<CurvePoint>> curve() {
        List<CurvePoint> points = new ArrayList<>();
        Answer<Estimate> refused = law.hardness(new Temper(kelvin(0), seconds));
        for (int i = 0; i <= STEPS; i++) {
            Answer<Estimate> answer = law.hardness(new Temper(kelvin(i), seconds));
            double kelvin = kelvin(i);
            answer.value().ifPresent(hardness -> points.add(new CurvePoint(kelvin, hardness)));
        }
        return points.isEmpty() ? Answer.refused(refused.findings()) : Answer.of(points);
    }

    private static double kelvin(int i) {
        Band all = TemperingFigures.TEMPERATURES;
        return all.low() + all.width() * i / STEPS;
    }

    Answer<TemperChoice> aimFor(Band wanted) {
        return curve().then(points -> choose(points, wanted));
    }

    private Answer<TemperChoice> choose(List<CurvePoint> points, Band wanted) {
        int best = usable(points);
        for (int i = best + 1; i < points.size(); i++) {
            // the hotter of two equals: it relieves more, and past a second hardening it is the one in use
            if (chance(points.get(i).hardness(), wanted)
                    >= chance(points.get(best).hardness(), wanted)) {
                best = i;
            }
        }
        Optional<Band> window = window(points, best, wanted);
        if (window.isEmpty()) {
            return Answer.refused(outOfReach(points, wanted));
        }
        CurvePoint found = points.get(best);
        List<Finding> findings =
                law.hardness(new Temper(found.kelvin(), seconds)).findings();
        return Answer.of(
                new TemperChoice(aim(points, best), window.get(), found.hardness(), chance(found.hardness(), wanted)),
                findings);
    }

    /**
     * The first temperature to look at. A steel whose curve climbs from its start by more than its interval hardens again
     * on tempering, and is used past that peak.
     */
    private static int usable(List<CurvePoint> points) {
        int peak = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).hardness().value() > points.get(peak).hardness().value()) {
                peak = i;
            }
        }
        return points.get(peak).hardness().value() > points.get(0).hardness().high() ? peak : 0;
    }

    private static double chance(Estimate hardness, Band wanted) {
        double sd = hardness.band().width() / (2 * Normal.HALF_OF_80);
        return Normal.below((wanted.high() - hardness.value()) / sd)
                - Normal.below((wanted.low() - hardness.value()) / sd);
    }

    /** The temperatures about the best whose expected hardness is in the band. */
    private static Optional<Band> window(List<CurvePoint> points, int best, Band wanted) {
        if (!wanted.contains(points.get(best).hardness().value())) {
            return Optional.empty();
        }
        int low = best;
        while (low > 0 && wanted.contains(points.get(low - 1).hardness().value())) {
            low--;
        }
        int high = best;
        while (high < points.size() - 1
                && wanted.contains(points.get(high + 1).hardness().value())) {
            high++;
        }
        return Optional.of(new Band(
                Dimension.TEMPERATURE,
                points.get(low).kelvin(),
                points.get(high).kelvin()));
    }

    /** Were this bar harder or softer by half the interval, the aim would lie where the curve has made up for it. */
    private static Estimate aim(List<CurvePoint> points, int best) {
        Estimate hardness = points.get(best).hardness();
        SortedSet<Basis> bases = hardness.bases();
        int low = best;
        while (low > 0 && points.get(low).hardness().value() < hardness.high()) {
            low--;
        }
        int high = best;
        while (high < points.size() - 1 && points.get(high).hardness().value() > hardness.low()) {
            high++;
        }
        return Estimate.of(
                Dimension.TEMPERATURE,
                points.get(best).kelvin(),
                points.get(low).kelvin(),
                points.get(high).kelvin(),
                bases);
    }

    private Finding outOfReach(List<CurvePoint> points, Band wanted) {
        double hardest =
                points.stream().mapToDouble(p -> p.hardness().value()).max().orElseThrow();
        double softest =
                points.stream().mapToDouble(p -> p.hardness().value()).min().orElseThrow();
        return new Finding.Stop(
                Phrase.of(
                        "{} is out of reach: {} of tempering leaves this steel between {} and {}",
                        wanted,
                        Quantity.time(seconds),
                        Quantity.hardness(softest),
                        Quantity.hardness(hardest)),
                Phrase.of("So far as its tempering is known here."),
                Phrase.of("Choose a hardness within reach, or another steel."));
    }
}
