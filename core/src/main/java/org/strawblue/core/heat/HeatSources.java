package org.strawblue.core.heat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/** The heat sources a small shop may have, from {@code heat-sources.csv}. */
public final class HeatSources {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final Unit MILLIMETRE = Units.of(Dimension.LENGTH, "mm");

    private static final Map<String, HeatSource> BY_KEY = new LinkedHashMap<>();
    private static final Vocabulary<HeatSource> VOCABULARY = new Vocabulary<>();

    static {
        Table.of(HeatSources.class, "heat-sources.csv").rows().forEach(HeatSources::add);
    }

    private HeatSources() {}

    public static List<HeatSource> all() {
        return List.copyOf(BY_KEY.values());
    }

    /** The source of this key: "kitchen-oven". @throws IllegalArgumentException where there is none */
    public static HeatSource of(String key) {
        HeatSource source = BY_KEY.get(key);
        if (source == null) {
            throw new IllegalArgumentException("no heat source " + key);
        }
        return source;
    }

    /** The source people call {@code word}. */
    public static Answer<HeatSource> find(String word) {
        List<HeatSource> meanings = VOCABULARY.meanings(word);
        return meanings.isEmpty() ? Answer.refused(unknown(word)) : Answer.of(meanings.get(0));
    }

    private static Finding unknown(String word) {
        List<String> near = VOCABULARY.nearest(word, 3);
        List<String> offered = near.isEmpty() ? List.copyOf(BY_KEY.keySet()) : near;
        return new Finding.Stop(
                Phrase.of("No heat source is known here as “" + word.replace("{}", "{ }") + "”."),
                Phrase.of("How hot it gets and how evenly is not known."),
                Phrase.of("Did you mean " + String.join(", ", offered) + "?"));
    }

    private static void add(Row row) {
        HeatSource source = source(row);
        BY_KEY.put(row.text("key"), source);
        VOCABULARY.add(row.text("key"), source);
        VOCABULARY.add(row.text("name"), source);
        for (String word : row.text("words").split("\\|")) {
            VOCABULARY.add(word, source);
        }
    }

    private static HeatSource source(Row row) {
        Traits traits = traits(row);
        return switch (row.text("kind")) {
            case "hot-plate" -> new HeatSource.HotPlate(traits);
            case "oven" -> new HeatSource.Oven(traits);
            case "kiln" -> new HeatSource.Kiln(traits);
            case "torch" ->
                new HeatSource.Torch(
                        traits,
                        CELSIUS.toSi(row.number("gas_C")),
                        MILLIMETRE.toSi(row.number("even_mm")),
                        MILLIMETRE.toSi(row.optionalNumber("wraps_mm").orElse(0)));
            case "forge" -> new HeatSource.Forge(traits);
            case "sand-tray" -> new HeatSource.SandTray(traits);
            default -> throw new IllegalStateException("unknown kind of heat source on line " + row.line());
        };
    }

    private static Traits traits(Row row) {
        Basis basis = new Basis(
                "what a " + row.text("name") + " does", row.text("source"), Standing.of(row.text("standing")));
        return new Traits(
                row.text("key"),
                row.text("name"),
                Estimate.of(
                        Dimension.TEMPERATURE,
                        CELSIUS.toSi(row.number("reach_C")),
                        CELSIUS.toSi(row.number("reach_low_C")),
                        CELSIUS.toSi(row.number("reach_high_C")),
                        basis),
                row.number("offset_sd_K"),
                row.number("swing_K"),
                row.number("period_s"),
                row.number("uneven_K"),
                Estimate.of(
                        Dimension.NUMBER,
                        row.number("film_W_m2K"),
                        row.number("film_low_W_m2K"),
                        row.number("film_high_W_m2K"),
                        basis),
                row.text("hazard"),
                basis);
    }
}
