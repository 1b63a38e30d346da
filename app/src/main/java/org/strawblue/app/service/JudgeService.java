package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.advice.Advice;
import org.strawblue.core.evidence.advice.Adviser;
import org.strawblue.core.evidence.judge.Candidates;
import org.strawblue.core.evidence.judge.Described;
import org.strawblue.core.evidence.judge.Judge;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.judge.NextLook;
import org.strawblue.core.evidence.judge.Situation;
import org.strawblue.core.evidence.judge.Worth;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.evidence.sample.Settings;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.history.Place;
import org.strawblue.core.job.HeatLog;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.oxide.FilmColour;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;

/** What really happened, going by all that was seen, and what to do now. */
public final class JudgeService {

    private JudgeService() {}

    public static Sheet judge(HeatLog log) {
        return judge(log, Priors.usual());
    }

    /** @param priors what is believed of the shop's things before anything was seen */
    public static Sheet judge(HeatLog log, Priors priors) {
        Optional<Steel> steel = log.part().flatMap(JudgeService::steel);
        Judgement judged = judged(log, priors);
        Optional<Band> wanted = log.part().flatMap(WorkPiece::hardness);
        Optional<Advice> advice =
                steel.flatMap(s -> wanted.flatMap(w -> Adviser.of(judged, s, w, log.costs(), Candidates.of(judged))));
        Sheet.Builder sheet = Sheet.titled(log.title());
        advice.ifPresent(a -> lead(sheet, a));
        figures(sheet, judged);
        advice.ifPresent(a -> chances(sheet, a, wanted.orElseThrow()));
        for (int i = 0; i < judged.worth().size(); i++) {
            sheet.add(worth("worth_" + (i + 1), judged.worth().get(i)));
        }
        next(sheet, judged, advice);
        List<Finding> findings = new ArrayList<>(judged.findings());
        advice.ifPresent(a -> a.findings().stream().map(JudgeService::softened).forEach(findings::add));
        if (log.heat().isEmpty()) {
            findings.add(new Finding.Note(
                    Phrase.of("The log does not say what was done: the looks alone are weighed."),
                    Phrase.of("A heat that is known narrows the answer before anything is seen."),
                    Phrase.of("Add  heat:  with on, temperature and time, and the part with its size.")));
        }
        return sheet.findings(findings).build();
    }

    /** What is advised, and below it what can hurt the person in that. */
    private static void lead(Sheet.Builder sheet, Advice advice) {
        sheet.add(new Entry.Words("advice", "Do this", deed(advice)));
        new Cautions(sheet)
                .beside(
                        "advice",
                        switch (advice.deed()) {
                            case ACCEPT -> List.of();
                            case TEMPER_AGAIN -> List.of("kitchen", "sharp-hot");
                            case HARDEN_AGAIN -> List.of("sharp-hot", "brittle");
                            case LOOK_FIRST -> List.of("file-test", "brittle");
                        });
    }

    static Judgement judged(HeatLog log, Priors priors) {
        Optional<Steel> steel = log.part().flatMap(JudgeService::steel);
        return Judge.of(situation(log, steel, priors), log.observations());
    }

    /** That no verdict can be given is an answer. */
    private static Finding softened(Finding finding) {
        return finding instanceof Finding.Stop stop
                ? new Finding.Caution(stop.what(), stop.why(), stop.remedy())
                : finding;
    }

    private static Optional<Steel> steel(WorkPiece part) {
        return part.steel().map(grade -> {
            Steel steel = Steel.ofGrade(grade.name()).with(grade.composition());
            return part.asQuenched().isPresent()
                    ? steel.asQuenched(part.asQuenched().getAsDouble())
                    : steel;
        });
    }

    private static Situation situation(HeatLog log, Optional<Steel> steel, Priors priors) {
        if (log.heat().isEmpty()) {
            OptionalDouble lasted = log.observations().stream()
                    .map(o -> o.seen().seconds())
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .filter(s -> s > 0)
                    .max();
            return Situation.unknownHeat(lasted, steel);
        }
        Course course = new Course(log.part().flatMap(WorkPiece::shape).orElseThrow(), Settings.room(), log.heat());
        return new Situation(course, steel, priors);
    }

