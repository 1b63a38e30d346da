package org.strawblue.app.input;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.EndType;
import org.strawblue.core.spring.Ends;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.MeasurementErrors;
import org.strawblue.core.spring.Seen;
import org.strawblue.core.spring.identify.Identification;

/** One row of a drawer file. */
final class SpringRow {

    /** "one closed one open", "closed one end, open the other" */
    private static final String EACH_END = "(?i)\\b(the other|other|one)( end)?\\b";

    private static final List<String> SEEN = List.of("magnet", "colour", "rust", "wound", "push", "length before");
    private static final List<String> NEEDED = List.of("wire", "outside", "inside", "mean", "free length", "coils");

    private final Sheet sheet;
    private final CsvRecord row;
    private final Map<String, Integer> columns;
    private final Map<String, Heading> headings;
    private final Desk desk;
    private final List<String> notKnown = new ArrayList<>();
    private final int heads;
    private boolean faulty;

    SpringRow(
            Sheet sheet,
            CsvRecord row,
            Map<String, Integer> columns,
            Map<String, Heading> headings,
            int heads,
            Desk desk) {
        this.sheet = sheet;
        this.row = row;
        this.columns = columns;
        this.headings = headings;
        this.heads = heads;
        this.desk = desk;
    }

    /** Absent where a needed size is faulty or not known. */
    Optional<MeasuredSpring> spring() {
        tooMany();
        Optional<Double> wire = si("wire");
        Optional<Double> outside = outside(wire);
        Optional<Double> length = si("free length");
        Optional<Ends> ends = ends();
        Optional<Double> coils = coils(ends);
        Optional<Seen> seen = seen();
        int quantity = si("quantity").map(q -> (int) Math.rint(q)).orElse(1);
        notKnown.stream().filter(columns::containsKey).forEach(k -> desk.unknown(where() + " / " + k, k));
        if (faulty || seen.isEmpty()) {
            return Optional.empty();
        }
        if (wire.isEmpty() || outside.isEmpty() || length.isEmpty() || coils.isEmpty()) {
            desk.note(where() + " was left out: not known is " + String.join(", ", needed()) + ".");
            return Optional.empty();
        }
        return possible(wire.get(), outside.get(), length.get(), coils.get())
                ? Optional.of(identified(new MeasuredSpring(
                        name(),
                        number(),
                        wire.get(),
                        outside.get(),
                        length.get(),
                        coils.get(),
                        ends,
                        text("material"),
                        MeasurementErrors.usual(),
                        quantity,
                        seen.get())))
                : Optional.empty();
    }

    /** Where no column tells anything beyond sizes, nothing of identification is even loaded. */
    private static MeasuredSpring identified(MeasuredSpring spring) {
        return spring.seen().tells() ? Identification.resolved(spring) : spring;
    }

    private Optional<Seen> seen() {
        for (String column : SEEN) {
            if (columns.containsKey(column)) {
                return new SeenCells(this::cell, this::quietly, this::unread, desk.units()).seen();
            }
        }
        return Optional.of(Seen.nothing());
    }

    private List<String> needed() {
        return notKnown.stream()
                .filter(k -> NEEDED.contains(k) || k.startsWith("coils"))
                .toList();
    }

    private void tooMany() {
        for (int i = heads; i < row.getFieldCount(); i++) {
            if (!row.getField(i).isBlank()) {
                fault(
                        i,
                        "no more cells than the first row has heads",
                        "Put cells that contain the separator “" + sheet.separator() + "” in double quotes.");
                return;
            }
        }
    }

    private boolean possible(double wire, double outside, double length, double coils) {
        if (!(outside > 2 * wire)) {
            fault(
                    columns.getOrDefault("outside", columns.getOrDefault("wire", 0)),
                    "a coil wider than two wires",
                    "Check the wire and the diameter, and their units.");
            return false;
        }
        if ((coils - 1) * wire > length) {
            fault(
                    columns.getOrDefault("free length", 0),
                    "a length in which so many coils find room",
                    "Check length, coils and wire: pressed together they would be longer than this.");
            return false;
        }
        return true;
    }

