package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.strawblue.app.report.Screen;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts the commands together, and says what went wrong in one line each. */
final class CommandLines {

    private static final String COMPLETION = "completion";

    private CommandLines() {}

    /** Runs one command line. */
    static int run(PrintWriter out, PrintWriter err, Screen screen, String... args) {
        return of(out, err, screen, args.length == 0 ? "" : args[0]).execute(args);
    }

    /**
     * The commands that must be known for a line that begins with this word: all of them, or where the word is the name of
     * one, that one alone, since to set up all the others costs a tenth of a second.
     */
    private static CommandLine of(PrintWriter out, PrintWriter err, Screen screen, String first) {
        CommandLine root = new CommandLine(new Strawblue(screen));
        Map<String, Supplier<Object>> all = commands();
        String name = first.equals("color") ? "colour" : first;
        if (all.containsKey(name) && !name.equals(COMPLETION)) {
            root.addSubcommand(all.get(name).get());
        } else {
            all.values().forEach(command -> root.addSubcommand(command.get()));
        }
        return dressed(root, out, err, screen);
    }

    /** In the order of the help. */
    private static Map<String, Supplier<Object>> commands() {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("plan", PlanCommand::new);
        commands.put("harden", HardenCommand::new);
        commands.put("temper", TemperCommand::new);
        commands.put("colour", ColourCommand::new);
        commands.put("spring", SpringCommand::new);
        commands.put("grades", GradesCommand::new);
        commands.put("table", TableCommand::new);
        commands.put("proof", ProofCommand::new);
        commands.put(COMPLETION, CompletionCommand::new);
        return commands;
    }

    private static CommandLine dressed(CommandLine root, PrintWriter out, PrintWriter err, Screen screen) {
        return root.setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setUsageHelpWidth(screen.columns())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(CommandLines::misused)
                .setExecutionExceptionHandler(CommandLines::failed);
    }

    private static int misused(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        String name = command.getCommandSpec().qualifiedName();
        err.println(name + ": " + String.valueOf(e.getMessage()).replace("'", ""));
        nearest(e).forEach(n -> err.println("    Did you mean " + n + "?"));
        err.println("    " + name + " --help shows how it is used, with examples.");
        return ExitCode.BAD_INPUT;
    }

    private static List<String> nearest(ParameterException e) {
        return e instanceof UnmatchedArgumentException unmatched
                ? new ArrayList<>(unmatched.getSuggestions())
                : List.of();
    }

    private static int failed(Exception e, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        String name = command.getCommandSpec().qualifiedName();
        if (System.getenv("STRAWBLUE_DEBUG") != null) {
            e.printStackTrace(err);
        }
        if (e instanceof FileTrouble) {
            err.println(name + ": " + e.getMessage());
            return ExitCode.NO_FILE;
        }
        err.println(name + ": a fault in the program: " + e + ". Please report it with the command and its files;"
                + " STRAWBLUE_DEBUG=1 before the command shows where it happened.");
        return ExitCode.FAULT;
    }
}
