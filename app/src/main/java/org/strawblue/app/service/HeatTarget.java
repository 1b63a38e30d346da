package org.strawblue.app.service;

import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.quantity.Band;

/** What a part is heated for. */
public sealed interface HeatTarget {

    /** @param wanted [HRC] */
    record Hardness(Band wanted) implements HeatTarget {}

    /** From one film colour to another; the two may be the same. */
    record Colours(ColourName first, ColourName last) implements HeatTarget {}
}
