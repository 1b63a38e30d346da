package org.strawblue.app.service;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.heat.conduction.Conduction;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.CourseRun;
import org.strawblue.core.heat.course.Reduced;
import org.strawblue.core.history.Place;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.Picture;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.watch.Goal;
import org.strawblue.core.watch.PullWindow;
import org.strawblue.core.watch.Reading;
import org.strawblue.core.watch.TemperWatch;

/** What a part really has on its way through a heat, and when to take it off. */
public final class HeatService {

    /** Places that differ by less are told as one [K]; a temperature is not told finer. */
    private static final double EVEN = 1;

    /** The picture goes so many times as far as the best moment at most, and at least ... */
    private static final double SHOWN = 2;

    private static final double LEAST = 1.25;
    private static final double MARGIN = 1.1;

    /** An imbalance is not told finer [1]. */
    private static final double TOLD = 1e-4;

    private final HeatRequest request;
    private final Progress progress;
    private final Sheet.Builder sheet = Sheet.titled("Heat in the part");

    private HeatService(HeatRequest request, Progress progress) {
        this.request = request;
        this.progress = progress;
    }

    public static HeatAnswer heat(HeatRequest request, Progress progress) {
        return new HeatService(request, progress).answer();
    }

    private HeatAnswer answer() {
        sheet.findings(request.findings());
        progress.at("the section");
        Course asked = request.takenOffAfter(request.main().seconds());
        Answer<CourseRun> first = Conduction.run(asked);
        if (first.value().isEmpty()) {
            return new HeatAnswer(sheet.findings(first.findings()).build(), Optional.empty());
        }
        boolean fast = fast(asked);
        List<Place> counting = new PlaceNames(request, first.value().get()).mustBeRight();
        PullSearch search = new PullSearch(request, counting, fast);
        Optional<Goal> goal = goal(search);
        progress.at("when to take it off");
        Optional<PullWindow> window = goal.flatMap(g -> window(search, g));
        double seconds = window.map(PullWindow::best).orElse(request.main().seconds());
        progress.at("the section");
        Answer<CourseRun> run = window.isPresent() ? Conduction.run(request.takenOffAfter(seconds)) : first;
        progress.at("what is not known of the heat");
        HeatHistory history = history(request, run.value().orElseThrow(), seconds, fast);
        window.ifPresent(w -> advise(w, goal.orElseThrow(), history, counting));
        tell(history, window);
        HeatHistory shown = window.map(w -> leftOn(w, fast)).orElse(history);
        Picture.HeatClock clock = draw(shown, window, counting);
        balance(run.value().orElseThrow());
        sheet.findings(run.findings());
        return new HeatAnswer(sheet.build(), Optional.of(() -> shown.story(clock)));
    }

    private boolean fast(Course course) {
        List<Finding> findings = Reduced.findings(course);
        // the places of a stepped pin lie along it, which the fast model does not tell apart
        boolean fast = !(course.shape() instanceof PartShape.SteppedPin)
                && findings.stream().noneMatch(Finding.Stop.class::isInstance);
        if (fast) {
            sheet.findings(findings);
        }
        return fast;
    }

    private Optional<Goal> goal(PullSearch search) {
        if (request.target().isEmpty()) {
            return Optional.empty();
        }
        Answer<Goal> goal = search.goal();
        sheet.findings(goal.findings());
        return goal.value();
    }

    private Optional<PullWindow> window(PullSearch search, Goal goal) {
        Answer<PullWindow> window = search.window(goal);
        sheet.findings(window.findings());
        return window.value();
    }

    private HeatHistory history(HeatRequest asked, CourseRun run, double seconds, boolean fast) {
        Doubts doubts = fast ? new DrawnDoubts(asked, seconds) : new PairedDoubts(asked, seconds);
        return new HeatHistory(asked, run, watch(run), doubts, seconds);
    }

    private void advise(PullWindow window, Goal goal, HeatHistory history, List<Place> counting) {
        Estimate moment = history.doubts()
                .moment(goal, counting.get(0), window.best(), request.main().seconds());
        PullAdvice advice = advice(history);
        advice.when(window, moment);
        advice.byThen();
    }

    private PullAdvice advice(HeatHistory history) {
        return new PullAdvice(request, sheet, history, history.names());
    }

    private void tell(HeatHistory history, Optional<PullWindow> window) {
        if (window.isEmpty()) {
            ends(history, history.names(), history.duration(), history.run());
        }
        if (history.watch().isPresent()) {
            readings(history, history.names(), history.duration());
        }
        advice(history).carryOver();
    }

    /** What it would have were it not taken off, for the picture: somewhat longer than the window is open. */
    private HeatHistory leftOn(PullWindow window, boolean fast) {
        progress.at("what comes if it is left");
        double closes = Math.min(window.closes().orElse(request.main().seconds()), SHOWN * window.best());
        double seconds = Math.min(request.main().seconds(), Math.max(closes, window.best() * LEAST) * MARGIN);
        HeatRequest left = request.notTakenOff();
        return history(left, Conduction.run(left.leftOn(seconds)).value().orElseThrow(), seconds, fast);
    }

