package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.source.Basis;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/** The quenchants a small shop may have, from {@code quenchants.csv}. */
public final class Quenchants {

    private static final Unit CELSIUS = Units.of(Dimension.TEMPERATURE, "°C");
    private static final double INCH = Units.of(Dimension.LENGTH, "in").toSi(1);

    private static final Map<String, Quenchant> BY_KEY = new LinkedHashMap<>();
    private static final Vocabulary<Quenchant> VOCABULARY = new Vocabulary<>();

    static {
        Map<String, List<Row>> films = new LinkedHashMap<>();
        for (Row row : Table.of(Quenchants.class, "quench-films.csv").rows()) {
            films.computeIfAbsent(row.text("film"), k -> new ArrayList<>()).add(row);
        }
        for (Row row : Table.of(Quenchants.class, "quenchants.csv").rows()) {
            List<Row> film = films.getOrDefault(row.text("film"), List.of());
            add(row, quenchant(row, film));
        }
    }

    private Quenchants() {}

    public static List<Quenchant> all() {
        return List.copyOf(BY_KEY.values());
    }

    /** The quenchant of this key: "fast-oil". @throws IllegalArgumentException where there is none */
    public static Quenchant of(String key) {
        Quenchant quenchant = BY_KEY.get(key);
        if (quenchant == null) {
            throw new IllegalArgumentException("no quenchant " + key);
        }
        return quenchant;
    }

    /** The quenchant people call {@code word}. */
    public static Answer<Quenchant> find(String word) {
        List<Quenchant> meanings = VOCABULARY.meanings(word);
        return meanings.isEmpty() ? Answer.refused(unknown(word)) : Answer.of(meanings.get(0));
    }

    private static Finding unknown(String word) {
        List<String> near = VOCABULARY.nearest(word, 3);
        List<String> offered = near.isEmpty() ? List.copyOf(BY_KEY.keySet()) : near;
        return new Finding.Stop(
                Phrase.of("No quench is known here as “" + word.replace("{}", "{ }") + "”."),
                Phrase.of("How fast it cools is not known, so nothing can be said of what it hardens."),
                Phrase.of("Did you mean " + String.join(", ", offered) + "?"));
    }

    private static void add(Row row, Quenchant quenchant) {
        BY_KEY.put(quenchant.key(), quenchant);
        VOCABULARY.add(quenchant.key(), quenchant);
        VOCABULARY.add(quenchant.name(), quenchant);
        for (String word : row.text("words").split("\\|")) {
            VOCABULARY.add(word, quenchant);
        }
    }

    private static Quenchant quenchant(Row row, List<Row> film) {
        Basis basis = GradeTables.basis(row, "cooling power of " + row.text("name"));
        TreeSet<Basis> bases = new TreeSet<>(List.of(basis));
        film.forEach(f -> bases.add(GradeTables.basis(f, "cooling curve of " + row.text("film"))));
        return new Quenchant(
                row.text("key"),
                row.text("name"),
                Quenchant.Family.of(row.text("family")),
                new Film(
                        film.stream()
                                .mapToDouble(f -> CELSIUS.toSi(f.number("surface_C")))
                                .toArray(),
                        film.stream().mapToDouble(f -> f.number("h_W_m2K")).toArray()),
                Estimate.of(
                        Dimension.NUMBER,
                        row.number("strength"),
                        row.number("strength_low"),
                        row.number("strength_high"),
                        basis),
                Estimate.of(
                        Dimension.TEMPERATURE,
                        CELSIUS.toSi(row.number("bath_C")),
                        CELSIUS.toSi(row.number("bath_low_C")),
                        CELSIUS.toSi(row.number("bath_high_C")),
                        basis),
                new Band(Dimension.NUMBER, row.number("H_low_1_in") / INCH, row.number("H_high_1_in") / INCH),
                row.text("hazard"),
                bases);
    }
}
