package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.AssembleService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.assembly.Blackening;
import org.strawblue.core.assembly.Removal;
import org.strawblue.core.assembly.Slide;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Temper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Putting a small mechanism together: locking, oil, blueing, blackening. */
@Command(
        name = "assemble",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Locking a screw without locking the slide beside it, and what heating it loose costs the temper;"
                    + " a temper colour as a finish, how long it stays and how to get two pieces alike;"
                    + " what a black finish adds; what to oil with."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue assemble --thread M4 --lock low --clearance \"5-29 um\"",
            "  strawblue assemble --thread 1/4-40 --lock high --grade O1 --temper 400F",
            "      what heating it loose leaves of the temper",
            "  strawblue assemble --blue \"dark blue\" --at 290C --grade O1",
            "  strawblue assemble --blue straw --in 20min",
            "  strawblue assemble --black \"cold blue\" --clearance 0.2-0.85thou"
        })
final class AssembleCommand extends Answering {

    @Mixin
    private LockOptions lock;

    @Mixin
    private BlueOptions blue;

    @Mixin
    private SteelOptions steel;

    @Option(
            names = "--clearance",
            paramLabel = "GAPS",
            description = "Least and greatest clearance of the slide nearby: \"5-29 um\", \"0.2-1 thou\".")
    private @Nullable String clearance;

    @Option(names = "--temper", paramLabel = "T", description = "The last temper of the hard part.")
    private @Nullable String temper;

    @Option(names = "--for", paramLabel = "t", description = "How long that was; 1 h if not told.")
    private @Nullable String time;

    @Option(names = "--black", paramLabel = "KIND", description = "Hot black oxide, cold blue, rust blue, oil black.")
    private @Nullable String black;

    AssembleCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        if (!lock.given() && !blue.given() && black == null && clearance == null) {
            question.missing("--thread, --blue, --black or --clearance", null, "what is to be put together");
        }
        AssembleService.Asked asked = new AssembleService.Asked(
                lock.read(question),
                question.band("--clearance", clearance, Dimension.LENGTH).map(Slide::new),
                steel.known(question),
                temper(question),
                blue.read(question, steel.chromium(question)),
                question.word("--black", Question.told(black), finish(), () -> String.join(", ", Blackening.names())));
        return question.answer(() -> AssembleService.assemble(asked));
    }

    private Optional<Blackening> finish() {
        return Optional.ofNullable(Question.told(black)).flatMap(Blackening::find);
    }

    private Optional<Temper> temper(Question question) {
        double seconds = question.si("--for", time, Dimension.TIME).orElse(Removal.usualSeconds());
        if (!(seconds > 0)) {
            question.problem("--for", String.valueOf(time), "a time of more than 0", "Give a time that can be.");
        }
        return question.si("--temper", temper, Dimension.TEMPERATURE).stream()
                .boxed()
                .filter(k -> seconds > 0)
                .map(k -> new Temper(k, seconds))
                .findFirst();
    }
}
