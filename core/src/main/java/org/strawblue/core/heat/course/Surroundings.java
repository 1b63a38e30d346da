package org.strawblue.core.heat.course;

/** A setting as a part of one section meets it. */
interface Surroundings {

    /** Works out the flow into a part of this mean temperature [K] after a time [s] in the setting. */
    void into(Flow flow, double seconds, double kelvin);

    /** Of a part heated in one stretch only, the stretch: see {@link FastLimits}. */
    static Surroundings of(Setting setting, Section section) {
        if (setting instanceof Setting.Partly partly) {
            return of(partly.there(), section);
        }
        if (setting instanceof Setting.OnSaggingPlate sagging) {
            return on(sagging.on(), section, new Tent(sagging.on(), sagging.capacity(), sagging.recovery()));
        }
        return setting instanceof Setting.OnPlate plate
                ? on(plate, section, new Tent(plate, 0, 0))
                : new AllRound(setting, section);
    }

    private static Surroundings on(Setting.OnPlate plate, Section section, Tent tent) {
        return section.round() ? new LinePlate(plate, section, tent) : new FlatPlate(plate, section, tent);
    }
}
