package org.strawblue.core.quantity;

import java.util.List;

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
