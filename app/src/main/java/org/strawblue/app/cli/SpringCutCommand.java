package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.EndWords;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringCutService;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a spring becomes when it is cut. */
@Command(
        name = "cut",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What a compression spring becomes when it is cut: coils off, coils left, rate, length; in a pocket the cuts that work, with their forces and "
                    + "chances. A cut spring is stiffer, yet pushes less at the same length."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring cut --wire 0.6mm --outside 6.2mm --free-length 120mm \\",
            "      --coils 42 --ends closed --new-end closed",
            "  strawblue spring cut --wire 0.6mm --outside 6.2mm --free-length 120mm \\",
            "      --coils 42 --ends closed \\",
            "      --material \"music wire\" --bore 9.6mm --rod 4mm --rest 26mm --travel 8mm \\",
            "      --force-at-rest 5-10N"
        })
final class SpringCutCommand extends Answering {

    @Mixin
    private SpringOptions measured;

    @Mixin
    private PocketOptions place;

    @Option(
            names = "--new-end",
            paramLabel = "WORDS",
            description = "Only this new end: closed and ground, closed, open, open and ground.")
    private @Nullable String newEnd;

    SpringCutCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<Pocket> pocket = place.given() ? Optional.of(place.pocket(question)) : Optional.empty();
        Optional<MeasuredSpring> spring = measured.spring(question, true);
        Optional<EndType> end = question.word(
                "--new-end",
                newEnd,
                newEnd == null ? Optional.empty() : EndWords.find(newEnd),
                () -> String.join(", ", EndWords.all()));
        return question.answer(() -> SpringCutService.cut(spring.orElseThrow(), pocket, end));
    }
}