    private Picture.HeatClock draw(HeatHistory history, Optional<PullWindow> window, List<Place> counting) {
        Picture.HeatClock clock = history.clock(wanted(window, counting), pull(window), caption(history));
        sheet.add(new Entry.Plot("history", "Temperature against time", clock));
        return clock;
    }

    private Optional<TemperWatch> watch(CourseRun run) {
        if (request.steel().isEmpty()) {
            return Optional.empty();
        }
        Answer<TemperWatch> watch = TemperWatch.of(
                run.history().from(request.readFrom()), request.steel().get(), request.light(), request.chromium());
        sheet.findings(watch.findings());
        return watch.value();
    }

    /** What matters first: what it has at the end, and whether it has come through. */
    private void ends(HeatHistory history, PlaceNames names, double duration, CourseRun run) {
        Place slowest = names.told().stream()
                .min(Comparator.comparingDouble(p -> history.trace(p).at(duration)))
                .orElseThrow();
        sheet.add("end", "At the end", history.kelvin(slowest, duration));
        double peak = names.told().stream()
                .mapToDouble(p -> history.trace(p).peak())
                .max()
                .orElse(0);
        if (peak > history.trace(slowest).at(duration) + EVEN) {
            sheet.add(new Entry.Given("peak", "Hottest any of it got", Quantity.temperature(peak)));
        }
        if (!request.logged() && !request.partly()) {
            sheet.add(new Entry.Words("through", "Come through", through(run)));
        }
    }

    private static Phrase through(CourseRun run) {
        return run.arrival().isPresent()
                ? Phrase.of(
                        "after {} its slowest place was within {} of what surrounds it",
                        Quantity.time(run.arrival().getAsDouble()),
                        Quantity.temperatureDifference(Conduction.within()))
                : Phrase.of(
                        "not yet: it is more than {} from what surrounds it",
                        Quantity.temperatureDifference(Conduction.within()));
    }

    private void readings(HeatHistory history, PlaceNames names, double duration) {
        List<Place> read = names.read();
        boolean one = read.size() > 1 && even(history, read, duration);
        List<Place> told = one ? read.subList(0, 1) : read;
        for (Place place : told) {
            String where = one ? "all of it" : names.word(place);
            history.reading(place, duration).ifPresent(r -> reading(history, place, where, r, duration));
        }
        history.reading(read.get(0), duration).ifPresent(new PullAdvice(request, sheet, history, names)::slowly);
    }

    /** Whether the hottest each place got differs by no more than is told. */
    private static boolean even(HeatHistory history, List<Place> places, double duration) {
        double[] peaks = places.stream()
                .mapToDouble(p -> history.trace(p).peak())
                .sorted()
                .toArray();
        return peaks[peaks.length - 1] - peaks[0] < EVEN;
    }

    private void reading(HeatHistory history, Place place, String where, Reading last, double duration) {
        sheet.findings(
                last.hardness().findings().stream().map(HeatService::softened).toList());
        String key = PlaceNames.key(place);
        last.hardness()
                .value()
                .ifPresent(
                        h -> sheet.add(key + "_hardness", "Hardness, " + where, history.hardness(place, duration, h)));
        last.colour().value().ifPresent(c -> colour(key, where, c));
    }

    /** That one reading cannot be given does not refuse the heat. */
    private static Finding softened(Finding finding) {
        return finding instanceof Finding.Stop stop
                ? new Finding.Caution(stop.what(), stop.why(), stop.remedy())
                : finding;
    }

    private void colour(String key, String where, ColourReading reading) {
        sheet.add(new Entry.Colour(
                key + "_colour",
                "Colour, " + where,
                reading.colour().name().word(),
                reading.colour().hex()));
    }

    /** The temperatures the part has while the window is open. */
    private static Optional<Band> wanted(Optional<PullWindow> window, List<Place> counting) {
        if (window.isEmpty()) {
            return Optional.empty();
        }
        Trace trace = window.get().atBest().at(counting.get(0)).orElseThrow().trace();
        double low = trace.at(window.get().opens());
        double high = Math.max(low, trace.peak());
        return Optional.of(Band.between(Dimension.TEMPERATURE, low, high));
    }

    private Optional<Band> pull(Optional<PullWindow> window) {
        double from = request.mainFrom() - request.readFrom();
        return window.map(w -> Band.between(
                Dimension.TIME,
                from + w.opens(),
                from + Math.max(w.opens(), w.closes().orElse(request.main().seconds()))));
    }

    private Phrase caption(HeatHistory history) {
        String since = request.hardened() ? "Temperature since it left the bath" : "Temperature";
        if (request.target().isPresent()) {
            return Phrase.of(since + (request.hardened() ? ", were it not stopped" : ", were it not taken off"));
        }
        return request.after().isEmpty()
                ? Phrase.of(since + " over {}", Quantity.time(history.off()))
                : Phrase.of(since + "; taken off after {}", Quantity.time(history.off()));
    }

    private void balance(CourseRun run) {
        if (!request.logged()) {
            sheet.add(new Entry.Given(
                    "energy",
                    "Heat balance closes to",
                    Quantity.fraction(Math.max(TOLD, run.energy().error()))));
        }
    }
}
