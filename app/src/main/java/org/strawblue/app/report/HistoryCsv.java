package org.strawblue.app.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.strawblue.app.service.HeatStory;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;

/** A heat as a table: a row for each moment; for each place temperature, film and hardness with what they may be instead. */
public final class HistoryCsv {

    private static final Unit NANOMETRE = Units.of(Dimension.LENGTH, "nm");

    private final HeatStory story;
    private final Unit degree;
    private final String letter;

    private HistoryCsv(HeatStory story, UnitSystem system) {
        this.story = story;
        this.degree = Units.of(Dimension.TEMPERATURE, system == UnitSystem.METRIC ? "°C" : "°F");
        this.letter = system == UnitSystem.METRIC ? "C" : "F";
    }

    public static String write(HeatStory story, UnitSystem system) {
        return new HistoryCsv(story, system).text();
    }

    private String text() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(head());
            story.rows().forEach(r -> csv.writeRecord(row(r)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private List<String> head() {
        List<String> head = new ArrayList<>(List.of("time_s"));
        for (String place : story.places()) {
            String p = place.replace(' ', '_') + "_";
            head.addAll(List.of(
                    p + letter,
                    p + "low_" + letter,
                    p + "high_" + letter,
                    p + "colour",
                    p + "hex",
                    p + "film_nm",
                    p + "film_low_nm",
                    p + "film_high_nm",
                    p + "HRC",
                    p + "low_HRC",
                    p + "high_HRC"));
        }
        return head;
    }

    private List<String> row(HeatStory.Row row) {
        List<String> cells = new ArrayList<>(List.of(number(row.seconds(), 2)));
        for (HeatStory.Cell cell : row.cells()) {
            three(cells, Optional.of(cell.kelvin()), degree, 1);
            cells.add(cell.colour().map(c -> c.colour().name().word()).orElse(""));
            cells.add(cell.colour().map(c -> c.colour().hex()).orElse(""));
            three(cells, cell.colour().map(c -> c.thickness()), NANOMETRE, 1);
            three(cells, cell.hardness(), Units.of(Dimension.HARDNESS, "HRC"), 1);
        }
        return cells;
    }

    private static void three(List<String> cells, Optional<Estimate> estimate, Unit unit, int decimals) {
        cells.add(estimate.map(e -> number(unit.fromSi(e.value()), decimals)).orElse(""));
        cells.add(estimate.map(e -> number(unit.fromSi(e.low()), decimals)).orElse(""));
        cells.add(estimate.map(e -> number(unit.fromSi(e.high()), decimals)).orElse(""));
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
