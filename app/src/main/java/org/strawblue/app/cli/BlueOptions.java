package org.strawblue.app.cli;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.service.AssembleService;
import org.strawblue.core.colour.Light;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.quantity.Dimension;
import picocli.CommandLine.Option;

/** A temper colour as a finish. */
final class BlueOptions {

    @Option(
            names = "--blue",
            paramLabel = "COLOUR",
            description = "A temper colour as a finish: dark blue, purple, straw.")
    private @Nullable String colour;

    @Option(names = "--at", paramLabel = "T", description = "Hold the metal at this temperature ...")
    private @Nullable String at;

    @Option(names = "--in", paramLabel = "t", description = "... or have it come in this time.")
    private @Nullable String in;

    @Option(names = "--light", paramLabel = "LIGHT", defaultValue = "daylight", description = "daylight, lamp or LED.")
    private String light = "daylight";

    boolean given() {
        return colour != null;
    }

    Optional<AssembleService.Blue> read(Question question, double chromium) {
        String wished = Question.told(colour);
        Optional<ColourName> name = question.word("--blue", wished, find(wished), BlueOptions::words);
        Optional<Light> seenIn = question.word("--light", light, Light.find(light), () -> "daylight, lamp, LED");
        OptionalDouble kelvin = question.si("--at", at, Dimension.TEMPERATURE);
        OptionalDouble seconds = question.si("--in", in, Dimension.TIME);
        if (kelvin.isPresent() && seconds.isPresent()) {
            question.problem(
                    "--in", String.valueOf(in), "--at or --in, not both", "One follows from the other: leave one out.");
        }
        return name.flatMap(
                n -> seenIn.map(l -> new AssembleService.Blue(n, boxed(kelvin), boxed(seconds), l, chromium)));
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static Optional<ColourName> find(@Nullable String word) {
        return word == null ? Optional.empty() : ColourName.find(word);
    }

    private static String words() {
        return Arrays.stream(ColourName.values()).map(ColourName::word).collect(Collectors.joining(", "));
    }
}
