package org.strawblue.core.assembly;

import java.util.ArrayList;
import java.util.List;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;

/** What to mind when a screw is locked. */
final class LockingFindings {

    private LockingFindings() {}

    static List<Finding> of(Lock lock) {
        List<Finding> all = new ArrayList<>();
        all.add(skin());
        if (lock.metal().primer() != Metal.Primer.NO) {
            all.add(primer(lock));
        }
        double least = Figures.ALL.si("cure_least", Dimension.TEMPERATURE);
        if (lock.room() < least) {
            all.add(new Finding.Caution(
                    Phrase.of("At {} it hardly sets.", Quantity.temperature(lock.room())),
                    Phrase.of("Below {} the times told here mean little.", Quantity.temperature(least)),
                    Phrase.of(
                            "Bring it into a warm room, or set it warm: {} at {}, below any temper.",
                            Quantity.time(Figures.ALL.si("heat_cure_time", Dimension.TIME)),
                            Quantity.temperature(Figures.ALL.si("heat_cure", Dimension.TEMPERATURE)))));
        }
        return all;
    }

    /** The fluid creeps: clearances [m] of what slides nearby. */
    static Finding creeps(Band clearance) {
        Band best = Figures.ALL.estimate("retaining_gap", Dimension.LENGTH).band();
        double widest = Figures.ALL.si("largest_gap", Dimension.LENGTH);
        boolean inside = clearance.high() >= best.low() && clearance.low() <= best.high();
        return new Finding.Caution(
                Phrase.of("The sliding clearance of {} is a place where it would set.", clearance),
                inside
                        ? Phrase.of(
                                "Locking fluid creeps into narrow gaps by itself and is strongest in gaps of {}.", best)
                        : Phrase.of(
                                "Locking fluid creeps into narrow gaps by itself and sets in any up to {}.",
                                Quantity.length(widest)),
                Phrase.of(
                        "Put it on the screw, not in the hole; in a blind hole on the lowest threads of the hole, little; wipe"
                                + " off what comes out; oil the slide first as a dam; lay it so that nothing runs to it; work the"
                                + " slide every minute until it is set. Where a dry set screw or a locknut will do, use that."));
    }

    static Finding twistsOff(Lock lock, Estimate loose, Estimate twist) {
        return new Finding.Caution(
                Phrase.of(
                        "A " + lock.thread().name() + " locked so may twist off before it comes loose: it holds {}.",
                        loose.band()),
                Phrase.of("The core of a common screw of this size yields at about {}.", twist.quantity()),
                Phrase.of("Take the next weaker strength, put it on half the thread, or count on heat to get it out."));
    }

    static Finding gapTooWide(double gap) {
        return new Finding.Stop(
                Phrase.of("It does not set in a gap of {}.", Quantity.length(gap)),
                Phrase.of(
                        "Anaerobics set between metals that nearly touch, without air; the most is {}.",
                        Quantity.length(Figures.ALL.si("largest_gap", Dimension.LENGTH))),
                Phrase.of("Use a locknut, a nylon plug, or a resin that fills gaps."));
    }

    private static Finding primer(Lock lock) {
        boolean needed = lock.metal().primer() == Metal.Primer.NEEDED;
        return new Finding.Caution(
                Phrase.of("On " + lock.metal().name() + " it sets slowly" + (needed ? ", or not at all." : ".")),
                Phrase.of(
                        "Bare iron or copper on the surface sets it off; plating, oxide and chromium keep it fluid, and what"
                                + " stays fluid runs into the slide."),
                Phrase.of("Brighten both threads, or wipe them with the activator sold for it."));
    }

    private static Finding skin() {
        return new Finding.Caution(
                Phrase.of("Locking fluid and its activator irritate skin and eyes."),
                Phrase.of("Many people become allergic to it for good."),
                Phrase.of(
                        "Gloves, a window open; the maker's sheet comes first. Degrease with what is allowed where you"
                                + " are."));
    }
}
