package org.strawblue.core.source;

/**
 * What one number of a result rests on.
 *
 * @param what the number, in a few words: "Ac1 of O1", "tempering curve of O1"
 * @param source key into the {@link Bibliography}
 */
public record Basis(String what, String source, Standing standing) implements Comparable<Basis> {

    private static final java.util.Comparator<Basis> ORDER = java.util.Comparator.comparing(Basis::what)
            .thenComparing(Basis::source)
            .thenComparing(Basis::standing);

    @Override
    public int compareTo(Basis other) {
        return ORDER.compare(this, other);
    }
}
