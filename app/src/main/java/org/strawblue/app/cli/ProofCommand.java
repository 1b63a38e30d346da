package org.strawblue.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.strawblue.app.proof.Proof;
import org.strawblue.app.proof.ProofReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs every check case and prints the verification table. */
@Command(
        name = "proof",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = {
            "Runs every check case in cases/ and sets ours beside the published value.",
            "Controls are wrong on purpose and must miss. Ends with 1 if any verdict is not as it must be."
        },
        footer = {
            "",
            "Examples:",
            "  strawblue proof",
            "  strawblue proof --csv > proof.csv",
            "  strawblue proof --page          writes docs/science/proof.md"
        })
final class ProofCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    @Option(names = "--csv", description = "As CSV.")
    private boolean csv;

    @Option(names = "--page", description = "Writes the page of the science book.")
    private boolean page;

    @Override
    public Integer call() {
        Proof proof = Proof.of(root().resolve("cases"));
        PrintWriter out = spec.commandLine().getOut();
        if (page) {
            out.println("wrote " + write(new ProofReport(proof).markdown()));
        } else {
            out.print(text(new ProofReport(proof)));
        }
        out.flush();
        return proof.failing().isEmpty() ? ExitCode.FINE : ExitCode.REFUSED;
    }

    private String text(ProofReport report) {
        return json ? report.json() : csv ? report.csv() : report.terminal();
    }

    private static Path write(String markdown) {
        Path file = root().resolve("docs/science/proof.md");
        try {
            Files.createDirectories(file.getParent());
            return Files.writeString(file, markdown);
        } catch (IOException e) {
            throw new FileTrouble(file, e);
        }
    }

    private static Path root() {
        return Path.of(System.getProperty("strawblue.root", "."));
    }
}
