package org.strawblue.core.quantity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sentence with numbers in it, kept apart from them so that whoever prints it chooses the units: each {@code {}} of
 * the template stands for one amount, in order.
 */
public record Phrase(String template, List<Amount> amounts) {

    private static final String SLOT = "{}";

    public Phrase {
        amounts = List.copyOf(amounts);
        int slots = (template.length() - template.replace(SLOT, "").length()) / SLOT.length();
        if (slots != amounts.size()) {
            throw new IllegalArgumentException(slots + " places for " + amounts.size() + " amounts: " + template);
        }
    }

    public static Phrase of(String template, Amount... amounts) {
        return new Phrase(template, List.of(amounts));
    }

    // written out, as are those of the other values a card compares: a record's own are linked at first use, which
    // slows a start
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Phrase p && template.equals(p.template) && amounts.equals(p.amounts);
    }

    @Override
    public int hashCode() {
        return 31 * template.hashCode() + amounts.hashCode();
    }

    /** Fills the places, each amount written by {@code writer}. */
    public String write(java.util.function.Function<Amount, String> writer) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (Amount amount : amounts) {
            int at = template.indexOf(SLOT, from);
            out.append(template, from, at).append(writer.apply(amount));
            from = at + SLOT.length();
        }
        return out.append(template.substring(from)).toString();
    }
}
