package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.HardenService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How to harden a part, and what comes out. */
@Command(
        name = "harden",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "How to harden a part: temperature, soak, quench, seconds from fire to bath;"
                    + " how hard it comes out, outside and at the centre. Says so plainly where it cannot be hardened this way."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:answered",
            "1:refused: it cannot be hardened this way, with what to do instead",
            "2:bad input"
        },
        footer = {
            "",
            "Examples:",
            "  strawblue harden --grade O1 --diameter 8mm --length 46mm --quench \"canola oil\" --heat kiln",
            "  strawblue harden --grade W1 --outside 5/8in --bore 3/8in --length 1-1/8in --quench brine --heat torch --units inch",
            "  strawblue harden --grade 1095 --thickness 1.5mm --width 10mm --length 38mm",
            "      in which quench, of all known here?"
        })
final class HardenCommand extends Answering {

    @Option(
            names = {"--grade", "--steel"},
            paramLabel = "NAME",
            description = "The steel, by any name of the trade.")
    private @Nullable String grade;

    @Mixin
    private ShapeOptions shape;

    @Option(
            names = "--quench",
            paramLabel = "NAME",
            description = "Water, brine, fast oil, canola oil, air; the best if not told.")
    private @Nullable String quench;

    @Option(
            names = "--heat",
            paramLabel = "NAME",
            defaultValue = "kiln",
            description = "Kiln (if not told), torch, forge.")
    private String heat = "kiln";

    HardenCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<Grade> steel = question.named("--grade", grade, Grades::find);
        if (steel.isEmpty() && question.problems().isEmpty()) {
            question.missing("--grade", grade, "a steel by name");
        }
        Optional<PartShape> part = shape.shape(question);
        Optional<Quenchant> bath = question.named("--quench", quench, Quenchants::find);
        Optional<HeatSource> source = question.named("--heat", heat, HeatSources::find);
        return question.answer(() -> bath.isPresent()
                ? HardenService.harden(steel.orElseThrow(), part.orElseThrow(), bath.get(), source.orElseThrow())
                : HardenService.harden(steel.orElseThrow(), part.orElseThrow(), source.orElseThrow()));
    }
}
