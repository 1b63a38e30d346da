package org.strawblue.app.input;

import static org.strawblue.app.input.OvenColumns.SET;
import static org.strawblue.app.input.OvenColumns.TEMPERATURE;
import static org.strawblue.app.input.OvenColumns.TIME;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.history.Readings;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Quantity;

/**
 * Reads the log of an oven from a table: a column of times and one of temperatures under anybody's words, units in the head or in
 * the cell, any sampling; a cell that is blank or not known is a gap. Every fault at once. Never throws.
 */
public final class OvenLogReader {

    private static final String NOTHING = "[-–—]+|(?i:nan|null|n/?a|open|err|error)";
    /** Faults beyond so many say no more. */
    private static final int MOST_FAULTS = 20;

    private final TextFile file;
    private final OvenColumns columns;
    private final Desk desk = new Desk();
    private final LogClock clock = new LogClock();
    private final List<double[]> points = new ArrayList<>();
    private final Map<Double, Integer> sets = new LinkedHashMap<>();
    private int gaps = 0;
    private boolean untidy = false;

    private OvenLogReader(TextFile file, UnitSystem system) {
        this.file = file;
        this.columns = new OvenColumns(system);
    }

    public static Read<LoggedOven> read(Path path, UnitSystem system) {
        Read<TextFile> file = TextFile.read(path);
        if (file.value().isEmpty()) {
            return Read.failed(file.problems().toArray(Problem[]::new));
        }
        OvenLogReader reader = new OvenLogReader(file.value().get(), system);
        file.notes().forEach(reader.desk::note);
        return reader.log();
    }

    public static Read<LoggedOven> read(String name, String text, UnitSystem system) {
        return new OvenLogReader(TextFile.of(name, text), system).log();
    }

    /** A log of a part or what heats it, however untidy: what there is to say of it comes with it. */
    public static Read<Answer<Trace>> measured(Path path, UnitSystem system) {
        Read<TextFile> file = TextFile.read(path);
        if (file.value().isEmpty()) {
            return Read.failed(file.problems().toArray(Problem[]::new));
        }
        OvenLogReader reader = new OvenLogReader(file.value().get(), system);
        file.notes().forEach(reader.desk::note);
        return reader.untidy();
    }

    /** @param name of the file */
    public static Read<Answer<Trace>> measured(String name, String text, UnitSystem system) {
        return new OvenLogReader(TextFile.of(name, text), system).untidy();
    }

    private Read<Answer<Trace>> untidy() {
        untidy = true;
        table();
        Optional<Answer<Trace>> trace = desk.clean()
                ? Optional.of(Readings.trace(
                        points.stream().mapToDouble(p -> p[0]).toArray(),
                        points.stream().mapToDouble(p -> p[1]).toArray()))
                : Optional.empty();
        return new Read<>(trace, desk.problems(), desk.notes());
    }

