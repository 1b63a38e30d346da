package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringFindService;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a drawer offers for a pocket. */
@Command(
        name = "find",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Which springs of a drawer work in a pocket: as they are, on a shim, cut, nested, end to end, or wound anew of trade wire; the likeliest first, "
                    + "why each other one fails, and where none works the smallest change of the pocket that would help."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring find --drawer examples/springs/drawer.csv --bore 9.6mm \\",
            "      --rod 4mm --rest 26mm --travel 8mm \\",
            "      --force-at-rest 5-10N --force-at-full-travel 12-25N",
            "  strawblue spring find --drawer examples/drawer.csv --bore 3/8in \\",
            "      --rest 1in --travel 1/4in \\",
            "      --force-at-rest \"light by thumb\" --units inch"
        })
final class SpringFindCommand extends Answering {

    @Option(
            names = "--drawer",
            required = true,
            paramLabel = "FILE.csv",
            description = "A file of springs to choose from.")
    private Path drawer;

    @Mixin
    private PocketOptions place;

    SpringFindCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Pocket pocket = place.pocket(question);
        List<MeasuredSpring> springs = DrawerOption.springs(question, drawer);
        return question.answer(() -> SpringFindService.find(springs, pocket));
    }
}
