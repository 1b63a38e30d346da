package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringIdentifyService;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.MeasuredSpring;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What an unknown spring is. */
@Command(
        name = "identify",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What an unknown compression spring is, from what can be measured and seen: rate by sizes and by kitchen scale, where the doubt comes from, "
                    + "what wire it is likely to be, what it bears, whether it has set."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring identify --wire \"1.00 ±0.01 mm\" \\",
            "      --outside \"9.00 ±0.05 mm\" --active-coils \"6 ±0.25\" \\",
            "      --ends \"closed and ground\" --modulus \"80 ±1.5 GPa\"",
            "  strawblue spring identify --wire 0.9mm --outside 8mm --free-length 34mm \\",
            "      --coils 11 --ends \"closed and ground\" \\",
            "      --magnet slight --looks bright --rust no \\",
            "      --push \"400 gf at 28 mm; 900 gf at 22 mm\""
        })
final class SpringIdentifyCommand extends Answering {

    @Mixin
    private SpringOptions measured;

    @Option(names = "--modulus", paramLabel = "G", description = "Shear modulus, where it is known: \"80 ±1.5 GPa\".")
    private @Nullable String modulus;

    @Option(names = "--magnet", paramLabel = "WORD", description = "How a magnet pulls it: strong, slight, none.")
    private @Nullable String magnet;

    @Option(names = "--looks", paramLabel = "WORD", description = "grey, black, bright, golden.")
    private @Nullable String looks;

    @Option(names = "--rust", paramLabel = "yes|no", description = "Whether it has rusted.")
    private @Nullable String rust;

    @Option(
            names = "--push",
            paramLabel = "READINGS",
            description = "Kitchen scale: \"400 gf at 28 mm; 900 gf at 22 mm\".")
    private @Nullable String push;

    @Option(
            names = "--length-before",
            paramLabel = "SIZE",
            description = "Free length before it was pressed solid a few times.")
    private @Nullable String before;

    SpringIdentifyCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        measured.put("magnet", magnet);
        measured.put("colour", looks);
        measured.put("rust", rust);
        measured.put("push", push);
        measured.put("length before", before);
        Optional<Band> shear = question.band("--modulus", modulus, Dimension.STRESS);
        Optional<MeasuredSpring> spring = measured.spring(question, push != null);
        return question.answer(
                () -> SpringIdentifyService.identify(spring.orElseThrow(), shear, measured.lengthGiven()));
    }
}
