package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.strawblue.app.report.Screen;
import picocli.CommandLine;

/** Puts the commands together. */
final class CommandLines {

    private static final String NAME = "strawblue";
    private static final String COMPLETION = "completion";

    private CommandLines() {}

    /**
     * Runs one command line. Where its first word is the name of a command, that one alone is set up: all of them cost a
     * tenth of a second.
     */
    static int run(PrintWriter out, PrintWriter err, Screen screen, String... args) {
        Optional<Planning> plain = Planning.plain(args);
        if (plain.isPresent()) {
            return Faults.guard(NAME + " plan", err, () -> plain.get().run(out, err, screen));
        }
        String first = args.length == 0 ? "" : args[0].equals("color") ? "colour" : args[0];
        Supplier<Object> one = commands(screen).get(first);
        if (one == null || first.equals(COMPLETION)) {
            return dressed(whole(screen), out, err, screen).execute(args);
        }
        CommandLine command = new CommandLine(one.get()).setCommandName(NAME + " " + first);
        return dressed(command, out, err, screen).execute(Arrays.copyOfRange(args, 1, args.length));
    }

    private static CommandLine whole(Screen screen) {
        CommandLine root = new CommandLine(new Strawblue());
        commands(screen).values().forEach(command -> root.addSubcommand(command.get()));
        return root;
    }

    /** In the order of the help. */
    private static Map<String, Supplier<Object>> commands(Screen screen) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("plan", () -> new PlanCommand(screen));
        commands.put("harden", () -> new HardenCommand(screen));
        commands.put("temper", () -> new TemperCommand(screen));
        commands.put("colour", () -> new ColourCommand(screen));
        commands.put("spring", () -> SpringCommand.whole(screen));
        commands.put("fit", () -> new FitCommand(screen));
        commands.put("assemble", () -> new AssembleCommand(screen));
        commands.put("grades", () -> new GradesCommand(screen));
        commands.put("table", () -> new TableCommand(screen));
        commands.put("heat", () -> new HeatCommand(screen));
        commands.put("judge", () -> new JudgeCommand(screen));
        commands.put("learn", () -> new LearnCommand(screen));
        commands.put("diagnose", () -> new DiagnoseCommand(screen));
        commands.put("proof", ProofCommand::new);
        commands.put(COMPLETION, CompletionCommand::new);
        return commands;
    }

    private static CommandLine dressed(CommandLine command, PrintWriter out, PrintWriter err, Screen screen) {
        return command.setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setUsageHelpWidth(screen.columns())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(new Faults())
                .setExecutionExceptionHandler(new Faults());
    }
}
