package org.strawblue.app.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.strawblue.app.input.Place;
import org.strawblue.app.input.Problem;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.job.UnitSystem;

/** Runs a question over a file, row by row, holding no more than one row. */
public final class TableRun {

    private static final Map<String, Supplier<RowQuestion>> QUESTIONS =
            new TreeMap<>(Map.of("temper", TemperRows::new, "colour", ColourRows::new));

    private static final String FINDING = "finding";
    private static final int LOOK_AHEAD = 1 << 16;
    private static final int MOST_REMEMBERED = 10_000;

    private final RowQuestion question;
    private final UnitSystem units;
    private final Map<Finding, String> words = new HashMap<>();
    private long rows;
    private long unanswered;

    private TableRun(RowQuestion question, UnitSystem units) {
        this.question = question;
        this.units = units;
    }

    /**
     * What came of a run.
     *
     * @param unanswered rows that have a finding in place of an answer
     * @param problems of the file as a whole, after which nothing more was written
     */
    public record Outcome(long rows, long unanswered, List<Problem> problems) {}

    /** The questions that can be asked of a table. */
    public static List<String> questions() {
        return List.copyOf(QUESTIONS.keySet());
    }

    /** Asks one of {@link #questions()} of each row of {@code in}. */
    public static Outcome run(String question, UnitSystem units, String file, Reader in, Writer out)
            throws IOException {
        Supplier<RowQuestion> asked = Objects.requireNonNull(QUESTIONS.get(question), question);
        return new TableRun(asked.get(), units).run(file, new BufferedReader(in, LOOK_AHEAD), out);
    }

    private Outcome run(String file, BufferedReader in, Writer out) throws IOException {
        char separator = separator(in);
        List<Problem> problems;
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                        .fieldSeparator(separator)
                        .allowExtraFields(true)
                        .allowMissingFields(true)
                        .allowUnclosedQuote(false)
                        .ofCsvRecord(in);
                CsvWriter writer = CsvWriter.builder().fieldSeparator(separator).build(out)) {
            problems = all(file, csv.iterator(), writer);
        } catch (CsvParseException e) {
            problems = List.of(unreadable(file, e));
        }
        return new Outcome(rows, unanswered, problems);
    }

    private List<Problem> all(String file, Iterator<CsvRecord> records, CsvWriter writer) {
        if (!records.hasNext()) {
            return List.of(empty(file));
        }
        Columns columns = Columns.of(records.next().getFields());
        List<Problem> problems = columns.missing(file, question.needs());
        if (problems.isEmpty()) {
            writer.writeRecord(headings(columns.names()));
            Cells cells = new Cells(columns, units);
            while (records.hasNext()) {
                CsvRecord record = records.next();
                cells.turnTo(record);
                one(record, columns.names().size(), cells, writer);
            }
        }
        return problems;
    }

    /** Input columns keep their names, save where one has the name of an answer. */
    private List<String> headings(List<String> names) {
        List<String> added = new ArrayList<>(question.adds());
        added.add(FINDING);
        List<String> all = new ArrayList<>();
        names.forEach(n -> all.add(added.contains(n.strip()) ? n.strip() + "_given" : n));
        all.addAll(added);
        return all;
    }

    private void one(CsvRecord record, int width, Cells cells, CsvWriter writer) {
        RowAnswer answer = question.ask(cells);
        rows++;
        CsvWriter.CsvWriterRecord line = writer.writeRecord();
        for (int i = 0; i < width; i++) {
            line.writeField(i < record.getFieldCount() ? record.getField(i) : "");
        }
        boolean answered = answer.values().size() == question.adds().size();
        unanswered += answered ? 0 : 1;
        for (int i = 0; i < question.adds().size(); i++) {
            line.writeField(answered ? answer.values().get(i) : "");
        }
        line.writeField(finding(record, width, cells, answer)).endRecord();
    }

    private String finding(CsvRecord record, int width, Cells cells, RowAnswer answer) {
        if (answer.findings().isEmpty() && cells.quiet() && record.getFieldCount() == width) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        cells.faults().forEach(f -> parts.add("bad input: " + f));
        answer.findings().forEach(f -> parts.add(words(f)));
        parts.addAll(cells.remarks());
        if (record.getFieldCount() != width) {
            parts.add("the row has " + record.getFieldCount() + " cells, the first line " + width);
        }
        return String.join("; ", parts);
    }

    private String words(Finding finding) {
        if (words.size() > MOST_REMEMBERED) {
            words.clear();
        }
        return words.computeIfAbsent(finding, f -> kind(f) + new AmountWriter(units).write(f.what()));
    }

    private static String kind(Finding finding) {
        if (finding instanceof Finding.Stop) {
            return "stop: ";
        }
        return finding instanceof Finding.Caution ? "caution: " : "note: ";
    }

    /** Comma, semicolon or tab: whichever the first line has most of. */
    private static char separator(BufferedReader in) throws IOException {
        in.mark(LOOK_AHEAD);
        String line = Objects.requireNonNullElse(in.readLine(), "");
        in.reset();
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            if (count(line, candidate) > count(line, best)) {
                best = candidate;
            }
        }
        return best;
    }

    private static long count(String line, char c) {
        return line.chars().filter(x -> x == c).count();
    }

    private static Problem empty(String file) {
        return new Problem(
                Place.of(file),
                "nothing",
                "a first line with the names of the columns",
                Optional.empty(),
                "Check the file.");
    }

    private static Problem unreadable(String file, CsvParseException e) {
        return new Problem(
                Place.of(file),
                String.valueOf(e.getMessage()),
                "comma-separated text",
                Optional.empty(),
                "Look for a quotation mark that is not closed, and save the file again from a spreadsheet as CSV, UTF-8.");
    }
}
