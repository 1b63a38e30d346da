package org.strawblue.core.spring;

import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.table.Table;

/** What people mean by the way a spring feels: "firm by thumb". Common practice, in wide bands. */
public final class Feel {

    private Feel() {}

    /** The band of forces [N]; absent where the words are none of the table's. */
    public static Optional<Band> force(String feel) {
        return Table.of(Feel.class, "feels.csv").rows().stream()
                .filter(r -> r.text("feel").equals(feel))
                .findFirst()
                .map(r -> new Band(Dimension.FORCE, r.number("low_N"), r.number("high_N")));
    }
}
