package org.strawblue.core.evidence.advice;

import org.strawblue.core.estimate.Constants;

/**
 * What each outcome costs, in the trouble of one more temper [1]; the person may change them.
 *
 * @param soft a part too soft is put to use
 * @param hard a part too hard is put to use
 */
public record Costs(double soft, double hard, double temperAgain, double hardenAgain, double look) {

    static final Constants ALL = Constants.of(Costs.class, "costs.csv");

    public Costs {
        if (!(soft >= 0 && hard >= 0 && temperAgain >= 0 && hardenAgain >= 0 && look >= 0)) {
            throw new IllegalArgumentException("a cost cannot be less than nothing");
        }
    }

    public static Costs usual() {
        return new Costs(
                ALL.number("too-soft"),
                ALL.number("too-hard"),
                ALL.number("temper-again"),
                ALL.number("harden-again"),
                ALL.number("look"));
    }
}
