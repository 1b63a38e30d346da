package org.strawblue.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.judge.Described;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.learn.JobTells;
import org.strawblue.core.evidence.learn.OvenCost;
import org.strawblue.core.evidence.learn.OvenLog;
import org.strawblue.core.evidence.learn.ShopKnowledge;
import org.strawblue.core.evidence.learn.Subject;
import org.strawblue.core.evidence.learn.Told;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.HeatLog;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Steel;

/** Learns the shop's ovens, plates, guns, crayons and steels from logs of ovens and of judged heats. */
public final class LearnService {

    private final Sheet.Builder sheet;
    private final List<Subject> touched = new ArrayList<>();
    private ShopKnowledge knowledge;
    private int logs = 0;

    private LearnService(ShopKnowledge knowledge) {
        this.knowledge = knowledge;
        this.sheet = Sheet.titled("What the logs tell");
    }

    /** Begins with what the shop knows. */
    public static LearnService from(ShopKnowledge knowledge) {
        return new LearnService(knowledge);
    }

    /** A temper whose hardness is to be told for an oven. */
    public record Tempered(Steel steel, double seconds) {}

    /**
     * The log of an oven.
     *
     * @param name of the log
     * @param oven what it is called
     * @param set what it was set to [K]
     */
    public void oven(
            String name,
            String oven,
            Trace trace,
            OptionalDouble set,
            TemperatureIndicator by,
            Optional<Tempered> temper) {
        String key = key();
        sheet.add(new Entry.Words("log" + key, "Log", Phrase.of(plain(name))));
        Answer<OvenLog> answer = OvenLog.of(trace, set, by);
        sheet.findings(answer.findings());
        answer.value().ifPresent(log -> {
            figures(key, log);
            temper.ifPresent(t -> cost(key, log, t));
            log.told(name).forEach((influence, told) -> keep(new Subject(influence, oven), told));
        });
    }

    /** A name is no sentence with places for numbers. */
    private static String plain(String name) {
        return name.replace("{}", "{ }");
    }

    private String key() {
        logs++;
        return logs == 1 ? "" : "_" + logs;
    }

    private void figures(String key, OvenLog log) {
        log.set().ifPresent(s -> sheet.add(new Entry.Given("set" + key, "It was set to", Quantity.temperature(s))));
        sheet.add("mean" + key, "It had, in the mean", log.mean());
        log.set()
                .ifPresent(s ->
                        log.settingFor(s).ifPresent(e -> sheet.add("setting" + key, "To have what was set, set", e)));
        log.offset().ifPresent(o -> sheet.add("offset" + key, "Offset: mean less setting", o));
        sheet.add("swing" + key, "Swing to either side", log.swing());
        log.period().ifPresent(p -> sheet.add("period" + key, "Time of one swing", p));
        sheet.add(new Entry.Given("swings" + key, "Whole swings seen", Quantity.number(log.swings())));
    }

    private void cost(String key, OvenLog log, Tempered temper) {
        Answer<OvenCost> answer = OvenCost.of(log, temper.steel(), temper.seconds());
        sheet.add(new Entry.Given("time" + key, "Of a temper of", Quantity.time(temper.seconds())));
        answer.value().ifPresent(cost -> {
            cost.asSet().ifPresent(e -> sheet.add("as_set" + key, "hardness, were it as set", e));
            sheet.add("as_is" + key, "hardness, as it is", cost.asIs());
            cost.byOffset().ifPresent(e -> sheet.add("by_offset" + key, "the offset changes it by", e));
            cost.bySwing().ifPresent(e -> sheet.add("by_swing" + key, "the swing, at most, by", e));
        });
        sheet.findings(answer.findings());
    }

    private void keep(Subject subject, Told told) {
        Answer<ShopKnowledge> next = knowledge.with(subject, told);
        sheet.findings(next.findings());
        knowledge = next.value().orElse(knowledge);
        if (!touched.contains(subject)) {
            touched.add(subject);
        }
    }

