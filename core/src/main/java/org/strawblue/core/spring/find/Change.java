package org.strawblue.core.spring.find;

import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.spring.Pocket;

/**
 * A change of the pocket that would let a spring of the drawer work.
 *
 * @param what to do, with figures
 * @param share by which that figure changes [1]
 * @param changed the pocket afterwards
 * @param spring that would work then
 */
public record Change(Phrase what, double share, Pocket changed, MeasuredSpring spring) {

    /** As a note: what to do, which spring works then, how little it is. */
    public Finding told() {
        String template = what.template();
        String sentence = Character.toUpperCase(template.charAt(0)) + template.substring(1) + ", and “"
                + spring.name().replace("{}", "{ }") + "” works.";
        return new Finding.Note(
                new Phrase(sentence, what.amounts()),
                Phrase.of(
                        "It is the least change of that figure after which a spring works: {}.",
                        Quantity.fraction(share)),
                Phrase.of("Go a little further, to leave room for what was measured wrong."));
    }
}
