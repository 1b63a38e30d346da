package org.strawblue.core.evidence.learn;

/**
 * What one job, or one log, tells of a property of one thing, apart from what was believed before: its likelihood, as a bell.
 *
 * @param value where it points, in the core's unit
 * @param low one chance in ten that the truth of this job lies below
 * @param high one chance in ten that it lies above
 * @param common half the 80 % interval of an error that all that was told by this instrument has in common, not within low and high
 * @param from which job or log: the same one counts once
 */
public record Told(double value, double low, double high, double common, String from) {

    public Told {
        if (!(low <= value && value <= high && low < high && common >= 0)) {
            throw new IllegalArgumentException("not in order: " + low + ", " + value + ", " + high);
        }
    }

    /** What was told without an error in common. */
    public Told(double value, double low, double high, String from) {
        this(value, low, high, 0, from);
    }
}
