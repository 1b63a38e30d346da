package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/** The coefficients of one law, from {@code laws.csv}. */
public record Law(String name, Map<String, Double> terms, String source, Standing standing) {

    private static final Map<String, Law> ALL = load();
    private static final Map<String, Map<Element, Band>> LIMITS = limits();
    private static final Map<String, Double> ERRORS = Table.of(Law.class, "law-errors.csv").rows().stream()
            .collect(Collectors.toMap(r -> r.text("law") + ' ' + r.text("steel"), r -> r.number("rms")));

    public Law {
        terms = Map.copyOf(terms);
    }

    /** @throws IllegalArgumentException where there is no such law */
    public static Law of(String name) {
        Law law = ALL.get(name);
        if (law == null) {
            throw new IllegalArgumentException("no law " + name);
        }
        return law;
    }

    /** @throws IllegalArgumentException where the law has no such term */
    public double get(String term) {
        Double value = terms.get(term);
        if (value == null) {
            throw new IllegalArgumentException("law " + name + " has no term " + term);
        }
        return value;
    }

    /** What a number reckoned by this law rests on. */
    public Basis basis(String what) {
        return new Basis(what, source, standing);
    }

    /** Stops where the law may not be asked about this composition. */
    List<Finding> outside(Composition composition, String title) {
        List<Finding> stops = new ArrayList<>();
        LIMITS.getOrDefault(name, Map.of())
                .forEach((element, range) -> new Validity(title, element.symbol() + " (mass %)", range)
                        .check(composition.of(element))
                        .ifPresent(stops::add));
        return stops;
    }

    /** The range of one element [mass %] for which a law may be asked. */
    static Band limit(String law, Element element) {
        Band range = LIMITS.getOrDefault(law, Map.of()).get(element);
        if (range == null) {
            throw new IllegalArgumentException("no limit of " + element + " for " + law);
        }
        return range;
    }

    /** Root mean square error of the law for one kind of steel, in the unit of its result. */
    double rms(String steel) {
        Double rms = ERRORS.get(name + ' ' + steel);
        if (rms == null) {
            throw new IllegalArgumentException("no error of " + name + " for " + steel);
        }
        return rms;
    }

    /** constant + Σ coefficient · content, over the elements the law names. */
    double linear(Composition composition) {
        double sum = get("constant");
        for (Element element : Element.values()) {
            sum += terms.getOrDefault(element.symbol(), 0.0) * composition.of(element);
        }
        return sum;
    }

    /** c₀ + c₁x + … + c₅x⁵. */
    double polynomial(double x) {
        double sum = 0;
        for (int power = 5; power >= 0; power--) {
            sum = sum * x + terms.getOrDefault("c" + power, 0.0);
        }
        return sum;
    }

    private static Map<String, Map<Element, Band>> limits() {
        Map<String, Map<Element, Band>> all = new HashMap<>();
        for (Row row : Table.of(Law.class, "law-limits.csv").rows()) {
            Band range = new Band(Dimension.NUMBER, row.number("low_percent"), row.number("high_percent"));
            all.computeIfAbsent(row.text("law"), k -> new EnumMap<>(Element.class))
                    .put(Element.find(row.text("element")).orElseThrow(), range);
        }
        return all;
    }

    private static Map<String, Law> load() {
        Map<String, Map<String, Double>> terms = new HashMap<>();
        List<Row> rows = Table.of(Law.class, "laws.csv").rows();
        for (Row row : rows) {
            terms.computeIfAbsent(row.text("law"), k -> new HashMap<>()).put(row.text("term"), row.number("value"));
        }
        Map<String, Law> laws = new HashMap<>();
        for (Row row : rows) {
            String name = row.text("law");
            Map<String, Double> of = terms.getOrDefault(name, Map.of());
            laws.computeIfAbsent(name, k -> new Law(k, of, row.text("source"), Standing.of(row.text("standing"))));
        }
        return laws;
    }
}