    private Optional<Double> outside(Optional<Double> wire) {
        Optional<Double> outside = columns.containsKey("outside") ? si("outside") : Optional.empty();
        if (outside.isPresent() || wire.isEmpty()) {
            return outside;
        }
        Optional<Double> inside = columns.containsKey("inside") ? si("inside") : Optional.empty();
        Optional<Double> mean = columns.containsKey("mean") ? si("mean") : Optional.empty();
        return inside.map(i -> i + 2 * wire.get()).or(() -> mean.map(m -> m + wire.get()));
    }

    private Optional<Double> coils(Optional<Ends> ends) {
        Optional<Double> total = columns.containsKey("coils") ? si("coils") : Optional.empty();
        if (total.isPresent() || !columns.containsKey("active coils")) {
            return total;
        }
        Optional<Double> active = si("active coils");
        if (active.isPresent() && ends.isEmpty()) {
            notKnown.add("coils (the ends must be known to tell all coils from the working ones)");
        }
        return active.flatMap(a -> ends.map(e -> a + e.inactive()));
    }

    private Optional<Double> si(String key) {
        Optional<String> text = cell(key);
        if (text.isEmpty()) {
            notKnown.add(key);
            return Optional.empty();
        }
        Expectation any = Field.of("spring", key).expectation(desk.units());
        Expectation expected = Optional.ofNullable(headings.get(key))
                .flatMap(Heading::unit)
                .map(any::bare)
                .orElse(any);
        Reading<Quantity> reading = QuantityReader.quantity(text.get(), expected);
        if (reading instanceof Reading.Fault<Quantity> f) {
            faulty = true;
            desk.problem(f.at(place(columns.getOrDefault(key, 0))));
        }
        return reading.found().map(Quantity::si);
    }

    private Optional<Ends> ends() {
        Optional<String> text = text("ends");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Lexicon words = Lexicon.of("ends");
        List<EndType> found = new ArrayList<>();
        Optional<String> both = words.find(text.get());
        for (String one : both.isPresent()
                ? new String[] {text.get()}
                : text.get().replaceAll(EACH_END, "/").split("[/+,;]+")) {
            EndWords.find(one).ifPresent(found::add);
        }
        if (found.isEmpty() || found.size() > 2 || both.isEmpty() && found.size() == 1) {
            faulty = true;
            desk.problem(new Problem(
                    place(columns.getOrDefault("ends", 0)),
                    text.get(),
                    "one of " + String.join(", ", words.words()) + ", or two of them parted by /",
                    words.nearest(text.get()),
                    "Use these words, or write: don't know."));
            return Optional.empty();
        }
        return Optional.of(new Ends(found.get(0), found.get(found.size() - 1)));
    }

    private Optional<String> text(String key) {
        Optional<String> text = cell(key);
        if (text.isEmpty() && columns.containsKey(key)) {
            notKnown.add(key);
        }
        return text;
    }

    /** The cell, unless it is blank or says that it is not known. */
    private Optional<String> cell(String key) {
        Integer column = columns.get(key);
        if (column == null || column >= row.getFieldCount()) {
            return Optional.empty();
        }
        return Optional.of(row.getField(column).strip()).filter(s -> !s.isEmpty() && !QuantityReader.notKnown(s));
    }

    /** As {@link #si}, but a blank cell is no gap in what should be known. */
    private Optional<Double> quietly(String key) {
        return cell(key).flatMap(text -> si(key));
    }

    /** A cell that says something other than it may. */
    private void unread(String key, String expected) {
        fault(columns.getOrDefault(key, 0), expected, "Use these words, or write: don't know.");
    }

    private String name() {
        return cell("name").orElse("spring of row " + number());
    }

    private String where() {
        return "drawer, row " + number() + " (" + name() + ")";
    }

    private int number() {
        return Sheet.line(row);
    }

    private Place place(int column) {
        return sheet.place(row, column);
    }

    private void fault(int column, String expected, String remedy) {
        faulty = true;
        desk.problem(place(column), column < row.getFieldCount() ? row.getField(column) : "", expected, remedy);
    }
}
