package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
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
import org.strawblue.core.quantity.Quantity;
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

    private HeatService() {}

    /** @param steel whose hardness and colour are to be told; absent for temperatures alone */
    public static Sheet heat(Course course, Optional<Steel> steel, Light light, double chromium) {
        Sheet.Builder sheet = Sheet.titled("Heat in the part");
        Answer<CourseRun> answer = Conduction.run(course);
        List<Finding> findings = new ArrayList<>(answer.findings());
        answer.value().ifPresent(run -> {
            findings.addAll(Reduced.findings(course));
            told(sheet, course, run);
            steel.ifPresent(s -> findings.addAll(readings(sheet, run, s, light, chromium)));
        });
        return sheet.findings(findings).build();
    }

    private static void told(Sheet.Builder sheet, Course course, CourseRun run) {
        Ensemble ensemble = Ensemble.draw(course, Optional.empty(), Priors.usual(), HISTORIES, SEED);
        double end = course.duration();
        for (int k = 1; k <= MOMENTS; k++) {
            double seconds = end * k / MOMENTS;
            sheet.add(new Entry.Given("after_" + k, "After", Quantity.time(seconds)));
            for (Map.Entry<Place, Trace> place : run.history().traces().entrySet()) {
                sheet.add(
                        key(place.getKey()) + "_" + k,
                        "    " + key(place.getKey()),
                        estimate(ensemble, place.getKey(), place.getValue(), seconds));
            }
        }
        run.arrival()
                .ifPresent(t -> sheet.add(
                        new Entry.Given("arrival", "Slowest place within 10 K of its surroundings", Quantity.time(t))));
        sheet.add(new Entry.Given(
                "energy",
                "Heat balance closes to",
                Quantity.fraction(run.energy().error())));
    }

    /** The full solver's value with the interval of the fast model's histories about it. */
    private static Estimate estimate(Ensemble ensemble, Place place, Trace trace, double seconds) {
        Estimate band = ensemble.band(place, seconds);
        double value = trace.at(seconds);
        return Estimate.of(
                Dimension.TEMPERATURE,
                value,
                value - (band.value() - band.low()),
                value + (band.high() - band.value()),
                band.bases());
    }

    private static List<Finding> readings(
            Sheet.Builder sheet, CourseRun run, Steel steel, Light light, double chromium) {
        Answer<TemperWatch> watch = TemperWatch.of(run.history(), steel, light, chromium);
        List<Finding> findings = new ArrayList<>(watch.findings());
        watch.value()
                .ifPresent(w -> w.places().forEach((place, watched) -> {
                    Reading last = watched.last();
                    findings.addAll(last.hardness().findings());
                    last.hardness()
                            .value()
                            .ifPresent(
                                    h -> sheet.add(key(place) + "_hardness", "Hardness at the end, " + key(place), h));
                    last.colour().value().ifPresent(c -> sheet.add(colour(place, c)));
                }));
        return findings;
    }

    private static Entry colour(Place place, ColourReading reading) {
        return new Entry.Colour(
                key(place) + "_colour",
                "Colour at the end, " + key(place),
                reading.colour().name().word(),
                reading.colour().hex());
    }

    private static String key(Place place) {
        return place.name().toLowerCase(Locale.ROOT);
    }
}
