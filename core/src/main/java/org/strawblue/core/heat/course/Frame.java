package org.strawblue.core.heat.course;

/** Temperatures [K] of a section's nodes at one moment [s], in the order of its {@link SectionGrid}. */
@SuppressWarnings("ArrayRecordComponent") // copied in and out
public record Frame(double seconds, double[] kelvin) {

    public Frame {
        kelvin = kelvin.clone();
    }

    @Override
    public double[] kelvin() {
        return kelvin.clone();
    }
}
