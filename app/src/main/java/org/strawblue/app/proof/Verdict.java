package org.strawblue.app.proof;

import java.util.OptionalDouble;

/**
 * What came of one case.
 *
 * @param ours what the program gives, as text in the case's unit; empty where it gave nothing
 * @param difference ours less published, in the case's unit; absent for words and ranges
 * @param meets whether ours agrees with the published value within the tolerance
 * @param fault why nothing could be compared; empty where something could
 */
public record Verdict(Case check, String ours, OptionalDouble difference, boolean meets, String fault) {

    /** A check must agree; a control must not; neither may fail to run. */
    public boolean passed() {
        return fault.isEmpty() && meets != check.control();
    }

    static Verdict faulty(Case check, String fault) {
        return new Verdict(check, "", OptionalDouble.empty(), false, fault);
    }
}
