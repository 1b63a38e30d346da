package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.LogReader;
import org.strawblue.app.input.ProblemPrinter;
import org.strawblue.app.input.Read;
import org.strawblue.app.input.StateFile;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.JudgeService;
import org.strawblue.app.service.LearnService;
import org.strawblue.app.service.Sheet;
import org.strawblue.core.evidence.learn.ShopKnowledge;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.job.HeatLog;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Weighs all that was seen of one heat. */
@Command(
        name = "judge",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "How hot a part really got and how hard it is, going by everything that was seen: crayons, infrared gun,"
                    + " colours, dials, files, dents; what each was worth, which one does not fit, and what to do now."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:answered",
            "1:refused, with the reason",
            "2:the log has faults: each is listed with its place"
        },
        footer = {
            "",
            "Examples:",
            "  strawblue judge examples/logs/tempered-pin.yaml",
            "  strawblue judge examples/logs/tempered-pin.yaml --json",
            "  strawblue judge examples/logs/oven-4-gauge.yaml --state shop.yaml",
            "      with what learn has kept of this shop's things",
            "",
            "A log is YAML (title, part, heat, observations, costs) or a CSV table with a row for each look; every figure"
                    + " may carry its unit, and every one may be  don't know.  See docs/guide/judge.md."
        })
final class JudgeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private final Screen screen;

    @Parameters(paramLabel = "LOG", description = "The log of what was seen.")
    private Path file;

    @Option(names = "--state", paramLabel = "FILE", description = "What the shop has learned, kept by learn.")
    private @Nullable Path state;

    @Option(names = "--oven", paramLabel = "NAME", description = "Which of its ovens; \"the oven\" if not told.")
    private String oven = "the oven";

    @Mixin
    private OutputOptions output;

    JudgeCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Read<HeatLog> read = LogReader.read(file);
        var err = spec.commandLine().getErr();
        if (!read.problems().isEmpty()) {
            err.print(new ProblemPrinter(screen.columns(), screen.colours()).print(read.problems()));
        }
        read.notes().forEach(err::println);
        err.flush();
        if (read.value().isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Read<ShopKnowledge> shop = state == null
                ? new Read<>(Optional.of(ShopKnowledge.NOTHING), List.of(), List.of())
                : StateFile.read(state);
        if (shop.value().isEmpty()) {
            err.print(new ProblemPrinter(screen.columns(), screen.colours()).print(shop.problems()));
            err.flush();
            return ExitCode.BAD_INPUT;
        }
        HeatLog log = read.value().get();
        String name = LearnService.name(String.valueOf(file.getFileName()), log);
        Priors priors = shop.value().get().without(name).priors(Priors.usual(), LearnService.things(log, oven));
        Sheet sheet = JudgeService.judge(log, priors);
        var out = spec.commandLine().getOut();
        out.print(output.print(sheet, screen));
        out.flush();
        return sheet.refused() ? ExitCode.REFUSED : ExitCode.FINE;
    }
}
