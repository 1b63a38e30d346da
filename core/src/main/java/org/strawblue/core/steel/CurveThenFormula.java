package org.strawblue.core.steel;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;

/** A grade's published curve where it tells, its composition beyond the curve's ends. */
record CurveThenFormula(AnchoredCurve curve, TemperingLaw formula) implements TemperingLaw {

    private static final Finding BEYOND = new Finding.Note(
            Phrase.of("Reckoned from the composition here"),
            Phrase.of("The published curves of this grade do not reach so far at this time."),
            Phrase.of("Expect the wider interval, or choose a temper within the curve."));

    @Override
    public HollomonJaffe exchange() {
        return curve.exchange();
    }

    @Override
    public Answer<Estimate> hardness(Temper temper) {
        Answer<Estimate> published = curve.hardness(temper);
        if (published.value().isPresent()) {
            return published;
        }
        Answer<Estimate> reckoned = formula.hardness(temper);
        if (reckoned.value().isEmpty()) {
            return published;
        }
        List<Finding> findings = new ArrayList<>(reckoned.findings());
        findings.add(BEYOND);
        return new Answer<>(reckoned.value(), findings);
    }

    @Override
    public double spread() {
        return curve.spread();
    }
}
