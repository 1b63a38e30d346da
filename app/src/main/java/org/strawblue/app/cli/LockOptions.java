package org.strawblue.app.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.strawblue.core.assembly.Lock;
import org.strawblue.core.assembly.Metal;
import org.strawblue.core.assembly.Strength;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.part.ScrewThread;
import org.strawblue.core.quantity.Dimension;
import picocli.CommandLine.Option;

/** A screw to be locked. */
final class LockOptions {

    @Option(names = "--thread", paramLabel = "THREAD", description = "The screw: M4, M4x0.5, 8-32, 1/4-40, 4BA.")
    private @Nullable String thread;

    @Option(names = "--lock", paramLabel = "STRENGTH", description = "low (if not told), medium, high.")
    private @Nullable String strength;

    @Option(names = "--engaged", paramLabel = "SIZE", description = "Length of thread held; the diameter if not told.")
    private @Nullable String engaged;

    @Option(
            names = "--surface",
            paramLabel = "METAL",
            description = "The slower of both: steel (if not told), brass, stainless, plated.")
    private @Nullable String surface;

    @Option(names = "--room", paramLabel = "T", description = "Temperature while it sets; a warm room if not told.")
    private @Nullable String room;

    @Option(names = "--gap", paramLabel = "SIZE", description = "Play of the diameters, if the thread is loose.")
    private @Nullable String gap;

    boolean given() {
        return thread != null;
    }

    Optional<Lock> read(Question question) {
        Optional<ScrewThread> screw = question.named("--thread", thread, ScrewThread::find);
        String wished = Question.told(strength);
        String met = Question.told(surface);
        Optional<Strength> chosen = question.word("--lock", wished, find(wished), () -> "low, medium, high")
                .or(() -> Optional.of(Strength.all().get(0)));
        Optional<Metal> metal = question.word(
                        "--surface",
                        met,
                        Metal.find(met == null ? "steel" : met),
                        () -> String.join(", ", Metal.names()))
                .or(() -> Metal.find("steel"));
        OptionalDouble length = question.si("--engaged", engaged, Dimension.LENGTH);
        OptionalDouble play = question.si("--gap", gap, Dimension.LENGTH);
        double kelvin = question.si("--room", room, Dimension.TEMPERATURE).orElse(SteelProperties.room());
        if (length.isPresent() && !(length.getAsDouble() > 0)) {
            question.problem("--engaged", String.valueOf(engaged), "more than 0", "Give a length that can be.");
            return Optional.empty();
        }
        return screw.map(
                s -> new Lock(s, length.orElse(s.major()), chosen.orElseThrow(), metal.orElseThrow(), kelvin, play));
    }

    private static Optional<Strength> find(@Nullable String word) {
        return word == null ? Optional.empty() : Strength.find(word);
    }
}
