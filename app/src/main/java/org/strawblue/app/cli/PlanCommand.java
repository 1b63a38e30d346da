package org.strawblue.app.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.JobReader;
import org.strawblue.app.input.ProblemPrinter;
import org.strawblue.app.input.Read;
import org.strawblue.app.report.CardJson;
import org.strawblue.app.report.CardView;
import org.strawblue.app.report.PageCard;
import org.strawblue.app.report.Screen;
import org.strawblue.app.report.TerminalCard;
import org.strawblue.app.report.paper.PaperCard;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Shop.Paper;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.job.plan.Planner;
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

    @Option(names = "--terminal-only", description = "Print only; leave no files.")
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
        Read<Job> read = JobReader.read(file);
        tell(read);
        if (read.value().isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Job job = read.value().get();
        JobCard card = Planner.plan(job);
        UnitSystem system = Optional.ofNullable(units).orElse(job.units());
        if (json) {
            print(CardJson.write(card, system));
        } else {
            CardView view = CardView.of(card);
            print(TerminalCard.write(view, system, screen));
            if (!terminalOnly) {
                leave(view, system, Optional.ofNullable(paper).orElse(job.shop().paper()));
            }
        }
        return card.refused() ? ExitCode.REFUSED : ExitCode.FINE;
    }

    /** Faults of the file, and what was only doubtful, beside the card so that a pipe gets the card alone. */
    private void tell(Read<Job> read) {
        PrintWriter err = spec.commandLine().getErr();
        if (!read.problems().isEmpty()) {
            err.print(new ProblemPrinter(screen.columns(), screen.colours()).print(read.problems()));
        }
        read.notes().forEach(err::println);
        err.flush();
    }

    private void print(String text) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text);
        out.flush();
    }

    private void leave(CardView card, UnitSystem system, Paper sheet) {
        Path page = folder.resolve(stem() + "-card.html");
        Path pdf = folder.resolve(stem() + "-card.pdf");
        try {
            Files.createDirectories(folder.toAbsolutePath());
            Files.writeString(page, PageCard.write(card, system));
            try (OutputStream out = Files.newOutputStream(pdf)) {
                PaperCard.write(card, system, sheet, out);
            }
        } catch (IOException e) {
            throw new FileTrouble(folder.toAbsolutePath(), e);
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("\nThe same card as a page and on paper: " + page + "  " + pdf);
        out.flush();
    }

    private String stem() {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
