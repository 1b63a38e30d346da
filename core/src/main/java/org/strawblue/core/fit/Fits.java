package org.strawblue.core.fit;

import java.util.List;
import org.strawblue.core.estimate.Answer;

/** Fits by any way the trade writes them: {@code H7/g6}, {@code RC4}, "sliding". */
public final class Fits {

    private static final List<FitStandard> STANDARDS = List.of(new Iso286(), new AsmeB41());

    private Fits() {}

    /**
     * Limits of hole and shaft.
     *
     * @param nominal [m]
     * @param inch whether a word means the inch class rather than the letters of ISO
     */
    public static Answer<Fit> of(double nominal, String text, boolean inch) {
        for (FitStandard standard : STANDARDS) {
            if (standard.reads(text)) {
                return standard.fit(nominal, text);
            }
        }
        return PreferredFit.find(text)
                .map(p -> of(nominal, p.designation(inch), inch))
                .orElseGet(() -> Answer.refused(FitFindings.unknown(text)));
    }

    /** Whether this is a way to write a fit, or why not; whether the tables hold it for a size is another question. */
    public static Answer<String> named(String text) {
        boolean known = STANDARDS.stream().anyMatch(s -> s.reads(text))
                || PreferredFit.find(text).isPresent();
        return known ? Answer.of(text) : Answer.refused(FitFindings.unknown(text));
    }
}
