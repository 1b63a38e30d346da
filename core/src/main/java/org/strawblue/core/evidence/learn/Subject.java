package org.strawblue.core.evidence.learn;

import org.strawblue.core.evidence.sample.Influence;

/**
 * One property of one thing of the shop: the offset of the kitchen oven, the hardness of this bar of O1.
 *
 * @param device what the person calls it
 */
public record Subject(Influence influence, String device) implements Comparable<Subject> {

    public Subject {
        device = device.strip();
        if (device.isEmpty()) {
            throw new IllegalArgumentException("a thing of the shop must have a name");
        }
    }

    @Override
    public int compareTo(Subject other) {
        int byDevice = device.compareTo(other.device);
        return byDevice == 0 ? influence.compareTo(other.influence) : byDevice;
    }
}
