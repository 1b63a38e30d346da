package org.strawblue.core.job;

/**
 * A caution for the person's safety, shown at the step where the hazard is. Texts lie in {@code hazards.csv}.
 *
 * @param text in full
 * @param again in short, for a later step of the same card
 */
public record Hazard(String key, String text, String again) {

    /** A caution that reads the same each time. */
    public Hazard(String key, String text) {
        this(key, text, text);
    }

    /** The same caution where it has been given in full before. */
    public Hazard reminder() {
        return new Hazard(key, again);
    }
}
