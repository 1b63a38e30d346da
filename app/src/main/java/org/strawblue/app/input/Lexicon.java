package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.strawblue.core.table.Table;

/**
 * A family of words, each with the other ways people write it. Upper case, spaces, hyphens, underscores and the
 * spelling of one side of the Atlantic or the other make no difference.
 */
public final class Lexicon {

    private static final Table WORDS = Table.of(Lexicon.class, "words.csv");

    private static final Map<String, String> SPELLINGS = spellings();

    private final Map<String, String> byForm = new LinkedHashMap<>();

    private final Map<String, String> written = new LinkedHashMap<>();

    /** @param words each word with its other forms */
    public Lexicon(Map<String, ? extends Collection<String>> words) {
        words.forEach((word, also) -> {
            add(word, word);
            also.forEach(form -> add(form, word));
        });
    }

    /** The words of one family of {@code words.csv}. */
    public static Lexicon of(String family) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        WORDS.rows().stream()
                .filter(r -> r.text("family").equals(family))
                .forEach(r ->
                        words.put(r.text("word"), forms(r.optionalText("also").orElse(""))));
        return new Lexicon(words);
    }

    /** Forms parted by {@code |}. */
    static List<String> forms(String also) {
        return Arrays.stream(also.split("\\|")).filter(s -> !s.isBlank()).toList();
    }

    /** The word meant, in our own spelling. */
    public Optional<String> find(String text) {
        return Optional.ofNullable(byForm.get(normal(text)));
    }

    /** The known form most like the text, where one is like enough to have been meant. */
    public Optional<String> nearest(String text) {
        return Nearest.of(normal(text), byForm.keySet()).map(f -> written.getOrDefault(f, f));
    }

    /** The words in our own spelling, in the order of the list. */
    public Set<String> words() {
        return new LinkedHashSet<>(byForm.values());
    }

    /** Every form, as written in the list, longest first: what a scanner should try. */
    List<String> longestFirst() {
        List<String> forms = new ArrayList<>(written.values());
        forms.sort((a, b) -> b.length() - a.length());
        return forms;
    }

    private void add(String form, String word) {
        byForm.putIfAbsent(normal(form), word);
        written.putIfAbsent(normal(form), form);
    }

    /** How forms are compared: small letters, nothing between them, one spelling. */
    static String normal(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_‐‑'’`´-]+", "");
        if (plain.isEmpty()) {
            return text.strip(); // a word that is nothing but a dash
        }
        for (var spelling : SPELLINGS.entrySet()) {
            plain = plain.replace(spelling.getKey(), spelling.getValue());
        }
        return plain;
    }

    private static Map<String, String> spellings() {
        Map<String, String> all = new LinkedHashMap<>();
        Table.of(Lexicon.class, "spellings.csv").rows().forEach(r -> all.put(r.text("british"), r.text("american")));
        return all;
    }
}
