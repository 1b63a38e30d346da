package org.strawblue.core.fit;

import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** Why a fit cannot be told, or the part not be made. */
final class FitFindings {

    private FitFindings() {}

    static Finding unknown(String text) {
        String words = String.join(
                ", ", PreferredFit.all().stream().map(PreferredFit::word).toList());
        return new Finding.Stop(
                Phrase.of("No fit is called " + text.strip().replace("{}", "") + "."),
                Phrase.of(
                        "A fit is written as hole and shaft (H7/g6), as an inch class (RC1 to RC9, LC1 to LC11, LT1 to LT6,"
                                + " LN1 to LN3, FN1 to FN5), or by its purpose."),
                Phrase.of("By purpose: " + words + "."));
    }

    static Finding outside(double nominal, String name, double from, double to) {
        return new Finding.Stop(
                Phrase.of("{} lies outside what is known of " + name + ": {}.", length(nominal), band(from, to)),
                Phrase.of("The table of this class holds no other sizes."),
                Phrase.of("Take the nearest ISO fit, or write the limits out."));
    }

    static Finding tooCoarse(String other, Band clearance, Band measured, double need) {
        return new Finding.Stop(
                Phrase.of(
                        "Measured to {}, the " + other + " leaves no size that keeps the clearance within {}.",
                        measured,
                        clearance),
                Phrase.of("What is not known of the one part, and of the other while it is made, is more than the fit"
                        + " allows."),
                Phrase.of(
                        "Measure both to within {} either way, take a wider fit, or make the part to the other by trying.",
                        length(need)));
    }

    static Finding twoPoint() {
        return new Finding.Note(
                Phrase.of("A size measured across two points does not show an odd-lobed shape."),
                Phrase.of(
                        "Centreless-ground bar and reamed holes are often three- or five-lobed: every diameter measures"
                                + " the same, and yet it jams."),
                Phrase.of("Try the bar in a ring or turn it in a V under an indicator; try the hole with a pin."));
    }

    private static Quantity length(double metres) {
        return Quantity.length(metres);
    }

    private static Band band(double low, double high) {
        return new Band(Dimension.LENGTH, low, high);
    }
}
