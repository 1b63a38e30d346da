package org.strawblue.app.cli;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.ColourService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.colour.Light;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.quantity.Dimension;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Colour from a heat, and the heat from a colour. */
@Command(
        name = "colour",
        aliases = "color",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What colour a heat leaves on clean steel; or, with --shows, how hot it was to show a colour.",
            "The same colour comes at a lower temperature in a longer time."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused: outside what is known, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue colour --temperature 480F --time 5min",
            "      what colour after five minutes at 480 °F, in daylight?",
            "  strawblue colour --temperature 230C --time 1h --light lamp",
            "  strawblue colour --shows straw --time 1h",
            "      how hot was it, if an hour left it straw?"
        })
final class ColourCommand extends Answering {

    @Mixin
    private SteelOptions steel;

    @Option(names = "--temperature", paramLabel = "T", description = "Temperature of the metal: 250 C, 480 F.")
    private @Nullable String temperature;

    @Option(
            names = "--time",
            paramLabel = "t",
            description = "Time at that temperature: 5 min, 1 h; if not told, that of the usual chart.")
    private @Nullable String time;

    @Option(names = "--light", paramLabel = "LIGHT", defaultValue = "daylight", description = "daylight, lamp or LED.")
    private String light = "daylight";

    @Option(names = "--shows", paramLabel = "COLOUR", description = "The colour it shows: straw, purple, blue.")
    private @Nullable String shows;

    ColourCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        double seconds = question.si("--time", time, Dimension.TIME).orElseGet(() -> {
            question.note(ColourService.chartTime());
            return ColourService.CHART_SECONDS;
        });
        double chromium = steel.chromium(question);
        Optional<Light> seenIn = question.word("--light", light, Light.find(light), () -> words(Light.values()));
        if (shows == null) {
            double kelvin = question.needed("--temperature", temperature, Dimension.TEMPERATURE);
            return question.answer(() -> ColourService.after(kelvin, seconds, seenIn.orElseThrow(), chromium));
        }
        Optional<ColourName> name =
                question.word("--shows", shows, ColourName.find(shows), () -> words(ColourName.values()));
        return question.answer(
                () -> ColourService.temperature(name.orElseThrow(), seconds, seenIn.orElseThrow(), chromium));
    }

    private static String words(Light[] lights) {
        return Arrays.stream(lights).map(Light::word).collect(Collectors.joining(", "));
    }

    private static String words(ColourName[] names) {
        return Arrays.stream(names).map(ColourName::word).collect(Collectors.joining(", "));
    }
}
