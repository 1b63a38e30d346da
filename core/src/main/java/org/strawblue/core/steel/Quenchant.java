package org.strawblue.core.steel;

import java.util.Arrays;
import java.util.SortedSet;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.source.Basis;

/**
 * What the part is cooled in.
 *
 * @param key how the program calls it
 * @param name what the person reads
 * @param film heat transfer by surface temperature
 * @param strength how much stronger or weaker than the film's table this bath is, with its spread [1]
 * @param bath temperature to keep the bath at [K]
 * @param severity Grossmann's H, a label only [1/m]
 * @param hazard key of the cautions that belong to it
 */
public record Quenchant(
        String key,
        String name,
        Family family,
        Film film,
        Estimate strength,
        Estimate bath,
        Band severity,
        String hazard,
        SortedSet<Basis> bases) {

    /** Kinds of quench, the fiercest first. */
    public enum Family {
        BRINE,
        WATER,
        OIL,
        PLATES,
        AIR;

        /** The word used in data files and sentences. */
        public String word() {
            return switch (this) {
                case BRINE -> "brine";
                case WATER -> "water";
                case OIL -> "oil";
                case PLATES -> "plates";
                case AIR -> "air";
            };
        }

        /** @throws IllegalArgumentException where the word is none of ours */
        static Family of(String word) {
            return Arrays.stream(values())
                    .filter(f -> f.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("unknown quench '" + word + "'"));
        }
    }
}
