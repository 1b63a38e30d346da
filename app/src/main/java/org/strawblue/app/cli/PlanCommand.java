package org.strawblue.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.report.Screen;
import org.strawblue.core.job.Shop.Paper;
import org.strawblue.core.job.UnitSystem;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works out a job file and prints its card. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Works out a job file: prints the job card, and leaves it as a page (HTML) and on paper (PDF)",
            "in the folder you stand in."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:worked out",
            "1:it must not or cannot be done as asked; the card says why and what to do instead",
            "2:the job file has faults: each is listed with its place, and nothing is written"
        },
        footer = {
            "",
            "Examples:",
            "  strawblue plan examples/index-plunger.yaml",
            "  strawblue plan examples/drill-jig-bush.yaml --units inch --paper letter",
            "  strawblue plan my-job.yaml --terminal-only",
            "  strawblue plan my-job.yaml --json > my-job.json"
        })
final class PlanCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private final Screen screen;

    @Parameters(paramLabel = "JOB", description = "The job file.")
    private Path file;

    @Option(names = "--out", paramLabel = "FOLDER", description = "Where to leave the page and the PDF.")
    private Path folder = Path.of("");

    @Option(names = Planning.TERMINAL_ONLY, description = "Print only; leave no files.")
    private boolean terminalOnly;

    @Option(names = "--json", description = "Print as JSON and leave no files.")
    private boolean json;

    @Option(names = "--units", paramLabel = "metric|inch", description = "Overrides the job's own units.")
    private @Nullable UnitSystem units;

    @Option(names = "--paper", paramLabel = "A4|letter", description = "Overrides the shop's own paper.")
    private @Nullable Paper paper;

    PlanCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        CommandLine line = spec.commandLine();
        return new Planning(file, folder, terminalOnly, json, Optional.ofNullable(units), Optional.ofNullable(paper))
                .run(line.getOut(), line.getErr(), screen);
    }
}
