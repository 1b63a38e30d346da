package org.strawblue.benchmarks.accuracy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.strawblue.core.steel.Composition;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Temper;

/** One measurement of the open tempering data set. */
record TemperingRow(
        String heat, String study, OptionalDouble asQuenched, Composition composition, Temper temper, double hrc) {

    private static final double ZERO_CELSIUS = 273.15;

    static List<TemperingRow> read(Path path) throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(path)) {
            return csv.stream().map(TemperingRow::of).toList();
        }
    }

    private static TemperingRow of(NamedCsvRecord r) {
        Map<Element, Double> percent = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            r.findField(element.symbol() + "_pct").ifPresent(v -> percent.put(element, Double.valueOf(v)));
        }
        String quenched = r.getField("hrc_as_quenched");
        String source = r.getField("source");
        return new TemperingRow(
                r.getField("heat_id"),
                source.substring(source.length() - 4),
                quenched.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(quenched)),
                Composition.of(percent),
                new Temper(number(r, "temp_c") + ZERO_CELSIUS, number(r, "time_s")),
                number(r, "hrc_tempered"));
    }

    private static double number(NamedCsvRecord r, String column) {
        return Double.parseDouble(r.getField(column));
    }

    double celsius() {
        return temper.kelvin() - ZERO_CELSIUS;
    }
}
