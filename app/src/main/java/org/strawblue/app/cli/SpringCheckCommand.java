package org.strawblue.app.cli;

import java.util.Optional;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringCheckService;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** One spring in one pocket, limit by limit; or a spring of another kind. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "One compression spring in one pocket, as it is: each limit with its figure. With --kind: an extension, torsion, disc or flat spring, "
                    + "what it does and how far it may go."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring check --wire 0.8mm --outside 7.4mm --free-length 31mm \\",
            "      --coils 10.5 --ends \"closed and ground\" \\",
            "      --material \"music wire\" --bore 9.6mm --rest 26mm --travel 8mm \\",
            "      --cycles 100000 --hottest 80C",
            "  strawblue spring check --kind extension --wire 0.9mm --outside 6.3mm \\",
            "      --coils 12 --tension 5N --force 23N",
            "  strawblue spring check --kind torsion --wire 1.5mm --outside 16mm \\",
            "      --coils 4.25 --legs 40mm --pin 11.5mm --moment 497N·mm",
            "  strawblue spring check --kind disc --outside 20mm --inside 10.2mm \\",
            "      --thickness 1.1mm --cone 0.45mm --deflection 0.3mm",
            "  strawblue spring check --kind flat --length 20mm --width 5mm \\",
            "      --thickness 0.4mm --deflection 1mm"
        })
final class SpringCheckCommand extends Answering {

    @Mixin
    private SpringOptions measured;

    @Mixin
    private PocketOptions place;

    @Mixin
    private KindOptions kind;

    SpringCheckCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        if (kind.given()) {
            return kind.ask(question, measured);
        }
        Pocket pocket = place.pocket(question);
        Optional<MeasuredSpring> spring = measured.spring(question, true);
        return question.answer(() -> SpringCheckService.check(spring.orElseThrow(), pocket));
    }
}
