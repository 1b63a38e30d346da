package org.strawblue.core.fit;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.part.Feature;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;

/** What is said of each kind of size, before hardening and after. */
final class FinishingWords {

    private static final Estimate OVER = Figures.ALL.estimate("reamer_over", Dimension.LENGTH);

    private FinishingWords() {}

    static String make(Feature feature) {
        return switch (feature.kind()) {
            case OUTSIDE -> "Turn " + feature.name() + " to";
            case BORE -> "Bore or ream " + feature.name() + " to";
            case LENGTH -> "Face " + feature.name() + " to";
            case FLAT -> "Mill or file " + feature.name() + " to";
        };
    }

    static List<FinishingStep> before(Feature feature, Band size, Band stock, Estimate change) {
        Phrase reason = feature.kind() == Feature.Kind.BORE
                ? Phrase.of(
                        "This leaves {} to take out when hard, though the hole may open or close by {}.",
                        stock,
                        change.band())
                : Phrase.of(
                        "This leaves {} to take off when hard; hardening changes the size by {}.",
                        stock,
                        change.band());
        List<FinishingStep> steps = new ArrayList<>();
        steps.add(new FinishingStep(Phrase.of(make(feature) + " {}.", size), reason));
        if (feature.kind() == Feature.Kind.BORE) {
            steps.add(new FinishingStep(
                    Phrase.of("A reamer that does it measures {}.", reamer(size)),
                    Phrase.of(
                            "Reamers cut {} over their own size; a reamer of the finished size would leave nothing to"
                                    + " lap.",
                            OVER.band())));
        }
        return steps;
    }

    static List<FinishingStep> after(Feature feature, Band limits, FinishMethod method) {
        String verb = method == FinishMethod.GRIND ? "Grind " : "Lap ";
        return List.of(new FinishingStep(
                Phrase.of(verb + feature.name() + " to {}.", limits), Phrase.of(how(feature.kind(), method))));
    }

    private static String how(Feature.Kind kind, FinishMethod method) {
        if (method == FinishMethod.GRIND) {
            return "After the last temper, in light cuts with coolant: a grinding burn softens the skin.";
        }
        return switch (kind) {
            case OUTSIDE -> "After the last temper, with a slit ring of brass or iron and fine abrasive; measure cold.";
            case BORE ->
                "After the last temper, with a slit copper or brass lap, turned often end for end so that the"
                        + " hole does not bell; measure cold and clean.";
            case LENGTH, FLAT ->
                "After the last temper, on a flat stone or plate with fine abrasive, turning it as you" + " go.";
        };
    }

    private static Band reamer(Band hole) {
        return new Band(Dimension.LENGTH, hole.low() - OVER.value(), hole.high() - OVER.value());
    }
}
