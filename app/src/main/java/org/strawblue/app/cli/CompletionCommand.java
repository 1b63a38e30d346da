package org.strawblue.app.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a completion script. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = "Prints a completion script for bash and zsh.",
        footer = {"", "Example:", "  source <(strawblue completion)"})
final class CompletionCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var out = spec.commandLine().getOut();
        out.print(AutoComplete.bash("strawblue", spec.root().commandLine()));
        out.flush();
        return ExitCode.FINE;
    }
}