    /** Whether a file is a table of times and temperatures, not one of looks; what cannot be read is taken for one. */
    public static boolean isOne(Path path) {
        if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return false;
        }
        Optional<TextFile> file = TextFile.read(path).value();
        OvenColumns columns = new OvenColumns(UnitSystem.METRIC);
        return file.isEmpty()
                || new Sheet(file.get())
                        .next()
                        .map(CsvRecord::getFields)
                        .filter(h -> columns.heads(h) || columns.bareNumbers(h))
                        .isPresent();
    }

    private Read<LoggedOven> log() {
        table();
        Optional<Trace> trace = desk.clean() ? trace() : Optional.empty();
        Optional<LoggedOven> log = desk.clean() ? trace.map(t -> new LoggedOven(name(), t, set())) : Optional.empty();
        return new Read<>(log, desk.problems(), desk.notes());
    }

    private void table() {
        Sheet sheet = new Sheet(file);
        Optional<CsvRecord> head = sheet.next();
        if (head.isEmpty()) {
            desk.problem(
                    Place.of(file.name()),
                    "nothing",
                    "a table with a column of times and one of temperatures",
                    "Write  time_s,temperature_C  in the first row.");
        } else if (columns.heads(head.get().getFields())) {
            rows(sheet);
        } else if (columns.bareNumbers(head.get().getFields())) {
            columns.assumeHeads();
            desk.note(file.name() + ": no heads; the first column was read as seconds, the second as "
                    + columns.bare(TEMPERATURE).symbol() + ".");
            row(sheet, head.get());
            rows(sheet);
        } else {
            missingHeads(sheet, head.get());
        }
        sheet.broken().ifPresent(desk::problem);
    }

    private String name() {
        CRC32 sum = new CRC32();
        sum.update(file.text().getBytes(StandardCharsets.UTF_8));
        String last = file.name()
                .substring(Math.max(file.name().lastIndexOf('/'), file.name().lastIndexOf('\\')) + 1);
        return last + " " + Long.toHexString(sum.getValue());
    }

    private void missingHeads(Sheet sheet, CsvRecord head) {
        String missing = columns.has(TIME) ? TEMPERATURE : TIME;
        desk.problem(
                sheet.place(head, 0),
                "no column " + missing,
                "a column of times and one of temperatures, such as  time_s,temperature_C",
                "Name the columns in the first row.");
    }

    private void rows(Sheet sheet) {
        if (columns.several()) {
            desk.note(file.name() + ": of several columns of temperatures the first is used.");
        }
        if (!columns.temperaturesNamed()) {
            desk.note(file.name() + ": temperatures without a unit were read as "
                    + columns.bare(TEMPERATURE).symbol() + ".");
        }
        for (Optional<CsvRecord> row = sheet.next(); row.isPresent(); row = sheet.next()) {
            if (desk.problems().size() > MOST_FAULTS) {
                return;
            }
            row(sheet, row.get());
        }
    }

    private void row(Sheet sheet, CsvRecord row) {
        Optional<Double> time = cell(sheet, row, TIME);
        Optional<Double> kelvin = cell(sheet, row, TEMPERATURE);
        cell(sheet, row, SET).ifPresent(s -> sets.merge(s, 1, Integer::sum));
        if (untidy) {
            points.add(new double[] {time.orElse(Double.NaN), kelvin.orElse(Double.NaN)});
            return;
        }
        if (time.isEmpty() || kelvin.isEmpty()) {
            gaps++;
            return;
        }
        double last = points.isEmpty() ? Double.NEGATIVE_INFINITY : points.get(points.size() - 1)[0];
        if (time.get() > last) {
            points.add(new double[] {time.get(), kelvin.get()});
        } else if (time.get() < last) {
            desk.problem(
                    sheet.place(row, columns.at(TIME)),
                    row.getField(columns.at(TIME)),
                    "a time later than the one above",
                    "Put the rows in order, or take out what belongs to another log.");
        }
    }

    /** Absent where there is nothing, where it is not known, and where it is faulty: that is put down. */
    private Optional<Double> cell(Sheet sheet, CsvRecord row, String key) {
        int column = columns.at(key);
        if (column < 0 || column >= row.getFieldCount()) {
            return Optional.empty();
        }
        String text = row.getField(column).strip();
        if (text.isEmpty() || text.matches(NOTHING) || QuantityReader.notKnown(text)) {
            return Optional.empty();
        }
        OptionalDouble clocked = key.equals(TIME) ? clock.seconds(text) : OptionalDouble.empty();
        return clocked.isPresent() ? Optional.of(clocked.getAsDouble()) : number(sheet.place(row, column), text, key);
    }

    private Optional<Double> number(Place place, String text, String key) {
        Expectation expected = columns.expected(key);
        if (OvenColumns.plain(text)) {
            double si = columns.bare(key).toSi(Double.parseDouble(text));
            // a logger counts seconds from where it likes
            if (untidy || key.equals(TIME) || expected.range().contains(si)) {
                return Optional.of(si);
            }
        }
        Reading<Quantity> reading = QuantityReader.quantity(text, expected);
        if (reading instanceof Reading.Fault<Quantity> fault) {
            desk.problem(fault.at(place));
        }
        return reading.found().map(Quantity::si);
    }

    private Optional<Trace> trace() {
        if (points.size() < 2) {
            desk.problem(
                    Place.of(file.name()),
                    points.size() + " readings",
                    "two readings or more",
                    "Log on: an hour tells an oven well.");
            return Optional.empty();
        }
        if (gaps > 0) {
            desk.note(file.name() + ": " + gaps + " rows without a reading were taken as gaps.");
        }
        double first = points.get(0)[0];
        return Optional.of(new Trace(
                points.stream().mapToDouble(p -> p[0] - first).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray()));
    }

    /** The setting that stands in most rows. */
    private OptionalDouble set() {
        if (sets.size() > 1) {
            desk.note(file.name() + ": the setting changes; the one that stands longest was used.");
        }
        return sets.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(e -> OptionalDouble.of(e.getKey()))
                .orElse(OptionalDouble.empty());
    }
}
