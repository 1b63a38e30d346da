package org.strawblue.app.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.evidence.sample.Settings;
import org.strawblue.core.heat.HeatThrough;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import picocli.CommandLine.Option;

/** What heats a part, and how the part meets it. */
final class SourceOptions {

    @Option(
            names = "--on",
            paramLabel = "WHAT",
            description = "Hot plate, kitchen oven, kiln, torch, sand tray, a quench, air.")
    private @Nullable String on;

    @Option(names = "--at", paramLabel = "T", description = "What it is at: the plate under the part, the oven's mean.")
    private @Nullable String at;

    @Option(names = "--cover", description = "Part and plate are covered.")
    private boolean cover;

    @Option(
            names = "--gap",
            paramLabel = "SIZE",
            description = "Air under the part where it is nearest; 20 um if not told.")
    private @Nullable String gap;

    @Option(names = "--surface", paramLabel = "WORD", description = "bright (if not told) or oxidised.")
    private @Nullable String surface;

    @Option(
            names = "--emissivity",
            paramLabel = "0..1",
            description = "Of the part's surface, where it is known better than bright or oxidised.")
    private @Nullable String emissivity;

    @Option(
            names = "--flame-length",
            paramLabel = "SIZE",
            description = "The flame, bath or oven reaches only so far from the working end; the rest is in air.")
    private @Nullable String reach;

    boolean told() {
        return on != null;
    }

    /** Emissivity of the part [1]. */
    double emissivity(Question question) {
        OptionalDouble own = question.si("--emissivity", emissivity, Dimension.NUMBER);
        double usual = Settings.emissivity(finish(question));
        if (own.isPresent() && !(own.getAsDouble() > 0 && own.getAsDouble() < 1)) {
            question.problem(
                    "--emissivity", String.valueOf(emissivity), "between 0 and 1", "Bright steel has 0.15, black 0.8.");
        }
        return own.orElse(usual);
    }

    private HeatThrough.Surface finish(Question question) {
        String word = surface == null ? "bright" : surface.strip().toLowerCase(Locale.ROOT);
        boolean dark = List.of("oxidised", "oxidized", "black", "scaled").contains(word);
        if (!dark && !word.equals("bright") && surface != null) {
            question.problem("--surface", surface, "bright or oxidised", "Choose one of these.");
        }
        return dark ? HeatThrough.Surface.OXIDISED : HeatThrough.Surface.BRIGHT;
    }

    /** Absent, with a problem noted, where it is not told or not known. */
    Optional<Setting> setting(Question question, Optional<PartShape> shape) {
        OptionalDouble kelvin = question.si("--at", at, Dimension.TEMPERATURE);
        OptionalDouble nearest = question.si("--gap", gap, Dimension.LENGTH);
        OptionalDouble stretch = question.si("--flame-length", reach, Dimension.LENGTH);
        question.positive("--gap", gap, nearest.orElse(1));
        question.positive("--flame-length", reach, stretch.orElse(1));
        double shine = emissivity(question);
        if (on == null) {
            question.missing("--on", null, "a heat source, a quench, or air");
        }
        if (!question.problems().isEmpty()) {
            return Optional.empty();
        }
        Settings.Stated stated = new Settings.Stated(kelvin, nearest, shine, cover);
        Optional<Setting> all = question.named("--on", on, word -> Settings.named(word, stated));
        return stretch.isEmpty()
                ? all
                : all.map(s -> AfterOptions.stretch(question, "--flame-length", reach, s, stretch, shape, shine));
    }

    /** The same with a measured temperature of the oven, or of the plate. */
    Optional<Setting> logged(Question question, Trace trace, boolean plate) {
        double shine = emissivity(question);
        OptionalDouble nearest = question.si("--gap", gap, Dimension.LENGTH);
        question.positive("--gap", gap, nearest.orElse(1));
        if (!question.problems().isEmpty()) {
            return Optional.empty();
        }
        String word = on != null ? on : plate ? "hot plate" : "kitchen oven";
        Settings.Stated stated = new Settings.Stated(OptionalDouble.of(trace.kelvin(0)), nearest, shine, cover);
        return question.named("--on", word, w -> Settings.named(w, stated).then(s -> logged(s, trace, plate)));
    }

    private static Answer<Setting> logged(Setting setting, Trace trace, boolean plate) {
        if (plate && setting instanceof Setting.OnPlate on) {
            return Answer.of(new Setting.OnPlate(
                    trace, on.gap(), on.emissivity(), on.roomShare(), on.filmFactor(), on.room(), on.covered()));
        }
        if (!plate && setting instanceof Setting.InOven oven) {
            return Answer.of(new Setting.InLoggedOven(trace, oven.film(), oven.emissivity()));
        }
        return Answer.refused(new Finding.Stop(
                Phrase.of("A log of " + (plate ? "a plate" : "an oven") + " goes with another heat source."),
                Phrase.of("What was logged must be what heats the part."),
                Phrase.of("Leave --on out, or name " + (plate ? "a hot plate." : "an oven or a kiln."))));
    }
}
