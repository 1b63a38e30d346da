package org.strawblue.core.glow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.strawblue.core.colour.Planck;
import org.strawblue.core.colour.Srgb;
import org.strawblue.core.colour.Tristimulus;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * Heat colours as a guide, with their honest width: four authors differ by up to 250 °C for one name.
 *
 * <p>Luminance [cd/m²] ε·683·∫L(λ, T) ȳ dλ of a grey body; in a lit shop the steel also throws back ρE/π.
 */
public final class GlowGuide {

    private static final Constants N = Constants.of(GlowGuide.class, "glow.csv");
    private static final List<GlowColour> COLOURS = load();
    private static final Validity RANGE = new Validity(
            "The glow guide",
            "a temperature",
            new Band(
                    Dimension.TEMPERATURE,
                    N.si("lowest", Dimension.TEMPERATURE),
                    N.si("highest", Dimension.TEMPERATURE)));

    private GlowGuide() {}

    /** By rising temperature. */
    public static List<GlowColour> colours() {
        return COLOURS;
    }

    /** The heat colour of a name. */
    public static Optional<GlowColour> named(String name) {
        return COLOURS.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** How steel at a temperature [K] looks. */
    public static Answer<GlowReading> at(double kelvin) {
        return RANGE.check(kelvin).map(Answer::<GlowReading>refused).orElseGet(() -> reading(kelvin));
    }

    private static Answer<GlowReading> reading(double kelvin) {
        double glow = light(kelvin).y();
        double shop = N.number("reflectance") * N.inUnit("shop_illuminance", "lx") / Math.PI;
        GlowReading reading = new GlowReading(names(kelvin), glow, shop, hex(kelvin));
        return glow < shop ? Answer.of(reading, tooLight()) : Answer.of(reading);
    }

    private static List<GlowColour> names(double kelvin) {
        return COLOURS.stream()
                .filter(c -> c.temperature().band().contains(kelvin))
                .sorted(Comparator.comparingDouble(c -> Math.abs(c.temperature().value() - kelvin)))
                .toList();
    }

    private static Tristimulus light(double kelvin) {
        return Planck.light(kelvin).times(N.number("emissivity"));
    }

    private static String hex(double kelvin) {
        double[] linear = Srgb.linear(light(kelvin).times(1 / N.inUnit("exposure", "cd/m²")));
        return Srgb.hex(
                Arrays.stream(linear).map(v -> -Math.expm1(-Math.max(v, 0))).toArray());
    }

    private static Finding tooLight() {
        return new Finding.Caution(
                Phrase.of("In a lit shop this glow is hard to judge"),
                Phrase.of("A shop's light thrown back by the steel outshines its own."),
                Phrase.of("Dim the light or look into a shaded box, the same each time, and use a magnet besides."));
    }

    private static List<GlowColour> load() {
        Map<String, List<Row>> byName = new LinkedHashMap<>();
        for (Row row : Table.of(GlowGuide.class, "glow_readings.csv").rows()) {
            byName.computeIfAbsent(row.text("name"), k -> new ArrayList<>()).add(row);
        }
        return byName.entrySet().stream()
                .map(e -> colour(e.getKey(), e.getValue()))
                .toList();
    }

    private static GlowColour colour(String name, List<Row> rows) {
        double[] middles = rows.stream().mapToDouble(GlowGuide::middle).sorted().toArray();
        Estimate temperature = Estimate.of(
                Dimension.TEMPERATURE, median(middles), middles[0], middles[middles.length - 1], bases(name, rows));
        return new GlowColour(name, temperature, hex(temperature.value()));
    }

    private static double median(double[] rising) {
        int n = rising.length;
        return (rising[(n - 1) / 2] + rising[n / 2]) / 2;
    }

    private static double middle(Row row) {
        Unit unit = Units.of(Dimension.TEMPERATURE, row.text("unit"));
        return unit.toSi((row.number("from") + row.number("to")) / 2);
    }

    private static Collection<Basis> bases(String name, List<Row> rows) {
        return rows.stream()
                .map(r -> new Basis("heat colour " + name, r.text("source"), Standing.of(r.text("standing"))))
                .toList();
    }

    /** The Curie point of iron, above which it is not magnetic [K]. */
    static Quantity curiePoint() {
        return Quantity.temperature(N.si("curie_point", Dimension.TEMPERATURE));
    }

    static Basis curieBasis() {
        return N.basis("Curie point of iron", "curie_point");
    }
}
