package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringService;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** What a compression spring does, whether it works in a pocket, and which of a drawer does. */
@Command(
        name = "spring",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "What a measured compression spring does; with a pocket, whether it works there;"
                    + " with a drawer file and a pocket, which springs work, as they are or cut down."
                    + " The commands under it ask further: find, check, identify, cut, wind."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring --wire 0.8mm --outside 7mm --free-length 30mm \\",
            "      --coils 10 --ends \"closed and ground\"",
            "      its rate, solid length and stress",
            "  strawblue spring --wire 1/32in --outside 9/32in \\",
            "      --free-length \"1 1/8 in\" --coils 10 \\",
            "      --bore 0.3in --rest 1in --travel 1/4in --units inch",
            "      does it work in this hole?",
            "  strawblue spring --drawer examples/drawer.csv --bore 8.2mm --rest 22mm \\",
            "      --travel 6mm --force-at-rest 4-8N",
            "      which of the drawer does?"
        })
final class SpringCommand extends Answering {

    @ArgGroup(exclusive = false, heading = "The spring:%n")
    private SpringOptions measured = new SpringOptions();

    @ArgGroup(exclusive = false, heading = "The pocket:%n")
    private PocketOptions place = new PocketOptions();

    @Option(names = "--drawer", paramLabel = "FILE.csv", description = "A file of springs to choose from.")
    private @Nullable Path drawer;

    SpringCommand(Screen screen) {
        super(screen);
    }

    /** The command with those under it, of which each asks one thing. */
    static CommandSpec whole(Screen screen) {
        return CommandSpec.forAnnotatedObject(new SpringCommand(screen))
                .addSubcommand("find", CommandSpec.forAnnotatedObject(new SpringFindCommand(screen)))
                .addSubcommand("check", CommandSpec.forAnnotatedObject(new SpringCheckCommand(screen)))
                .addSubcommand("identify", CommandSpec.forAnnotatedObject(new SpringIdentifyCommand(screen)))
                .addSubcommand("cut", CommandSpec.forAnnotatedObject(new SpringCutCommand(screen)))
                .addSubcommand("wind", CommandSpec.forAnnotatedObject(new SpringWindCommand(screen)));
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<Pocket> pocket =
                place.given() || drawer != null ? Optional.of(place.pocket(question)) : Optional.empty();
        List<MeasuredSpring> springs = drawer != null
                ? DrawerOption.springs(question, drawer)
                : measured.spring(question, true).stream().toList();
        return question.answer(() -> drawer != null
                ? SpringService.drawer(springs, pocket.orElseThrow())
                : pocket.map(p -> SpringService.inPocket(springs.get(0), p))
                        .orElseGet(() -> SpringService.spring(springs.get(0))));
    }
}