    /** A log of what was seen of one heat: what it tells of the things it was done with. */
    public void heat(String file, HeatLog log, String oven) {
        String key = key();
        String name = name(file, log);
        sheet.add(new Entry.Words("log" + key, "Log", Phrase.of(plain(name))));
        if (log.heat().isEmpty()) {
            sheet.findings(List.of(new Finding.Note(
                    Phrase.of(plain(name) + " does not say what was done: nothing is learned from it."),
                    Phrase.of("Only a heat whose oven, plate and setting are known can tell of them."),
                    Phrase.of("Add  heat:  with on, temperature and time, and the part with its size."))));
            return;
        }
        Judgement judged = JudgeService.judged(log, Priors.usual());
        if (judged.conflicting()) {
            sheet.findings(List.of(new Finding.Caution(
                    Phrase.of(plain(name) + " contradicts itself ("
                            + Described.of(judged.odd().get(0).observation()) + "): nothing is learned from it."),
                    Phrase.of("Which of its looks is wrong is not known, and a wrong one would spoil later jobs."),
                    Phrase.of("Take the look out that you no longer believe, and learn from it again."))));
            return;
        }
        Map<Influence, Told> told = JobTells.of(judged.ensemble(), judged.weights(), name);
        told.forEach((influence, t) -> thing(influence, log, oven).ifPresent(d -> {
            Subject subject = new Subject(influence, d);
            sheet.add(
                    "told" + key + "_" + influence.key(),
                    "tells of " + property(subject),
                    ShopKnowledge.told(influence, t));
            keep(subject, t);
        }));
        if (told.isEmpty()) {
            sheet.findings(List.of(new Finding.Note(
                    Phrase.of(plain(name) + " tells nothing of the shop's things that was not believed before."),
                    Phrase.of("What was seen is explained by what is usual."),
                    Phrase.of("A crayon on the part, or a reading of the oven, tells more."))));
        }
    }

    /** By what the log of a heat is known again, so that it does not count twice. */
    public static String name(String file, HeatLog log) {
        return file + ": " + log.title();
    }

    private static Optional<String> thing(Influence influence, HeatLog log, String oven) {
        String kind = ShopKnowledge.thing(influence).orElse("");
        if (kind.equals("steel")) {
            return log.part().flatMap(WorkPiece::steel).map(g -> g.name());
        }
        return Optional.of(kind.equals("oven") ? oven : "the " + kind);
    }

    /** The things a judged heat of this log was done with, by the names under which they are learned. */
    public static List<String> things(HeatLog log, String oven) {
        List<String> things = new ArrayList<>();
        for (Influence influence : Influence.values()) {
            if (ShopKnowledge.learnable(influence)) {
                thing(influence, log, oven).filter(t -> !things.contains(t)).ifPresent(things::add);
            }
        }
        return things;
    }

    /** "the oven's offset". */
    private static String property(Subject subject) {
        String what = subject.influence().key().replace('-', ' ');
        String kind = ShopKnowledge.thing(subject.influence()).orElse("");
        String bare = what.startsWith(kind + " ") ? what.substring(kind.length() + 1) : what;
        return subject.device() + ": " + bare;
    }

    /** What was told, then what is believed now of everything that was learned of. */
    public Lesson lesson() {
        for (Subject subject : touched) {
            knowledge.next(subject).ifPresent(next -> {
                int logs = knowledge.of(subject).map(l -> l.jobs()).orElse(0);
                String key = subject.device().replace(' ', '_') + "_"
                        + subject.influence().key();
                sheet.add("usual_" + key, "Usual of " + property(subject), ShopKnowledge.usual(subject.influence()));
                sheet.add("next_" + key, "Next time, by " + (logs == 1 ? "1 log" : logs + " logs"), next);
            });
        }
        return new Lesson(sheet.build(), knowledge);
    }
}
