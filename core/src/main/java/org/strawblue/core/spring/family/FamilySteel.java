package org.strawblue.core.spring.family;

import org.strawblue.core.quantity.Dimension;

/** What disc springs and strips of spring steel are taken to be where nothing else is told. */
public final class FamilySteel {

    private FamilySteel() {}

    /** E [Pa] */
    public static double tension() {
        return Laws.OF.si("steel_tension", Dimension.STRESS);
    }

    /** w_M, rubbing between the discs of a pack [1]. */
    public static double rubBetween() {
        return Laws.OF.number("disc_rub_between");
    }

    /** w_R, rubbing at the edges [1]. */
    public static double rubAtEdges() {
        return Laws.OF.number("disc_rub_edges");
    }
}
