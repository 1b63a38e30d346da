package org.strawblue.app.input;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.spring.MeasuredSpring;

/**
 * Reads a drawer of springs from a table: columns in any order under the owner's own words, units in the head or in the
 * cell. A row that cannot be understood is a problem and does not stop the others; a spring of which a needed size is
 * not known is left out, and that is told.
 */
public final class DrawerReader {

    private static final List<Field> FIELDS = Field.of("spring");
    private static final Lexicon KEYS = Field.lexicon("spring");

    private final TextFile file;
    private final Desk desk = new Desk();
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, Heading> headings = new LinkedHashMap<>();

    private DrawerReader(TextFile file, UnitSystem units) {
        this.file = file;
        desk.units(units);
    }

    public static Read<Drawer> read(Path path, UnitSystem units) {
        Read<TextFile> file = TextFile.read(path);
        if (file.value().isEmpty()) {
            return Read.failed(file.problems().toArray(Problem[]::new));
        }
        DrawerReader reader = new DrawerReader(file.value().get(), units);
        file.notes().forEach(reader.desk::note);
        return reader.drawer();
    }

    public static Read<Drawer> read(String name, String text, UnitSystem units) {
        return new DrawerReader(TextFile.of(name, text), units).drawer();
    }

    private Read<Drawer> drawer() {
        Sheet sheet = new Sheet(file);
        Drawer drawer = drawer(sheet);
        sheet.broken().ifPresent(desk::problem);
        return new Read<>(Optional.of(drawer), desk.problems(), desk.notes());
    }

    private Drawer drawer(Sheet sheet) {
        Optional<CsvRecord> head = sheet.next();
        List<MeasuredSpring> springs = new ArrayList<>();
        if (head.isEmpty()) {
            desk.problem(
                    Place.of(file.name()),
                    "nothing",
                    "a first row that names the columns: wire, outside, free length, coils",
                    "Start from examples/drawer.csv.");
        } else if (heads(sheet, head.get())) {
            for (Optional<CsvRecord> row = sheet.next(); row.isPresent(); row = sheet.next()) {
                SpringRow cells = new SpringRow(
                        sheet, row.get(), columns, headings, head.get().getFieldCount(), desk);
                cells.spring().ifPresent(springs::add);
            }
        }
        return new Drawer(springs, desk.unknowns());
    }

    /** Understands the first row; false where it lacks what no spring can be without. */
    private boolean heads(Sheet sheet, CsvRecord head) {
        for (int i = 0; i < head.getFieldCount(); i++) {
            head(sheet, head, i);
        }
        boolean all = needed(sheet, head, "wire") & needed(sheet, head, "free length");
        all &= needed(sheet, head, "outside", "inside", "mean");
        all &= needed(sheet, head, "coils", "active coils");
        return all;
    }

    private void head(Sheet sheet, CsvRecord head, int i) {
        String text = head.getField(i);
        Optional<Heading> heading =
                Heading.of(text, KEYS, k -> Field.of("spring", k).dimension());
        Place place = sheet.place(head, i);
        if (heading.isEmpty()) {
            unknownHead(text, place);
        } else if (columns.putIfAbsent(heading.get().key(), i) == null) {
            headings.put(heading.get().key(), heading.get());
        } else if (!heading.get().key().equals("remarks")) {
            desk.problem(
                    place,
                    text,
                    "each column once",
                    "“" + heading.get().key() + "” is there already: rename one or take it away.");
        }
    }

    private void unknownHead(String text, Place place) {
        if (!text.isBlank()) {
            String known = String.join(", ", FIELDS.stream().map(Field::key).toList());
            desk.problem(new Problem(
                    place,
                    text,
                    "one of " + known,
                    KEYS.nearest(text),
                    "Correct the head of this column, or call it remarks."));
        }
    }

    private boolean needed(Sheet sheet, CsvRecord head, String... anyOf) {
        for (String key : anyOf) {
            if (columns.containsKey(key)) {
                return true;
            }
        }
        String wanted = String.join(" or ", anyOf);
        desk.problem(
                sheet.place(head, 0),
                "no column " + wanted,
                "columns wire, outside, free length and coils",
                "Add the column " + anyOf[0] + "; where a spring was not measured write: don't know.");
        return false;
    }
}
