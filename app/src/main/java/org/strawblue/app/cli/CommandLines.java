package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.strawblue.app.report.Screen;
import picocli.CommandLine;

/** Puts the commands together. */
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
                .setParameterExceptionHandler(new Faults())
                .setExecutionExceptionHandler(new Faults());
    }
}
