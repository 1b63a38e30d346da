package org.strawblue.core.spring.family;

/** Which way a helical spring is wound. */
public enum Hand {
    LEFT,
    RIGHT
}
