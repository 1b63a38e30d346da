package org.strawblue.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command without a sub-command: shows what there is. */
@Command(
        name = "strawblue",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        versionProvider = Version.class,
        description = {
            "Hardening, tempering, colour, springs and sizes for small tools made one at a time.",
            "Every number comes with its 80 %% interval and its source."
        },
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:fine",
            "1:refused: understood, but it must not or cannot be done; or a check of proof failed",
            "2:bad input: every fault is listed, nothing was written",
            "70:a fault in the program",
            "74:a file could not be read or written"
        },
        footer = {
            "",
            "Begin with:",
            "  strawblue plan examples/index-plunger.yaml",
            "  strawblue COMMAND --help      (each with worked examples)"
        })
final class Strawblue implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        CommandLine command = spec.commandLine();
        command.usage(command.getOut());
    }
}
