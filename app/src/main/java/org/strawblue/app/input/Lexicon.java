package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.strawblue.core.table.Table;
import org.strawblue.core.table.Vocabulary;

/**
 * A family of words, each with the other ways people write it. Upper case, spaces, hyphens, underscores and the
 * spelling of one side of the Atlantic or the other make no difference.
 */
public final class Lexicon {

    private static final Map<String, String> SPELLINGS = spellings();
    private static final Map<String, Map<String, List<String>>> FAMILIES = families();
    private static final Map<String, Lexicon> KNOWN = new ConcurrentHashMap<>();
    private static final int LONGEST = 60;

    private final Vocabulary<String> vocabulary = new Vocabulary<>();
    private final Set<String> words = new LinkedHashSet<>();
    private final List<String> longestFirst = new ArrayList<>();

    /** @param forms each word with its other forms */
    public Lexicon(Map<String, ? extends Collection<String>> forms) {
        forms.forEach((word, also) -> {
            words.add(word);
            add(word, word);
            also.forEach(form -> add(form, word));
        });
        longestFirst.sort((a, b) -> b.length() - a.length());
    }

    private void add(String form, String word) {
        vocabulary.add(oneSpelling(form), word);
        longestFirst.add(form);
    }

    /** The words of one family of {@code words.csv}. */
    public static Lexicon of(String family) {
        return KNOWN.computeIfAbsent(
                family,
                f -> new Lexicon(Optional.ofNullable(FAMILIES.get(f))
                        .orElseThrow(() -> new IllegalArgumentException("no family of words " + f))));
    }

    /** The word meant, in our own spelling. */
    public Optional<String> find(String text) {
        return text.length() > LONGEST
                ? Optional.empty()
                : vocabulary.meanings(oneSpelling(text)).stream().findFirst();
    }

    /** The known form most like the text, where one is like enough to have been meant. */
    public Optional<String> nearest(String text) {
        return nearest(vocabulary, oneSpelling(text));
    }

    /** The known form most like the text; a single letter is like nothing. */
    static Optional<String> nearest(Vocabulary<?> vocabulary, String text) {
        boolean hopeless = text.length() < 2 || text.length() > LONGEST;
        return hopeless
                ? Optional.empty()
                : vocabulary.nearest(text, 1).stream().findFirst();
    }

    /** The words in our own spelling, in the order of the list. */
    public Set<String> words() {
        return words;
    }

    /** Every form, as written in the list, longest first: what a scanner should try. */
    List<String> longestFirst() {
        return longestFirst;
    }

    /** Forms parted by {@code |}. */
    static List<String> forms(String also) {
        return Arrays.stream(also.split("\\|")).filter(s -> !s.isBlank()).toList();
    }

    /** Small letters in American spelling. */
    private static String oneSpelling(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replace('’', '\'');
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

    private static Map<String, Map<String, List<String>>> families() {
        Map<String, Map<String, List<String>>> families = new HashMap<>();
        Table.of(Lexicon.class, "words.csv")
                .rows()
                .forEach(r -> families.computeIfAbsent(r.text("family"), f -> new LinkedHashMap<>())
                        .put(r.text("word"), forms(r.optionalText("also").orElse(""))));
        return families;
    }
}
