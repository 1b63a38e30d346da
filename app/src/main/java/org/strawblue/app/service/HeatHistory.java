package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Frame;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.Picture;
import org.strawblue.core.job.SectionView;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.watch.PlaceWatch;
import org.strawblue.core.watch.Reading;
import org.strawblue.core.watch.TemperWatch;

/**
 * A run put into rows and pictures.
 *
 * @param seconds the main spell's
 */
record HeatHistory(HeatRequest request, CourseRun run, Optional<TemperWatch> watch, Doubts doubts, double seconds) {

    private static final int POINTS = 120;
    private static final int MOST_ROWS = 240;
    /** Steps in which a person reads a clock [s]. */
    private static final int[] STEPS = {1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600};

    /** When the section is shown: how much of its change is done. */
    private static final double[] SHOWN = {1.0 / 4, 2.0 / 3, 1};

    private static final int FINE = 2000;

    /** From when it is read, the clock's 0, to the end [s]. */
    double duration() {
        return request.takenOffAfter(seconds).duration() - zero();
    }

    /** When the clock starts [s after the course began]: of a part hardened on the way when that is done. */
    double zero() {
        return request.readFrom();
    }

    /** When it is taken off [s by the clock]. */
    double off() {
        return request.mainFrom() - zero() + seconds;
    }

    HeatStory story(Picture.HeatClock clock) {
        PlaceNames names = names();
        return new HeatStory(names.told().stream().map(names::word).toList(), rows(), clock, section());
    }

    PlaceNames names() {
        return new PlaceNames(request, run);
    }

    private List<HeatStory.Row> rows() {
        double step = step(duration());
        List<HeatStory.Row> rows = new ArrayList<>();
        for (double t = 0; t < duration(); t += step) {
            rows.add(row(t));
        }
        rows.add(row(duration()));
        return rows;
    }

    private static double step(double duration) {
        for (int step : STEPS) {
            if (duration / step <= MOST_ROWS) {
                return duration < STEPS[0] * POINTS / 2.0 ? duration / POINTS : step;
            }
        }
        return duration / MOST_ROWS;
    }

    private HeatStory.Row row(double seconds) {
        List<Place> read = names().read();
        return new HeatStory.Row(
                seconds,
                names().told().stream()
                        .map(p -> {
                            Optional<Reading> reading = read.contains(p) ? reading(p, seconds) : Optional.empty();
                            return new HeatStory.Cell(
                                    p,
                                    kelvin(p, seconds),
                                    reading.flatMap(r -> r.colour().value()),
                                    reading.flatMap(r -> r.hardness().value()).map(h -> hardness(p, seconds, h)));
                        })
                        .toList());
    }

    /** @param at by the clock [s], as everywhere here */
    Estimate kelvin(Place place, double at) {
        return doubts.kelvin(place, at + zero(), trace(place).at(at));
    }

    Estimate hardness(Place place, double at, Estimate byLaw) {
        return doubts.hardness(place, at + zero(), byLaw);
    }

    Trace trace(Place place) {
        Trace whole = run.history().at(place).orElseThrow();
        return zero() > 0 ? whole.from(zero()) : whole;
    }

    /** What is read of a place after a time [s]; nothing before there is anything to read. */
    Optional<Reading> reading(Place place, double at) {
        return at <= 0 ? Optional.empty() : watch.flatMap(w -> w.at(place)).map(p -> p.at(Math.min(at, end(p))));
    }

    private static double end(PlaceWatch place) {
        return place.end();
    }

    Picture.HeatClock clock(Optional<Band> wanted, Optional<Band> pull, Phrase caption) {
        PlaceNames names = names();
        List<Picture.ClockTrace> traces = names.read().stream()
                .map(p -> new Picture.ClockTrace(names.word(p), points(p)))
                .toList();
        return new Picture.HeatClock(caption, traces, wanted, pull, spans());
    }

    private List<Picture.ClockPoint> points(Place place) {
        List<Picture.ClockPoint> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double t = duration() * i / POINTS;
            Estimate k = kelvin(place, t);
            points.add(new Picture.ClockPoint(t, k.value(), k.low(), k.high()));
        }
        return points;
    }

    /** The colours of the first place that is read, one after another. */
    private List<Picture.ColourSpan> spans() {
        Place place = names().read().get(0);
        List<Picture.ColourSpan> spans = new ArrayList<>();
        double half = duration() / POINTS / 2;
        for (int i = 1; i <= POINTS; i++) {
            double t = duration() * i / POINTS;
            Optional<ColourReading> colour =
                    reading(place, t).flatMap(r -> r.colour().value());
            if (colour.isPresent()) {
                String name = colour.get().colour().name().word();
                String hex = colour.get().colour().hex();
                spans.add(new Picture.ColourSpan(t - half, Math.min(duration(), t + half), name, hex));
            }
        }
        return spans;
    }

    private Optional<Picture.SectionWarming> section() {
        if (run.frames().isEmpty()) {
            return Optional.empty();
        }
        List<Frame> frames = new ArrayList<>();
        for (double share : SHOWN) {
            frame(share).filter(f -> !frames.contains(f)).ifPresent(frames::add);
        }
        boolean onPlate = request.main().setting() instanceof Setting.OnPlate
                || request.main().setting() instanceof Setting.OnSaggingPlate;
        Phrase caption = Phrase.of("The section over {}", Quantity.time(off()));
        return frames.isEmpty()
                ? Optional.empty()
                : Optional.of(SectionView.of(request.shape(), run, frames, caption, onPlate));
    }

    /** The section when so much of what changes until it is taken off has changed, reckoned as far as that moment. */
    private Optional<Frame> frame(double share) {
        double at = share < 1 ? when(share) : off();
        return Conduction.run(request.leftOn(at))
                .value()
                .map(r -> r.frames().get(r.frames().size() - 1))
                .map(f -> new Frame(at, f.kelvin()));
    }

    private double when(double share) {
        Trace trace = trace(names().read().get(0));
        double most = 0;
        for (int i = 0; i <= POINTS; i++) {
            most = Math.max(most, changed(trace, off() * i / POINTS));
        }
        for (int i = 1; i <= FINE; i++) {
            double t = off() * i / FINE;
            if (changed(trace, t) >= share * most) {
                return t;
            }
        }
        return off();
    }

    private static double changed(Trace trace, double at) {
        return Math.abs(trace.at(at) - trace.kelvin(0));
    }
}
