package org.strawblue.core.steel;

import java.util.Arrays;
import java.util.Optional;

/** The alloying elements a composition names. */
public enum Element {
    C("C"),
    MN("Mn"),
    SI("Si"),
    CR("Cr"),
    NI("Ni"),
    MO("Mo"),
    V("V"),
    W("W"),
    AL("Al"),
    CU("Cu");

    private final String symbol;

    Element(String symbol) {
        this.symbol = symbol;
    }

    /** The chemical symbol: "Mn". */
    public String symbol() {
        return symbol;
    }

    /** The element of a chemical symbol, in any case: "Mn", "mn". */
    public static Optional<Element> find(String symbol) {
        return Arrays.stream(values())
                .filter(e -> e.symbol.equalsIgnoreCase(symbol.strip()))
                .findFirst();
    }
}
