package org.strawblue.core.steel;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.quantity.Unit;
import org.strawblue.core.quantity.Units;
import org.strawblue.core.table.Row;
import org.strawblue.core.table.Table;

/**
 * How much of an element the composition law of tempering answers for.
 *
 * @param answered content for which an answer is given, as a share of mass
 * @param known highest content in the data behind the law, as a share of mass
 */
record TemperingLimit(Element element, Band answered, double known) {

    private static final Unit PERCENT = Units.of(Dimension.FRACTION, "%");

    static final List<TemperingLimit> ALL = Table.of(TemperingLimit.class, "tempering-limits.csv").rows().stream()
            .map(TemperingLimit::of)
            .toList();

    private static TemperingLimit of(Row row) {
        return new TemperingLimit(
                Element.find(row.text("element")).orElseThrow(),
                new Band(Dimension.FRACTION, PERCENT.toSi(row.number("low_pct")), PERCENT.toSi(row.number("high_pct"))),
                PERCENT.toSi(row.number("data_high_pct")));
    }

    /** A stop where the law does not answer for this much, a note where the data end short of it. */
    Optional<Finding> check(Composition steel) {
        double share = PERCENT.toSi(element == Element.MO ? TemperingFigures.molybdenum(steel) : steel.of(element));
        if (!answered.contains(share)) {
            return Optional.of(outside(share));
        }
        return element != Element.W && element != Element.CU && share > known
                ? Optional.of(beyondData(share))
                : Optional.empty();
    }

    private Finding outside(double share) {
        return new Finding.Stop(
                Phrase.of(
                        element.symbol() + " of {} lies outside {} to {}",
                        Quantity.fraction(share),
                        Quantity.fraction(answered.low()),
                        Quantity.fraction(answered.high())),
                Phrase.of("Tempered hardness is reckoned from composition only where such steels have been tested;"
                        + " rich alloys harden again on tempering, which no sum of elements tells."),
                Phrase.of("Name the grade, if it has a published tempering curve, or give points of the steel's own"
                        + " sheet."));
    }

    private Finding beyondData(double share) {
        return new Finding.Note(
                Phrase.of(
                        element.symbol() + " of {} is more than any steel tested, {}",
                        Quantity.fraction(share),
                        Quantity.fraction(known)),
                Phrase.of("The law is carried a little beyond its data; the interval widens for it."),
                Phrase.of("Prove it on a test piece if the hardness matters."));
    }
}
