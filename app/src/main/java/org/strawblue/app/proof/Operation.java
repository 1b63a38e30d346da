package org.strawblue.app.proof;

/** Something the program can compute, asked for by name in a check case. */
@FunctionalInterface
public interface Operation {

    /** @throws IllegalArgumentException where an input is missing or not understood; the case then fails */
    Result run(Inputs inputs);
}
