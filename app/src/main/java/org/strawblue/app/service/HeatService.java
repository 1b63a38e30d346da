package org.strawblue.app.service;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.watch.Reading;
import org.strawblue.core.watch.TemperWatch;

/** What a part really has on its way through a heat. */
public final class HeatService {

    /** Moments that are told, evenly over the heat. */
    private static final int MOMENTS = 6;

    /** Histories the intervals are taken from: their ends are right to about a twentieth of the width. */
    private static final int HISTORIES = 400;

    private static final long SEED = 1;

    /** Places that differ by less are told as one [K]; a temperature is not told finer. */
    private static final double EVEN = 1;

    private final Sheet.Builder sheet;
    private final Course course;
    private final Optional<Steel> steel;
    private final CourseRun run;
    private final Ensemble ensemble;

    private HeatService(Sheet.Builder sheet, Course course, Optional<Steel> steel, CourseRun run) {
        this.sheet = sheet;
        this.course = course;
        this.steel = steel;
        this.run = run;
        this.ensemble = Ensemble.draw(course, steel, Priors.usual(), HISTORIES, SEED);
    }

    /** @param steel whose hardness and colour are to be told; absent for temperatures alone */
    public static Sheet heat(Course course, Optional<Steel> steel, Light light, double chromium) {
        Answer<CourseRun> answer = Conduction.run(course);
        Sheet.Builder sheet = Sheet.titled("Heat in the part");
        answer.value().ifPresent(run -> new HeatService(sheet, course, steel, run).write(light, chromium));
        return sheet.findings(answer.findings()).build();
    }

    private void write(Light light, double chromium) {
        lead();
        steel.ifPresent(s -> readings(s, light, chromium));
        for (int k = 1; k <= MOMENTS; k++) {
            moment(k, course.duration() * k / MOMENTS);
        }
        sheet.add(new Entry.Given(
                "energy",
                "Heat balance closes to",
                Quantity.fraction(run.energy().error())));
        sheet.findings(Reduced.findings(course));
    }

    /** What matters first: what it has at the end, and whether it has come through. */
    private void lead() {
        sheet.add("end", "At the end", estimate(slowest(), course.duration()));
        sheet.add(new Entry.Words(
                "through",
                "Come through",
                run.arrival().isPresent()
                        ? Phrase.of(
                                "after {} its slowest place was within {} of what surrounds it",
                                Quantity.time(run.arrival().getAsDouble()),
                                Quantity.temperatureDifference(Conduction.within()))
                        : Phrase.of(
                                "not yet: it is more than {} from what surrounds it",
                                Quantity.temperatureDifference(Conduction.within()))));
    }

    private Place slowest() {
        return places().keySet().stream()
                .min(Comparator.comparingDouble(p -> at(p, course.duration())))
                .orElseThrow();
    }

    /** In the order of their names. */
    private Map<Place, Trace> places() {
        return new EnumMap<>(run.history().traces());
    }

    private double at(Place place, double seconds) {
        return Objects.requireNonNull(places().get(place)).at(seconds);
    }

    /** One line where all places have nearly the same, else one for each. */
    private void moment(int k, double seconds) {
        sheet.add(new Entry.Given("after_" + k, "After", Quantity.time(seconds)));
        if (even(seconds)) {
            sheet.add("all_" + k, "    all of it", estimate(slowest(), seconds));
            return;
        }
        places().keySet().forEach(p -> sheet.add(key(p) + "_" + k, "    " + key(p), estimate(p, seconds)));
    }

    private boolean even(double seconds) {
        double[] all = places().keySet().stream()
                .mapToDouble(p -> at(p, seconds))
                .sorted()
                .toArray();
        return all[all.length - 1] - all[0] < EVEN;
    }

    /** The full solver's value with the interval of the fast model's histories about it. */
    private Estimate estimate(Place place, double seconds) {
        return about(at(place, seconds), ensemble.band(place, seconds));
    }

    private static Estimate about(double value, Estimate band) {
        return Estimate.of(
                band.dimension(),
                value,
                value - (band.value() - band.low()),
                value + (band.high() - band.value()),
                band.bases());
    }

    private void readings(Steel known, Light light, double chromium) {
        Answer<TemperWatch> watch = TemperWatch.of(run.history(), known, light, chromium);
        sheet.findings(watch.findings());
        boolean one = even(course.duration());
        watch.value()
                .ifPresent(w -> places().keySet().stream()
                        .filter(p -> !one || p == slowest())
                        .forEach(p -> reading(
                                p,
                                one ? "all of it" : key(p),
                                Objects.requireNonNull(w.places().get(p)).last())));
    }

    private void reading(Place place, String where, Reading last) {
        sheet.findings(last.hardness().findings());
        last.hardness()
                .value()
                .ifPresent(h -> sheet.add(key(place) + "_hardness", "Hardness, " + where, hardness(place, h)));
        last.colour().value().ifPresent(c -> sheet.add(colour(place, where, c)));
    }

    /** The law's interval for this one history, and what is not known of the history besides. */
    private Estimate hardness(Place place, Estimate byLaw) {
        double[] drawn = ensemble.values(i -> ensemble.hardness(place, course.duration(), i));
        if (Double.isNaN(ensemble.weights().mean(drawn))) {
            return byLaw;
        }
        Estimate unknown = ensemble.weights().estimate(Dimension.HARDNESS, drawn, ensemble.hardnessBases());
        Estimate about = about(byLaw.value(), unknown);
        TreeSet<Basis> bases = new TreeSet<>(byLaw.bases());
        bases.addAll(about.bases());
        return Estimate.of(
                Dimension.HARDNESS,
                byLaw.value(),
                Math.min(byLaw.low(), about.low()),
                Math.max(byLaw.high(), about.high()),
                bases);
    }

    private static Entry colour(Place place, String where, ColourReading reading) {
        return new Entry.Colour(
                key(place) + "_colour",
                "Colour, " + where,
                reading.colour().name().word(),
                reading.colour().hex());
    }

    private static String key(Place place) {
        return place.name().toLowerCase(Locale.ROOT);
    }
}
