package org.strawblue.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.Place;
import org.strawblue.app.input.Problem;
import org.strawblue.app.input.ProblemPrinter;
import org.strawblue.app.report.Screen;
import org.strawblue.app.table.TableRun;
import org.strawblue.core.job.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a question over the rows of a CSV file. */
@Command(
        name = "table",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Runs a command for each row of a CSV file and writes CSV: the columns that came, then the answer, then its"
                    + " finding. A bad row gets its finding and does not stop the rest.",
            "",
            "temper   needs temperature, time, and grade or a composition (C, Mn, Si, ...); takes as_quenched, tempers;"
                    + " adds hrc, hrc_low, hrc_high",
            "colour   needs temperature, time; takes light, grade or Cr; adds name, nm, hex",
            "",
            "A heading may tell the unit of the bare numbers below it: temperature_c, temperature (F), time_s, time (h)."
                    + " A cell may tell its own: 400 F, 2.5 h. Bare numbers without either are °C (inch: °F) and seconds,"
                    + " and the finding says so."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:every row is written, with an answer or a finding", "2:bad input: the file as a whole"},
        footer = {
            "",
            "Examples:",
            "  strawblue table temper heats.csv > hardness.csv",
            "  strawblue table colour heats.csv --out colours.csv",
            "  printf 'grade,temperature,time\\nO1,400 F,1 h\\n' | strawblue table temper -"
        })
final class TableCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private final Screen screen;

    @Parameters(index = "0", paramLabel = "COMMAND", description = "temper or colour.")
    private String command;

    @Parameters(index = "1", paramLabel = "FILE.csv", description = "The table; - for the standard input.")
    private String file;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write; the standard output if not told.")
    private @Nullable Path target;

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            defaultValue = "metric",
            description = "What bare numbers mean.")
    private UnitSystem units = UnitSystem.METRIC;

    TableCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        String question = command.toLowerCase(Locale.ROOT).replace("color", "colour");
        if (!TableRun.questions().contains(question)) {
            return refuse(new TableRun.Outcome(0, 0, java.util.List.of(unknown())));
        }
        TableRun.Outcome outcome;
        try (Reader in = open()) {
            outcome = target == null ? toOutput(question, in) : toFile(question, in, target);
        } catch (IOException e) {
            throw new FileTrouble(Path.of(file), e);
        }
        return outcome.problems().isEmpty() ? told(outcome) : refuse(outcome);
    }

    private Reader open() throws IOException {
        return file.equals("-")
                ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                : Files.newBufferedReader(Path.of(file));
    }

    private TableRun.Outcome toOutput(String question, Reader in) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        TableRun.Outcome outcome = TableRun.run(question, units, file, in, new Unclosed(out));
        out.flush();
        return outcome;
    }

    /** Beside the target first: a run that fails leaves what was there. */
    private TableRun.Outcome toFile(String question, Reader in, Path out) throws IOException {
        Path draft = out.resolveSibling(out.getFileName() + ".part");
        try (Writer writer = Files.newBufferedWriter(draft)) {
            TableRun.Outcome outcome = TableRun.run(question, units, file, in, writer);
            if (outcome.problems().isEmpty()) {
                writer.close();
                Files.move(draft, out, StandardCopyOption.REPLACE_EXISTING);
            }
            return outcome;
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private int told(TableRun.Outcome outcome) {
        if (outcome.unanswered() > 0) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(
                    outcome.unanswered() + " of " + outcome.rows() + " rows have no answer; their finding says why.");
            err.flush();
        }
        return ExitCode.FINE;
    }

    private int refuse(TableRun.Outcome outcome) {
        PrintWriter err = spec.commandLine().getErr();
        err.print(new ProblemPrinter(screen.columns(), screen.colours()).print(outcome.problems()));
        err.flush();
        return ExitCode.BAD_INPUT;
    }

    private Problem unknown() {
        return new Problem(
                new Place("COMMAND", 1, 1, command.length() + 1, command),
                command,
                "one of " + String.join(", ", TableRun.questions()),
                Optional.empty(),
                "Choose one of these.");
    }
}
