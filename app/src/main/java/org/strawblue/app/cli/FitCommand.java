package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.FitService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.fit.Chain;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Hole and shaft: limits, play, what to make to a part that is there; a chain of sizes. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Limits of hole and shaft for a fit (ISO 286 letters, inch classes of ASME B4.1, or a purpose);"
                    + " what to make to a part already measured; play when warm; what a chain of sizes comes to."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused: outside the tables, or measured too coarsely", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue fit --size 8mm --fit H7/g6",
            "  strawblue fit --size \"3/8 in\" --fit sliding --units inch",
            "  strawblue fit --size 8mm --fit sliding --hole 8.011mm --hole-by \"bore gauge\"",
            "      the shaft for a hole that is there",
            "  strawblue fit --hole 8.011mm --shaft 7.992mm --at 60C --shaft-metal brass",
            "  strawblue fit --size 8mm --fit H7/g6 --grade O1 --grew \"12 to 12.014 mm\"",
            "      what to make before hardening, going by an earlier part too",
            "  strawblue fit --chain \"12 ±0.05 mm - 8 +0/-0.1 mm\" --at-least 3.9mm"
        })
final class FitCommand extends Answering {

    @Option(names = "--size", paramLabel = "SIZE", description = "The size both are made from: 8mm, \"3/8 in\".")
    private @Nullable String size;

    @Option(
            names = "--fit",
            paramLabel = "FIT",
            description = "H7/g6, RC4, or what for: running, sliding, location, transition, dowel, press, force.")
    private @Nullable String fit;

    @Option(names = "--hole", paramLabel = "SIZE", description = "The hole as measured: 8.011mm, \"8.011 ±0.004 mm\".")
    private @Nullable String hole;

    @Option(names = "--shaft", paramLabel = "SIZE", description = "The shaft as measured.")
    private @Nullable String shaft;

    @Option(
            names = "--hole-by",
            paramLabel = "WHAT",
            description = "Bore gauge (if not told), pin gauge, small hole gauge, calliper.")
    private @Nullable String holeBy;

    @Option(names = "--shaft-by", paramLabel = "WHAT", description = "Micrometer (if not told), calliper.")
    private @Nullable String shaftBy;

    @Option(
            names = "--hole-metal",
            paramLabel = "METAL",
            description = "Steel (if not told), cast iron, brass, bronze, aluminium, stainless.")
    private @Nullable String holeMetal;

    @Option(names = "--shaft-metal", paramLabel = "METAL", description = "Likewise.")
    private @Nullable String shaftMetal;

    @Option(names = "--at", paramLabel = "T", description = "The temperature the pair works at.")
    private @Nullable String at;

    @Mixin
    private HardenedOptions hardened;

    @Option(
            names = "--chain",
            paramLabel = "SIZES",
            description = "Sizes with limits that add up to a gap: \"12 ±0.05 mm - 8 +0/-0.1 mm\".")
    private @Nullable String chain;

    @Option(names = "--at-least", paramLabel = "GAP", description = "What the gap must be at least.")
    private @Nullable String atLeast;

    @Option(names = "--at-most", paramLabel = "GAP", description = "What it may be at most.")
    private @Nullable String atMost;

    FitCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        return chain == null ? pair(question) : sum(question, chain);
    }

    private Optional<Sheet> pair(Question question) {
        FitQuestion asked = new FitQuestion(question, size, fit);
        asked.measured(hole, holeBy, shaft, shaftBy);
        asked.warm(holeMetal, shaftMetal, at);
        asked.hardened(hardened);
        return question.answer(() -> FitService.fit(asked.asked(question.units() == UnitSystem.INCH)));
    }

    private Optional<Sheet> sum(Question question, String text) {
        Optional<Chain> links = ChainText.read(question, "--chain", text);
        double least = question.si("--at-least", atLeast, Dimension.LENGTH).orElse(Double.NEGATIVE_INFINITY);
        double most = question.si("--at-most", atMost, Dimension.LENGTH).orElse(Double.POSITIVE_INFINITY);
        if (least > most) {
            question.problem("--at-least", String.valueOf(atLeast), "less than --at-most", "Exchange the two.");
        }
        return question.answer(() -> FitService.chain(links.orElseThrow(), new Band(Dimension.LENGTH, least, most)));
    }
}
