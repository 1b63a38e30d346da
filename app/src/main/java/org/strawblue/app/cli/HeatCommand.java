package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Entry;
import org.strawblue.app.service.HeatAnswer;
import org.strawblue.app.service.HeatRequest;
import org.strawblue.app.service.HeatService;
import org.strawblue.app.service.HeatTarget;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.sample.Settings;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.watch.Looked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A part on a heat source: what it really has, minute by minute. */
@Command(
        name = "heat",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What a part really has on a hot plate, in an oven, a kiln, a flame, sand or a bath: temperature at its places"
                    + " with time, when it has come through; with --grade, hardness and film colour; with --target, when to"
                    + " take it off, how long there is for it, and what being late costs."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused: outside what is known, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue heat --diameter 12mm --length 60mm --on \"hot plate\" --at 290C \\",
            "      --for 12min --grade W1",
            "      a bar on a bare plate; add --cover for a lid or blanket over it",
            "  strawblue heat --diameter 8mm --length 46mm --on \"hot plate\" --at 250C \\",
            "      --cover --grade O1 --target \"59-61 HRC\"",
            "      when to take it off, and what ten seconds late cost",
            "  strawblue heat --side 10mm --length 60mm --start 800C --dip 25mm \\",
            "      --dip-for 8s --on air --grade W1 --target straw",
            "      the end dipped hard, colours running back to it, stopped in water",
            "  strawblue heat --diameter 1/2in --on \"kitchen oven\" --at 450F --for 1h \\",
            "      --surface oxidised",
            "  strawblue heat --thickness 3mm --width 20mm --on oil --start 800C --for 20s \\",
            "      --out heat-of-the-flat",
            "      leaves the history as a table, and the section as drawings (SVG, PNG)",
            "  strawblue heat --log examples/logs/oven-200.csv --log-of oven \\",
            "      --diameter 8mm --length 46mm --grade O1",
            "      what a part had in an oven that was logged; --log-of part where the",
            "      part itself was"
        })
final class HeatCommand extends Answering {

    /** Of a part whose shape does not matter [m]. */
    private static final double ANY = 0.01;

    @Mixin
    private ShapeOptions shape;

    @Mixin
    private SteelOptions steel;

    @Mixin
    private SourceOptions source;

    @Mixin
    private AfterOptions after;

    @Mixin
    private TargetOption target;

    @Mixin
    private LogOptions log;

    @Option(names = "--for", paramLabel = "t", description = "How long; with --target, the longest to look at.")
    private @Nullable String time;

    @Option(names = "--start", paramLabel = "T", description = "What the part has at first; the room's if not told.")
    private @Nullable String start;

    @Option(names = "--light", paramLabel = "WORD", description = "The light the colour is judged in.")
    private @Nullable String light;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Leaves the history as a table (CSV) and its pictures (SVG, PNG) there.")
    private @Nullable Path folder;

    HeatCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<Answer<Trace>> measured = log.trace(question);
        Optional<PartShape> part = part(question);
        Optional<HeatTarget> wanted = target.target(question);
        double first = question.si("--start", start, Dimension.TEMPERATURE).orElse(Settings.room());
        double emissivity = source.emissivity(question);
        Optional<Setting> setting = setting(question, measured, part);
        double seconds = seconds(question, setting, measured);
        question.positive("--for", time, seconds);
        List<Spell> before = after.before(question, part, emissivity);
        List<Spell> then = after.after(question, emissivity, usualEnd(question, emissivity, setting));
        Optional<Light> seenIn = light(question);
        Optional<Steel> known = known(question);
        double chromium = steel.chromium(question);
        if (measured.isPresent() && measured.get().value().isEmpty()) {
            return question.answer(() ->
                    new Sheet("Heat in the part", List.of(), measured.get().findings()));
        }
        return question.answer(() -> answer(
                question,
                new HeatRequest(
                        part.orElseThrow(),
                        log.given() && log.of() == LogOptions.What.PART ? startOf(measured, first) : first,
                        before,
                        new Spell(setting.orElseThrow(), seconds),
                        then,
                        known,
                        seenIn.orElse(Light.DAYLIGHT),
                        chromium,
                        wanted,
                        measured.map(Answer::findings).orElse(List.of()))));
    }

    private static double startOf(Optional<Answer<Trace>> measured, double otherwise) {
        return measured.flatMap(Answer::value).map(t -> t.kelvin(0)).orElse(otherwise);
    }

    /** Where the part itself was logged its shape does not matter. */
    private Optional<PartShape> part(Question question) {
        boolean free = log.given() && log.of() == LogOptions.What.PART && !shape.given();
        return free ? Optional.of(new PartShape.RoundBar(ANY, ANY)) : shape.shape(question);
    }

    private Optional<Setting> setting(Question question, Optional<Answer<Trace>> measured, Optional<PartShape> part) {
        if (!log.given()) {
            return source.setting(question, part);
        }
        Optional<Trace> trace = measured.flatMap(Answer::value);
        return trace.flatMap(t -> log.of() == LogOptions.What.PART
                ? Optional.of(new Setting.AsLogged(t))
                : source.logged(question, t, log.of() == LogOptions.What.PLATE));
    }

    private Sheet answer(Question question, HeatRequest request) {
        HeatAnswer answer;
        try (Waiting waiting = new Waiting(err(), screen().watched())) {
            answer = HeatService.heat(request, waiting);
        }
        Sheet sheet = answer.sheet();
        if (folder == null || answer.story().isEmpty()) {
            return sheet;
        }
        List<String> files = HeatFiles.leave(answer.story().get().get(), folder, question.units());
        List<Entry> entries = new ArrayList<>(sheet.entries());
        entries.add(new Entry.Words("files", "Left in " + folder, Phrase.of(String.join(", ", files))));
        return new Sheet(sheet.title(), entries, sheet.findings());
    }

    /** With a target, or a log, the time may be left open. */
    private double seconds(Question question, Optional<Setting> setting, Optional<Answer<Trace>> measured) {
        if (time == null && log.given()) {
            return measured.flatMap(Answer::value).map(Trace::duration).orElse(1.0);
        }
        if (time == null && target.told()) {
            return setting.map(Looked::longest).orElse(1.0);
        }
        double told = question.needed("--for", time, Dimension.TIME);
        double known = measured.flatMap(Answer::value).map(Trace::duration).orElse(told);
        if (told > known) {
            question.note(new Finding.Caution(
                    Phrase.of("The log ends after {}; {} were asked for.", Quantity.time(known), Quantity.time(told)),
                    Phrase.of("What was not measured is not made up."),
                    Phrase.of("It is followed to its end.")));
        }
        return Math.min(told, known);
    }

    /** What is taken off for a target cools in air; colours that run are stopped in water. */
    private List<Spell> usualEnd(Question question, double emissivity, Optional<Setting> setting) {
        if (!target.told() || log.given() && log.of() == LogOptions.What.PART) {
            return List.of();
        }
        return setting.filter(Setting.InAir.class::isInstance).isPresent()
                ? AfterOptions.water(question, emissivity)
                : List.of(new Spell(Settings.air(emissivity), Looked.cooling()));
    }

    private Optional<Light> light(Question question) {
        return light == null
                ? Optional.empty()
                : question.word("--light", light, Light.find(light), () -> "daylight, lamp, warm LED, neutral LED");
    }

    private Optional<Steel> known(Question question) {
        Optional<Grade> grade = steel.grade(question);
        return grade.map(g -> Steel.ofGrade(g.name()).with(g.composition()))
                .or(() -> steel.composition(question).map(Steel::of));
    }
}
