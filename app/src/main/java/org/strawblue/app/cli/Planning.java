package org.strawblue.app.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.strawblue.app.input.JobReader;
import org.strawblue.app.input.ProblemPrinter;
import org.strawblue.app.input.Read;
import org.strawblue.app.report.CardJson;
import org.strawblue.app.report.CardView;
import org.strawblue.app.report.PageCard;
import org.strawblue.app.report.Screen;
import org.strawblue.app.report.TerminalCard;
import org.strawblue.app.report.paper.PaperCard;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Shop.Paper;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.job.plan.Planner;

/**
 * One planning of one job file.
 *
 * @param folder where the page and the PDF are left
 * @param units instead of the job's own
 * @param paper instead of the shop's own
 */
record Planning(
        Path file, Path folder, boolean terminalOnly, boolean json, Optional<UnitSystem> units, Optional<Paper> paper) {

    static final String TERMINAL_ONLY = "--terminal-only";

    /**
     * The commonest lines of all, {@code plan JOB} and {@code plan JOB --terminal-only}, read without the command-line
     * library, whose setting up would take a fifth of the time in which the card is there. Any other line is its.
     */
    static Optional<Planning> plain(String... args) {
        boolean plain = args.length >= 2
                && args[0].equals("plan")
                && isFile(args[1])
                && (args.length == 2 || args.length == 3 && args[2].equals(TERMINAL_ONLY));
        return plain
                ? Optional.of(new Planning(
                        Path.of(args[1]), Path.of(""), args.length == 3, false, Optional.empty(), Optional.empty()))
                : Optional.empty();
    }

    /** The library takes words that start with these for options, and for files of options. */
    private static boolean isFile(String word) {
        return !word.isEmpty() && word.charAt(0) != '-' && word.charAt(0) != '@';
    }

    int run(PrintWriter out, PrintWriter err, Screen screen) {
        Read<Job> read = JobReader.read(file);
        tell(read, err, screen);
        if (read.value().isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Job job = read.value().get();
        JobCard card = Planner.plan(job);
        UnitSystem system = units.orElse(job.units());
        if (json) {
            out.print(CardJson.write(card, system));
        } else {
            CardView view = CardView.of(card);
            out.print(TerminalCard.write(view, system, screen));
            if (!terminalOnly) {
                out.flush(); // to be read while the files are written
                leave(view, system, paper.orElse(job.shop().paper()), out);
            }
        }
        out.flush();
        return card.refused() ? ExitCode.REFUSED : ExitCode.FINE;
    }

    /** Faults of the file, and what was only doubtful, beside the card so that a pipe gets the card alone. */
    private static void tell(Read<Job> read, PrintWriter err, Screen screen) {
        if (!read.problems().isEmpty()) {
            err.print(new ProblemPrinter(screen.columns(), screen.colours()).print(read.problems()));
        }
        read.notes().forEach(err::println);
        err.flush();
    }

    private void leave(CardView card, UnitSystem system, Paper sheet, PrintWriter out) {
        Path page = folder.resolve(stem() + "-card.html");
        Path pdf = folder.resolve(stem() + "-card.pdf");
        try {
            Files.createDirectories(folder.toAbsolutePath());
            WholeFile.write(page, PageCard.write(card, system).getBytes(StandardCharsets.UTF_8));
            ByteArrayOutputStream paper = new ByteArrayOutputStream();
            PaperCard.write(card, system, sheet, paper);
            WholeFile.write(pdf, paper.toByteArray());
        } catch (IOException e) {
            throw new FileTrouble(folder.toAbsolutePath(), e);
        }
        out.println("\nThe same card as a page and on paper: " + page + "  " + pdf);
    }

    private String stem() {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
