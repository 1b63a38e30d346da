package org.strawblue.app.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.strawblue.app.input.ProblemPrinter;
import org.strawblue.app.report.Screen;
import org.strawblue.app.service.Sheet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that asks one question and prints its answer. */
abstract class Answering implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private final Screen screen;

    @Mixin
    private OutputOptions output;

    Answering(Screen screen) {
        this.screen = screen;
    }

    Screen screen() {
        return screen;
    }

    PrintWriter err() {
        return spec.commandLine().getErr();
    }

    /** Reads the options into the question and asks it; absent where something could not be read. */
    abstract Optional<Sheet> ask(Question question);

    @Override
    public final Integer call() {
        Question question = new Question(output.units());
        Optional<Sheet> sheet = ask(question);
        if (sheet.isEmpty()) {
            PrintWriter err = err();
            err.print(new ProblemPrinter(screen.columns(), screen.colours()).print(question.problems()));
            err.flush();
            return ExitCode.BAD_INPUT;
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(output.print(sheet.get(), screen));
        out.flush();
        return sheet.get().refused() ? ExitCode.REFUSED : ExitCode.FINE;
    }
}
