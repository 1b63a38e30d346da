package org.strawblue.core.spring;

import java.util.Optional;

/**
 * A compression spring as its owner measured it.
 *
 * @param name what the owner calls it
 * @param row its row in the drawer file, 0 where it came from none
 * @param wire wire diameter [m]
 * @param outsideDiameter free [m]
 * @param freeLength [m]
 * @param totalCoils from tip to tip, closed coils counted [1]
 * @param ends absent where nobody noted how they are formed
 * @param material in the owner's words; absent where not known
 * @param quantity how many lie there
 * @param seen what is known beyond the sizes
 */
public record MeasuredSpring(
        String name,
        int row,
        double wire,
        double outsideDiameter,
        double freeLength,
        double totalCoils,
        Optional<Ends> ends,
        Optional<String> material,
        MeasurementErrors errors,
        int quantity,
        Seen seen) {

    /** Of which no more than the sizes is known. */
    public MeasuredSpring(
            String name,
            int row,
            double wire,
            double outsideDiameter,
            double freeLength,
            double totalCoils,
            Optional<Ends> ends,
            Optional<String> material,
            MeasurementErrors errors,
            int quantity) {
        this(
                name,
                row,
                wire,
                outsideDiameter,
                freeLength,
                totalCoils,
                ends,
                material,
                errors,
                quantity,
                Seen.nothing());
    }

    public MeasuredSpring {
        if (!(wire > 0) || !(outsideDiameter > 2 * wire) || !(freeLength > 0) || !(totalCoils > 0)) {
            throw new IllegalArgumentException("no such spring: wire " + wire + ", outside " + outsideDiameter
                    + ", length " + freeLength + ", coils " + totalCoils);
        }
    }

    public MeasuredSpring with(Seen more) {
        return with(errors, more);
    }

    /** The same, measured with other errors. */
    public MeasuredSpring with(MeasurementErrors other) {
        return with(other, seen);
    }

    private MeasuredSpring with(MeasurementErrors other, Seen more) {
        return new MeasuredSpring(
                name, row, wire, outsideDiameter, freeLength, totalCoils, ends, material, other, quantity, more);
    }

    /** The errors, with the doubt about the ends in them where these are not known. */
    public MeasurementErrors allErrors() {
        return ends.isPresent() ? errors : errors.endsUnknown();
    }
}
