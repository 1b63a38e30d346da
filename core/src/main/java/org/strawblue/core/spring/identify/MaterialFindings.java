package org.strawblue.core.spring.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.AllowableStress;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.SpringMaterial;
import org.strawblue.core.spring.SpringMaterial.Key;

/** What follows from not being sure of the wire. */
final class MaterialFindings {

    private MaterialFindings() {}

    static List<Finding> of(MeasuredSpring s, MaterialOdds odds) {
        List<Finding> all = new ArrayList<>();
        List<Key> plausible = odds.plausible();
        Optional<SpringMaterial> weakest = PlausibleWire.weakest(odds, s.wire());
        if (plausible.size() > 1 && weakest.isPresent()) {
            all.add(weakest(odds, weakest.get(), s.wire()));
        }
        SpringMaterial.named(s)
                .filter(named -> odds.of(named.key()) < 0.5)
                .ifPresent(named -> all.add(new Finding.Caution(
                        Phrase.of("It is hardly " + named.name() + "."),
                        Phrase.of(
                                "What was seen and weighed leaves {} for that.",
                                Quantity.fraction(odds.of(named.key()))),
                        Phrase.of("Try the magnet on a nick at the dead end, where no plating hides the wire."))));
        if (odds.plausible().contains(Key.STAINLESS) && odds.ranked().get(0) != Key.STAINLESS) {
            all.add(new Finding.Caution(
                    Phrase.of(
                            "It may be stainless that looks like steel: {}.",
                            Quantity.fraction(odds.of(Key.STAINLESS))),
                    Phrase.of(
                            "Cold-drawn stainless takes the magnet a little, and bears a third less than music wire."),
                    Phrase.of("Weigh it: stainless gives about an eighth more than steel of the same sizes.")));
        }
        return all;
    }

    private static Finding weakest(MaterialOdds odds, SpringMaterial weakest, double wire) {
        AllowableStress bears = weakest.allowable(wire).orElseThrow();
        return new Finding.Note(
                Phrase.of("Stress is judged as if it were " + weakest.name() + "."),
                Phrase.of(
                        "It is the weakest of those that are plausible, with a chance of {}; it bears {}.",
                        Quantity.fraction(odds.of(weakest.key())),
                        new Quantity(Dimension.STRESS, bears.stress())),
                Phrase.of("No push test tells grades of steel apart; only their maker's word does."));
    }
}
