package org.strawblue.core.job;

import java.util.Map;

/** What a part is made of, as the job file gives it. */
public sealed interface SteelChoice {

    /** A steel under a name of the trade: "O1", "silver steel", "1.2510". */
    record Named(String word) implements SteelChoice {}

    /** A steel by analysis: chemical symbol to content [mass %]. */
    record Analysed(Map<String, Double> composition) implements SteelChoice {
        public Analysed {
            composition = Map.copyOf(composition);
        }
    }
}
