package org.strawblue.core.heat.course;

/** A setting as a part of one section meets it. */
interface Surroundings {

    /** Works out the flow into a part of this mean temperature [K] after a time [s] in the setting. */
    void into(Flow flow, double seconds, double kelvin);

    static Surroundings of(Setting setting, Section section) {
        if (setting instanceof Setting.OnPlate plate) {
            return section.round() ? new LinePlate(plate, section) : new FlatPlate(plate, section);
        }
        return new AllRound(setting, section);
    }
}
