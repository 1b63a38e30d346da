package org.strawblue.app.input;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Unit;

/**
 * What the head of a column says: a word, and the unit of its numbers if it names one: "wire (mm)", "OD [in]",
 * "time, h", "temp_c", "wire mm".
 *
 * @param key the column meant, in our own spelling
 */
record Heading(String key, Optional<Unit> unit) {

    private static final Pattern BRACKETS = Pattern.compile("(.*\\S)\\s*[(\\[]\\s*([^()\\[\\]]+?)\\s*[)\\]]");
    private static final Pattern TAIL = Pattern.compile("(.*?[^\\s_,])(?:[\\s_,]+in[\\s_]+|[\\s_,]+)([^\\s_,]+)");

    /** @param dimension of the column of that key, none where it holds words */
    static Optional<Heading> of(String text, Lexicon keys, Function<String, Optional<Dimension>> dimension) {
        String head = text.strip();
        Matcher brackets = BRACKETS.matcher(head);
        if (brackets.matches()) {
            Optional<Heading> found = split(brackets.group(1), brackets.group(2), keys, dimension);
            if (found.isPresent()) {
                return found;
            }
        }
        Optional<Heading> plain = keys.find(head).map(k -> new Heading(k, Optional.empty()));
        if (plain.isPresent()) {
            return plain;
        }
        Matcher tail = TAIL.matcher(head);
        return tail.matches() ? split(tail.group(1), tail.group(2), keys, dimension) : Optional.empty();
    }

    private static Optional<Heading> split(
            String word, String unit, Lexicon keys, Function<String, Optional<Dimension>> dimension) {
        return keys.find(word)
                .flatMap(k -> dimension
                        .apply(k)
                        .flatMap(d -> UnitWords.of(d).find(unit))
                        .map(u -> new Heading(k, Optional.of(u))));
    }
}
