package org.strawblue.app.table;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.strawblue.app.input.Expectation;
import org.strawblue.app.input.QuantityReader;
import org.strawblue.app.input.Reading;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;

/**
 * The cells of one row after another. A plain number under a heading with a unit is read at once; any other form goes to
 * the reader of trade forms, once for each different text.
 */
final class Cells {

    private static final Set<Dimension> DOUBTFUL = EnumSet.of(Dimension.TIME, Dimension.TEMPERATURE, Dimension.LENGTH);

    private static final int MOST_REMEMBERED = 10_000;

    private final Columns columns;
    private final Map<String, Cell> cells = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private @Nullable CsvRecord record;

    Cells(Columns columns, UnitSystem units) {
        this.columns = columns;
        columns.known()
                .forEach((name, column) -> Heading.dimension(name)
                        .ifPresent(d -> cells.put(name, new Cell(name, column, Expectation.of(d, units), units))));
    }

    /** How one column of quantities is read. */
    private static final class Cell {
        private final Columns.Column column;
        private final Expectation expected;
        private final Unit unit;
        /** What is said of a bare number, where neither it nor the heading tells the unit and it might be another. */
        private final Optional<String> remark;

        private final Map<String, Reading<Quantity>> read = new HashMap<>();

        Cell(String name, Columns.Column column, Expectation expected, UnitSystem units) {
            this.column = column;
            this.unit = column.heading().unit().orElse(Heading.bare(name, units == UnitSystem.INCH));
            this.expected = expected.bare(unit);
            boolean told = column.heading().unit().isPresent() || !DOUBTFUL.contains(expected.dimension());
            this.remark = told ? Optional.empty() : Optional.of("note: " + name + " taken in " + unit.symbol());
        }

        Reading<Quantity> read(String text) {
            if (read.size() > MOST_REMEMBERED) {
                read.clear();
            }
            return read.computeIfAbsent(text, t -> QuantityReader.quantity(t, expected));
        }
    }

    void turnTo(CsvRecord next) {
        record = next;
        faults.clear();
        remarks.clear();
    }

    /** Whether there is nothing to tell of the reading of this row. */
    boolean quiet() {
        return faults.isEmpty() && remarks.isEmpty();
    }

    /** What was assumed in reading this row. */
    List<String> remarks() {
        return remarks;
    }

    /** What could not be read in this row. */
    List<String> faults() {
        return faults;
    }

    void fault(String words) {
        faults.add(words);
    }

    /** Whether the file has such a column. */
    boolean has(String column) {
        return columns.find(column).isPresent();
    }

    /** The cell's text; empty where there is no such column or cell. */
    String text(String column) {
        return columns.find(column).map(c -> field(c.index())).orElse("");
    }

    private String field(int index) {
        return record != null && index < record.getFieldCount()
                ? record.getField(index).strip()
                : "";
    }

    /** The cell in the core's unit; absent where it is blank, not known, or faulty. */
    OptionalDouble si(String name) {
        Cell cell = cells.get(name);
        if (cell == null) {
            return OptionalDouble.empty();
        }
        String text = field(cell.column.index());
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (plain(text)) {
            double si = cell.unit.toSi(Double.parseDouble(text));
            if (cell.expected.range().contains(si)) {
                cell.remark.ifPresent(remarks::add);
                return OptionalDouble.of(si);
            }
        }
        return slowly(name, cell, text);
    }

    private OptionalDouble slowly(String name, Cell cell, String text) {
        Reading<Quantity> reading = cell.read(text);
        if (reading instanceof Reading.Fault<Quantity> fault) {
            faults.add(name + " “" + text + "”: expected " + fault.expected() + ". " + fault.remedy());
        }
        Optional<Quantity> found = reading.found();
        return found.isPresent() ? OptionalDouble.of(found.get().si()) : OptionalDouble.empty();
    }

    /** As above, for what the row cannot do without. */
    double needed(String name) {
        int before = faults.size();
        OptionalDouble si = si(name);
        if (si.isEmpty() && faults.size() == before) {
            faults.add(name + " is missing");
        }
        return si.orElse(0);
    }

    /** Digits with at most one point and a sign: what every program writes. */
    private static boolean plain(String text) {
        int points = 0;
        int digits = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '.') {
                points++;
            } else if (c >= '0' && c <= '9') {
                digits++;
            } else if (i > 0 || c != '-') {
                return false;
            }
        }
        return digits > 0 && points <= 1;
    }
}
