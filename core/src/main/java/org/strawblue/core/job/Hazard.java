package org.strawblue.core.job;

/** A caution for the person's safety, shown at the step where the hazard is. Texts lie in {@code hazards.csv}. */
public record Hazard(String key, String text) {}
