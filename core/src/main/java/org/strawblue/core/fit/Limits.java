package org.strawblue.core.fit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * Limits of size after ISO 286: nominal size, letter, grade.
 *
 * <p>A to H and a to h, J S, k to u; grades 3 to 13; sizes to 120 mm. Figures are the tables', not the formulas behind
 * them, which round otherwise. Source: ISO 286-1 by way of printed extracts, each row of {@code deviations.csv} and
 * {@code tolerance_grades.csv} names its own.
 */
public final class Limits {

    private static final Pattern ZONE = Pattern.compile("\\s*(js|JS|Js|[A-Za-z])\\s*(\\d{1,2})\\s*");

    private Limits() {}

    /**
     * Limits of a size.
     *
     * @param nominal [m]
     * @param zone such as {@code H7}: capitals for holes, small letters for shafts
     * @return smallest and largest size [m], or why there are none
     */
    public static Answer<Band> of(double nominal, String zone) {
        Matcher matcher = ZONE.matcher(zone);
        if (!matcher.matches()) {
            return unknown(nominal, zone);
        }
        String letter = matcher.group(1);
        int grade = Integer.parseInt(matcher.group(2));
        Optional<Band> deviations = Character.isUpperCase(letter.charAt(0))
                ? Deviations.hole(nominal, letter, grade)
                : Deviations.shaft(nominal, letter, grade);
        return deviations
                .map(d -> Answer.of(new Band(Dimension.LENGTH, nominal + d.low(), nominal + d.high())))
                .orElseGet(() -> unknown(nominal, zone));
    }

    /** Least and greatest clearance of a shaft in a hole [m]; below 0 where it has to be pressed in. */
    public static Band clearance(Band hole, Band shaft) {
        return new Band(Dimension.LENGTH, hole.low() - shaft.high(), hole.high() - shaft.low());
    }

    /** What the limits of a zone rest on; nothing where there are none. */
    static List<Basis> bases(double nominal, String zone) {
        Matcher matcher = ZONE.matcher(zone);
        return matcher.matches()
                ? Deviations.bases(nominal, matcher.group(1), Integer.parseInt(matcher.group(2)))
                : List.of();
    }

    /** Over the lower limit [m], up to and including the upper; a size read in other units may miss it by a hair. */
    static boolean within(double nominal, double over, double upto) {
        double hair = nominal * 1e-9;
        return over < nominal - hair && nominal - hair <= upto;
    }

    private static Answer<Band> unknown(double nominal, String zone) {
        return Answer.refused(new Finding.Stop(
                Phrase.of(
                        "No limits are known for {} " + zone.strip().replace("{}", "") + ".", Quantity.length(nominal)),
                Phrase.of(
                        "The tables here hold sizes from {} to {}, grades 3 to 13, holes C to U, shafts c to u.",
                        Quantity.length(0),
                        Quantity.length(ToleranceGrades.largest())),
                Phrase.of("Write the limits out, as in 6.000 to 6.012 mm.")));
    }
}
