package org.strawblue.core.history;

/** Where on a part a temperature is taken. */
public enum Place {
    UNDERSIDE,
    TOP,
    EDGE,
    CORE,
    SURFACE
}
