package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.strawblue.app.report.Screen;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts the commands together, and says what went wrong in one line each. */
final class CommandLines {

    private CommandLines() {}

    static CommandLine of(PrintWriter out, PrintWriter err, Screen screen) {
        return new CommandLine(new Strawblue(screen))
                .setOut(out)
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
