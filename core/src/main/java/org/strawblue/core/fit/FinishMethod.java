package org.strawblue.core.fit;

/** How hard steel is brought to size in this shop. */
public enum FinishMethod {
    /** With loose abrasive on a soft lap, a stone or a plate, by hand. */
    LAP,
    /** With a grinding wheel on a machine. */
    GRIND
}
