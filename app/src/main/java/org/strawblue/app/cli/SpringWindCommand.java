package org.strawblue.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import org.strawblue.app.service.SpringWindService;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Coil;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.wind.TrialCoil;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How to wind a spring. */
@Command(
        name = "wind",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "How to wind a compression spring: arbor for the springback, wire, turns, lathe pitch, stress relief and what it changes, and what can hurt "
                    + "you. With a trial coil the arbor follows what your wire really does."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:answered", "1:refused, with the reason", "2:bad input"},
        footer = {
            "",
            "Examples:",
            "  strawblue spring wind --wire 0.8mm --outside 7.4mm --free-length 31mm \\",
            "      --coils 10.5 --ends \"closed and ground\" \\",
            "      --material \"music wire\"",
            "  strawblue spring wind --wire 0.8mm --outside 7.4mm --free-length 31mm \\",
            "      --coils 10.5 --ends \"closed and ground\" \\",
            "      --material \"music wire\" --trial-arbor 5mm --trial-outside 7.6mm"
        })
final class SpringWindCommand extends Answering {

    @Mixin
    private SpringOptions measured;

    @Option(names = "--trial-arbor", paramLabel = "SIZE", description = "Arbor a trial coil was wound on.")
    private @Nullable String trialArbor;

    @Option(names = "--trial-outside", paramLabel = "SIZE", description = "Outside it had, baked.")
    private @Nullable String trialOutside;

    SpringWindCommand(Screen screen) {
        super(screen);
    }

    @Override
    Optional<Sheet> ask(Question question) {
        Optional<MeasuredSpring> spring = measured.spring(question, true);
        Optional<TrialCoil> trial = trial(question, spring);
        return question.answer(() -> {
            MeasuredSpring s = spring.orElseThrow();
            Coil wanted = Coil.of(
                    s.wire(),
                    s.outsideDiameter(),
                    s.freeLength(),
                    s.totalCoils(),
                    s.ends().orElse(Ends.both(EndType.CLOSED_GROUND)));
            SpringMaterial wire = SpringMaterial.named(s).orElse(SpringMaterial.of(SpringMaterial.Key.MUSIC));
            return SpringWindService.wind(wanted, wire, trial);
        });
    }

    private Optional<TrialCoil> trial(Question question, Optional<MeasuredSpring> spring) {
        if (trialArbor == null && trialOutside == null) {
            return Optional.empty();
        }
        double arbor = question.needed("--trial-arbor", trialArbor, Dimension.LENGTH);
        double outside = question.needed("--trial-outside", trialOutside, Dimension.LENGTH);
        double wire = spring.map(MeasuredSpring::wire).orElse(0.0);
        if (question.problems().isEmpty() && !(outside > arbor + 2 * wire && arbor > 0)) {
            question.problem(
                    "--trial-outside",
                    String.valueOf(trialOutside),
                    "more than arbor and two wires: a coil springs open",
                    "Measure the trial coil again.");
        }
        return Optional.of(new TrialCoil(arbor, outside));
    }
}