    private static Phrase deed(Advice advice) {
        return switch (advice.deed()) {
            case ACCEPT -> accept(advice);
            case TEMPER_AGAIN -> {
                var temper = advice.options().get(0).temper().orElseThrow();
                yield Phrase.of(
                        "Temper again at {} for {}.",
                        Quantity.temperature(temper.kelvin()),
                        Quantity.time(temper.seconds()));
            }
            case HARDEN_AGAIN -> Phrase.of("Harden it again: it is too soft, and no temper makes it harder.");
            case LOOK_FIRST ->
                advice.look()
                        .map(l -> Phrase.of("Look first: " + Candidates.words(l.observation()) + "."))
                        .orElse(Phrase.of("Look again before you decide."));
        };
    }

    /** Where it is more likely wrong than right, the reason must stand beside the deed. */
    private static Phrase accept(Advice advice) {
        if (advice.within() >= Math.max(advice.soft(), advice.hard())) {
            return Phrase.of("Take it as it is.");
        }
        return advice.hard() > advice.soft()
                ? Phrase.of(
                        "Take it as it is, though it is too hard with a chance of {}: what a second temper may cost by"
                                + " going too soft weighs more. If a hard part is worse for you, say so under costs.",
                        Quantity.fraction(advice.hard()))
                : Phrase.of(
                        "Take it as it is, though it is too soft with a chance of {}: hardening again costs more. If a"
                                + " soft part is worse for you, say so under costs.",
                        Quantity.fraction(advice.soft()));
    }

    private static void figures(Sheet.Builder sheet, Judgement judged) {
        sheet.add("peak", "Hottest it got", judged.peak());
        sheet.add("before", "Before anything was seen", judged.before());
        sheet.add("hold", "Counts as, at that heat", judged.hold());
        judged.hardness().ifPresent(h -> sheet.add("hardness", "Hardness now", h));
        FilmColour film = FilmColours.standard().colour(judged.film().value(), Light.DAYLIGHT);
        sheet.add(new Entry.Colour("colour", "Colour in daylight", film.name().word(), film.hex()));
    }

    private static void chances(Sheet.Builder sheet, Advice advice, Band wanted) {
        sheet.add(new Entry.Limits("wanted", "Wanted", wanted));
        sheet.add(new Entry.Given("within", "Chance it is as wanted", Quantity.fraction(advice.within())));
        sheet.add(new Entry.Given("soft", "Chance it is too soft", Quantity.fraction(advice.soft())));
        sheet.add(new Entry.Given("hard", "Chance it is too hard", Quantity.fraction(advice.hard())));
        advice.options().forEach(o -> option(sheet, o));
    }

    private static void option(Sheet.Builder sheet, Advice.Option option) {
        String key = option.deed().name().toLowerCase(Locale.ROOT);
        String label = switch (option.deed()) {
            case ACCEPT -> "Expected cost: taking it";
            case TEMPER_AGAIN -> "Expected cost: tempering again";
            case HARDEN_AGAIN -> "Expected cost: hardening again";
            case LOOK_FIRST -> "Expected cost: looking";
        };
        sheet.add(new Entry.Given("loss_" + key, label, Quantity.number(option.loss())));
        if (option.temper().isPresent()) {
            sheet.add(new Entry.Given("within_" + key, "then as wanted", Quantity.fraction(option.within())));
        }
    }

    private static Entry worth(String key, Worth w) {
        String label = Described.of(w.observation());
        if (!w.counted()) {
            return new Entry.Words(key, label, Phrase.of("not counted again"));
        }
        return new Entry.Words(
                key,
                label,
                Described.with(
                        w.observation(),
                        "worth {} bit; without it {} to {}",
                        Quantity.number(Math.round(w.bits() * 10) / 10.0),
                        Quantity.temperature(w.without().low()),
                        Quantity.temperature(w.without().high())));
    }

    private static void next(Sheet.Builder sheet, Judgement judged, Optional<Advice> advice) {
        double[] answer = judged.ensemble()
                .values(i -> judged.hardness().isPresent()
                        ? judged.ensemble()
                                .hardness(Place.TOP, judged.ensemble().duration(), i)
                        : judged.ensemble().peak(Place.TOP, i));
        List<NextLook> looks = NextLook.ranked(judged, answer, Candidates.of(judged));
        if (!looks.isEmpty() && looks.get(0).gain() > 0) {
            NextLook best = looks.get(0);
            Quantity gain = judged.hardness().isPresent()
                    ? Quantity.hardness(best.gain())
                    : Quantity.temperatureDifference(best.gain());
            sheet.add(new Entry.Words(
                    "next",
                    "Cheapest next look",
                    Phrase.of(
                            Candidates.words(best.observation())
                                    + "; it may be expected to narrow the answer by {} to either side",
                            gain)));
        }
    }
}
