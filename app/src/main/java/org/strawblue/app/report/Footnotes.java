package org.strawblue.app.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.source.Source;
import org.strawblue.core.source.Standing;

/**
 * What the card's numbers rest on.
 *
 * @param weak what stands on memory or assumption, the marked numbers of the card
 * @param sources every other work used, by title
 */
public record Footnotes(List<Weak> weak, List<Source> sources) {

    /** The sign that marks a number resting on memory or assumption. */
    public static final String MARK = "†";

    /** What the brackets mean. */
    public static final String KEY = "In brackets behind a number: the truth lies there eight times in ten.";

    /** @param word the standing in words; @param what the numbers of that standing */
    public record Weak(String word, List<String> what) {}

    static Footnotes of(Collection<Basis> bases) {
        Map<Standing, Set<String>> weak = new EnumMap<>(Standing.class);
        Set<String> keys = new TreeSet<>();
        for (Basis basis : bases) {
            if (basis.standing().weak()) {
                weak.computeIfAbsent(basis.standing(), s -> new LinkedHashSet<>())
                        .add(Text.clean(basis.what()));
            } else {
                keys.add(basis.source());
            }
        }
        List<Weak> groups = new ArrayList<>();
        weak.forEach((standing, what) -> groups.add(new Weak(word(standing), List.copyOf(what))));
        return new Footnotes(List.copyOf(groups), sources(keys));
    }

    private static String word(Standing standing) {
        return standing == Standing.ASSUMED ? "Assumed" : "From memory";
    }

    private static List<Source> sources(Set<String> keys) {
        return keys.stream()
                .map(k -> Bibliography.find(k).orElseGet(() -> new Source(k, k, "")))
                .sorted(java.util.Comparator.comparing(Source::title))
                .toList();
    }
}
