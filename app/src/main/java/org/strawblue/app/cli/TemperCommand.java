package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.TemperService;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Hardness from a temper, the temper for a hardness, and equivalents. */
@Command(
        name = "temper",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "How hard a steel is after a temper; or, with --hardness, at what temperature to temper for a wanted hardness;"
                    + " or the same temper at another temperature or in another time."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused: outside what is known, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue temper --grade O1 --temperature 400F --time 1h",
            "      how hard is O1 after one hour at 400 °F?",
            "  strawblue temper --grade O1 --hardness 58-60 --time \"45 min\"",
            "      at what temperature, for 58 to 60 HRC in 45 minutes?",
            "  strawblue temper --grade O1 --temperature 205C --time 1h --in 20min",
            "      how hot, for the same effect in 20 minutes?",
            "  strawblue temper --composition C=0.85,Mn=0.75 --as-quenched 65 --temperature 220C --time 2h"
        })
final class TemperCommand extends Answering {

    @Mixin
    private SteelOptions steel;

    @Option(names = "--temperature", paramLabel = "T", description = "Temperature of the metal: 205 C, 400 F.")
    private @Nullable String temperature;

    @Option(names = "--time", paramLabel = "t", description = "Time at that temperature: 1 h, 45 min.")
    private @Nullable String time;

    @Option(names = "--times", paramLabel = "N", defaultValue = "1", description = "How often, 1 if not told.")
    private int times = 1;

    @Option(names = "--hardness", paramLabel = "HRC", description = "Hardness wanted: 58-60, \"59 HRC\".")
    private @Nullable String hardness;

    @Option(names = "--at", paramLabel = "T", description = "How long at this temperature for the same effect?")
    private @Nullable String at;

    @Option(names = "--in", paramLabel = "t", description = "How hot for the same effect in this time?")
    private @Nullable String in;

    TemperCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<Steel> known = steel.steel(question);
        double seconds = question.needed("--time", time, Dimension.TIME);
        if (times < 1) {
            question.problem("--times", String.valueOf(times), "1 or more", "Say how often it is tempered.");
        }
        return hardness == null ? askTemper(question, known, seconds) : askHardness(question, known, seconds);
    }

    private Optional<Sheet> askHardness(Question question, Optional<Steel> known, double seconds) {
        Optional<Band> wanted = question.band("--hardness", hardness, Dimension.HARDNESS);
        if (temperature != null) {
            question.problem("--temperature", temperature, "--hardness or --temperature, not both", "Leave one out.");
        }
        if (wanted.isEmpty() && question.problems().isEmpty()) {
            question.missing("--hardness", hardness, "a hardness such as 58-60 HRC");
        }
        return question.answer(() -> TemperService.temperature(known.orElseThrow(), wanted.orElseThrow(), seconds));
    }

    private Optional<Sheet> askTemper(Question question, Optional<Steel> known, double seconds) {
        double kelvin = question.needed("--temperature", temperature, Dimension.TEMPERATURE);
        double other = question.si("--at", at, Dimension.TEMPERATURE).orElse(0);
        double otherTime = question.si("--in", in, Dimension.TIME).orElse(0);
        return question.answer(() -> {
            Temper temper = new Temper(kelvin, seconds);
            if (other > 0) {
                return TemperService.sameAt(known.orElseThrow(), temper, other);
            }
            return otherTime > 0
                    ? TemperService.sameIn(known.orElseThrow(), temper, otherTime)
                    : TemperService.hardness(known.orElseThrow(), temper, times);
        });
    }
}
