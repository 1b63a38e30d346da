package org.strawblue.core.spring;

/**
 * A spring cut shorter at one end.
 *
 * @param removed coils taken off [1]
 * @param atFirst whether the first end goes (else the second)
 * @param newEnd how the cut end is formed afterwards
 */
public record Cut(double removed, boolean atFirst, EndType newEnd) {

    /** The ends after the cut. */
    public Ends ends(Ends before) {
        return atFirst ? new Ends(newEnd, before.second()) : new Ends(before.first(), newEnd);
    }

    /** The spring after the cut: the pitch of its body stays, so the gap between coils and the stress at solid do. */
    public Coil of(Coil before) {
        Ends ends = ends(before.ends());
        double total = before.total() - removed;
        double free =
                before.pitch() * (total - ends.inactive() + ends.lengthPitches()) + ends.lengthWires() * before.wire();
        return new Coil(before.wire(), before.outside(), free, total, ends, before.stiffness());
    }
}
