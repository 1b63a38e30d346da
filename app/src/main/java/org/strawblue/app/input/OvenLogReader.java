package org.strawblue.app.input;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import org.strawblue.core.history.Trace;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/**
 * Reads the log of an oven from a table: a column of times and one of temperatures under anybody's words, units in the head or in
 * the cell, any sampling; a cell that is blank or not known is a gap. Every fault at once. Never throws.
 */
public final class OvenLogReader {

    private static final String TIME = "time";
    private static final String TEMPERATURE = "temperature";
    private static final String SET = "set";
    private static final Lexicon HEADS = new Lexicon(heads());
    private static final Lexicon SHORT = new Lexicon(Map.of(TEMPERATURE, List.of("t")));
    private static final Pattern PLAIN = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{1,9})?");
    private static final Band BELIEVABLE = new Band(
            Dimension.TEMPERATURE,
            Units.of(Dimension.TEMPERATURE, "°C").toSi(-60),
            Units.of(Dimension.TEMPERATURE, "°C").toSi(1400));
    /** Faults beyond so many say no more. */
    private static final int MOST_FAULTS = 20;

    private final TextFile file;
    private final Desk desk = new Desk();
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, Unit> units = new HashMap<>();
    private final LogClock clock = new LogClock();
    private final List<double[]> points = new ArrayList<>();
    private final Map<Double, Integer> sets = new LinkedHashMap<>();
    private int gaps = 0;

    private OvenLogReader(TextFile file, UnitSystem system) {
        this.file = file;
        desk.units(system);
    }

    private static Map<String, List<String>> heads() {
        Map<String, List<String>> heads = new LinkedHashMap<>();
        heads.put(
                TIME, List.of("t", "elapsed", "elapsed time", "timestamp", "date", "date time", "clock", "at", "when"));
        heads.put(
                TEMPERATURE,
                List.of(
                        "temp",
                        "oven",
                        "air",
                        "probe",
                        "tc",
                        "thermocouple",
                        "reading",
                        "measured",
                        "actual",
                        "value",
                        "ch1",
                        "t1"));
        heads.put(
                SET, List.of("setpoint", "set point", "set temperature", "set to", "target", "dial", "setting", "sp"));
        return heads;
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

    /** Whether a file is a table of times and temperatures, not one of looks. */
    public static boolean isOne(Path path) {
        if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return false;
        }
        Optional<TextFile> file = TextFile.read(path).value();
        return file.map(f -> {
                    OvenLogReader reader = new OvenLogReader(f, UnitSystem.METRIC);
                    Sheet sheet = new Sheet(f);
                    return sheet.next()
                            .filter(h -> reader.heads(h) || reader.bareNumbers(h))
                            .isPresent();
                })
                .orElse(true);
    }

    private Read<LoggedOven> log() {
        Sheet sheet = new Sheet(file);
        Optional<CsvRecord> head = sheet.next();
        if (head.isEmpty()) {
            desk.problem(
                    Place.of(file.name()),
                    "nothing",
                    "a table with a column of times and one of temperatures",
                    "Write  time_s,temperature_C  in the first row.");
        } else if (heads(head.get())) {
            rows(sheet);
        } else if (bareNumbers(head.get())) {
            assumeHeads();
            row(sheet, head.get());
            rows(sheet);
        } else {
            missingHeads(sheet, head.get());
        }
        sheet.broken().ifPresent(desk::problem);
        Optional<Trace> trace = desk.clean() ? trace() : Optional.empty();
        Optional<LoggedOven> log = desk.clean() ? trace.map(t -> new LoggedOven(name(), t, set())) : Optional.empty();
        return new Read<>(log, desk.problems(), desk.notes());
    }

    private String name() {
        CRC32 sum = new CRC32();
        sum.update(file.text().getBytes(StandardCharsets.UTF_8));
        String last = file.name()
                .substring(Math.max(file.name().lastIndexOf('/'), file.name().lastIndexOf('\\')) + 1);
        return last + " " + Long.toHexString(sum.getValue());
    }

    /** Understands the first row; false where time or temperature is not in it. */
    private boolean heads(CsvRecord head) {
        for (int i = 0; i < head.getFieldCount(); i++) {
            head(head.getField(i).strip(), i);
        }
        return columns.containsKey(TIME) && columns.containsKey(TEMPERATURE);
    }

    private void head(String text, int column) {
        // T stands for time, and with a unit of temperature for that
        Optional<Heading> heading = Heading.of(text, HEADS, key -> Optional.of(dimension(key)))
                .or(() -> Heading.of(text, SHORT, key -> Optional.of(Dimension.TEMPERATURE)));
        Optional<Unit> time = UnitWords.of(Dimension.TIME).find(text);
        Optional<Unit> temperature = UnitWords.of(Dimension.TEMPERATURE).find(text);
        if (heading.isPresent()) {
            keep(heading.get().key(), column, heading.get().unit());
        } else if (time.isPresent()) {
            keep(TIME, column, time);
        } else if (temperature.isPresent()) {
            keep(TEMPERATURE, column, temperature);
        }
    }

    /** The first column of a kind counts; others are other sensors, or remarks. */
    private void keep(String key, int column, Optional<Unit> unit) {
        if (columns.putIfAbsent(key, column) == null) {
            unit.ifPresent(u -> units.put(key, u));
        } else if (key.equals(TEMPERATURE)) {
            desk.note(file.name() + ": of several columns of temperatures the first is used.");
        }
    }

    private static Dimension dimension(String key) {
        return key.equals(TIME) ? Dimension.TIME : Dimension.TEMPERATURE;
    }

    private boolean bareNumbers(CsvRecord row) {
        return row.getFieldCount() >= 2
                && PLAIN.matcher(row.getField(0).strip()).matches()
                && PLAIN.matcher(row.getField(1).strip()).matches();
    }

    private void assumeHeads() {
        columns.put(TIME, 0);
        columns.put(TEMPERATURE, 1);
        desk.note(file.name() + ": no heads; the first column was read as seconds, the second as "
                + bare(TEMPERATURE).symbol() + ".");
    }

    private void missingHeads(Sheet sheet, CsvRecord head) {
        String missing = columns.containsKey(TIME) ? TEMPERATURE : TIME;
        desk.problem(
                sheet.place(head, 0),
                "no column " + missing,
                "a column of times and one of temperatures, such as  time_s,temperature_C",
                "Name the columns in the first row.");
    }

    private void rows(Sheet sheet) {
        if (!units.containsKey(TEMPERATURE)) {
            desk.note(file.name() + ": temperatures without a unit were read as "
                    + bare(TEMPERATURE).symbol() + ".");
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
        if (time.isEmpty() || kelvin.isEmpty()) {
            gaps++;
            return;
        }
        double last = points.isEmpty() ? Double.NEGATIVE_INFINITY : points.get(points.size() - 1)[0];
        if (time.get() > last) {
            points.add(new double[] {time.get(), kelvin.get()});
        } else if (time.get() < last) {
            desk.problem(
                    sheet.place(row, columns.getOrDefault(TIME, 0)),
                    row.getField(columns.getOrDefault(TIME, 0)),
                    "a time later than the one above",
                    "Put the rows in order, or take out what belongs to another log.");
        }
    }

    /** Absent where there is nothing, where it is not known, and where it is faulty: that is put down. */
    private Optional<Double> cell(Sheet sheet, CsvRecord row, String key) {
        int column = columns.getOrDefault(key, -1);
        if (column < 0 || column >= row.getFieldCount()) {
            return Optional.empty();
        }
        String text = row.getField(column).strip();
        if (text.isEmpty()
                || text.matches("[-–—]+|(?i:nan|null|n/?a|open|err|error)")
                || QuantityReader.notKnown(text)) {
            return Optional.empty();
        }
        if (key.equals(TIME)) {
            OptionalDouble seconds = clock.seconds(text);
            if (seconds.isPresent()) {
                return Optional.of(seconds.getAsDouble());
            }
        }
        Unit bare = bare(key);
        if (PLAIN.matcher(text).matches()) {
            double si = bare.toSi(Double.parseDouble(text));
            if (key.equals(TIME) || BELIEVABLE.contains(si)) {
                return Optional.of(si);
            }
        }
        Expectation any = Expectation.of(dimension(key), desk.units()).bare(bare);
        Reading<Quantity> reading = QuantityReader.quantity(text, key.equals(TIME) ? any : any.within(BELIEVABLE));
        if (reading instanceof Reading.Fault<Quantity> fault) {
            desk.problem(fault.at(sheet.place(row, column)));
        }
        return reading.found().map(Quantity::si);
    }

    private Unit bare(String key) {
        Unit named = units.get(key);
        if (named != null) {
            return named;
        }
        if (key.equals(TIME)) {
            return Units.of(Dimension.TIME, "s");
        }
        Unit oven = units.get(TEMPERATURE);
        return oven != null ? oven : Units.of(Dimension.TEMPERATURE, desk.units() == UnitSystem.INCH ? "°F" : "°C");
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
