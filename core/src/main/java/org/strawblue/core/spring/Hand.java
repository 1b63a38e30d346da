package org.strawblue.core.spring;

/** Which way a helical spring is wound. */
public enum Hand {
    LEFT,
    RIGHT
}
