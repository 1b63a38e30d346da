package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Says what went wrong in one line each. A class and not two references to methods: those would keep old interfaces of the
 * library out of the launcher's class archive.
 */
final class Faults implements IParameterExceptionHandler, IExecutionExceptionHandler {

    @Override
    public int handleParseException(ParameterException e, String[] args) {
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

    @Override
    public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
        return tell(e, command.getCommandSpec().qualifiedName(), command.getErr());
    }

    /** Runs what the command-line library does not. */
    static int guard(String name, PrintWriter err, IntSupplier work) {
        try {
            return work.getAsInt();
        } catch (RuntimeException e) {
            return tell(e, name, err);
        }
    }

    private static int tell(Exception e, String name, PrintWriter err) {
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
