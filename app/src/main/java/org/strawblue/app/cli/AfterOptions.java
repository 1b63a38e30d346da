package org.strawblue.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.core.evidence.sample.Settings;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import picocli.CommandLine.Option;

/** What is done with a part besides its heat: dipped before the colours run, lifted into air, stopped in water. */
final class AfterOptions {

    @Option(
            names = "--dip",
            paramLabel = "SIZE",
            description = "First dipped so far from the working end, so that heat left behind runs back to it.")
    private @Nullable String dip;

    @Option(names = "--dip-for", paramLabel = "t", description = "How long it is dipped; 5 s if not told.")
    private @Nullable String dipTime;

    @Option(names = "--dip-in", paramLabel = "BATH", defaultValue = "water", description = "What it is dipped into.")
    private String dipIn = "water";

    @Option(names = "--then-air", paramLabel = "t", description = "Lifted into still air for so long afterwards.")
    private @Nullable String air;

    @Option(names = "--stop", paramLabel = "BATH", description = "Stopped in a bath afterwards: water, oil, brine.")
    private @Nullable String stop;

    private static final double USUAL_DIP = 5;
    private static final double STOPPED = 20;

    boolean dipped() {
        return dip != null;
    }

    List<Spell> before(Question question, Optional<PartShape> shape, double emissivity) {
        OptionalDouble length = question.si("--dip", dip, Dimension.LENGTH);
        double time = question.si("--dip-for", dipTime, Dimension.TIME).orElse(USUAL_DIP);
        question.positive("--dip", dip, length.orElse(1));
        question.positive("--dip-for", dipTime, time);
        if (dip == null || !question.problems().isEmpty()) {
            return List.of();
        }
        return bath(question, "--dip-in", dipIn, emissivity)
                .map(b -> stretch(question, "--dip", dip, b, length, shape, emissivity))
                .map(s -> List.of(new Spell(s, time)))
                .orElse(List.of());
    }

    /** @param otherwise what follows where nothing is told */
    List<Spell> after(Question question, double emissivity, List<Spell> otherwise) {
        List<Spell> spells = new ArrayList<>();
        double time = question.si("--then-air", air, Dimension.TIME).orElse(0);
        if (time > 0) {
            spells.add(new Spell(Settings.air(emissivity), time));
        }
        if (stop != null) {
            bath(question, "--stop", stop, emissivity).ifPresent(b -> spells.add(new Spell(b, STOPPED)));
        }
        return air == null && stop == null ? otherwise : spells;
    }

    /** Stopped in water. */
    static List<Spell> water(Question question, double emissivity) {
        return bath(question, "--stop", "water", emissivity)
                .map(b -> List.of(new Spell(b, STOPPED)))
                .orElse(List.of());
    }

    private static Optional<Setting> bath(Question question, String option, String word, double emissivity) {
        Settings.Stated plain = new Settings.Stated(OptionalDouble.empty(), OptionalDouble.empty(), emissivity, false);
        Optional<Setting> found = question.named(option, word, w -> Settings.named(w, plain));
        return question.word(
                option,
                word,
                found.filter(s -> s instanceof Setting.InBath || s instanceof Setting.InAir),
                () -> "water, brine, oil, air");
    }

    /** A setting about one stretch of a part from its working end, still air about the rest. */
    static Setting stretch(
            Question question,
            String option,
            @Nullable String text,
            Setting there,
            OptionalDouble length,
            Optional<PartShape> shape,
            double emissivity) {
        double to = length.orElse(1);
        double whole = shape.map(PartShape::length).orElse(Double.POSITIVE_INFINITY);
        if (to >= whole) {
            question.problem(
                    option, String.valueOf(text), "less than the part's length", "Leave it out for all of it.");
        }
        return new Setting.Partly(there, 0, to, Settings.air(emissivity));
    }
}
