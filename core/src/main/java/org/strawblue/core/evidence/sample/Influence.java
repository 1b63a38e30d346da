package org.strawblue.core.evidence.sample;

import java.util.Arrays;
import java.util.Optional;

/**
 * What acts on a heat or on a reading of it and is not known: the influence quantities. What is believed of each lies in
 * {@code influences.csv} until the shop knows better. Values are in the core's units.
 */
public enum Influence {
    /** Air between a part and the plate or block it lies on [m]. */
    CONTACT_GAP,
    /** Plate under the part, true less stated [K]. */
    PLATE_OFFSET,
    /** Share of the plate's heat above the room that the air over it has, no cover on [1]. */
    ROOM_SHARE,
    /** Total emissivity of the part [1]. */
    PART_EMISSIVITY,
    /** Film coefficient of air, gas or bath, true over reckoned [1]. */
    FILM_FACTOR,
    /** Mean of an oven or kiln, true less set [K]. */
    OVEN_OFFSET,
    /** How far an oven goes to either side of its mean [K]. */
    OVEN_SWING,
    /** Where in its swing the oven was when the part went in [1]. */
    OVEN_PHASE,
    /** A sensor whose log is the heat source, true less shown [K]. */
    SENSOR_OFFSET,
    /** Rating at which this kit of crayons melts, less the one written [K]. */
    CRAYON_BIAS,
    /** Emissivity of the patch the infrared gun looks at, 8 to 14 µm [1]. */
    GUN_EMISSIVITY,
    /** Temperature of what a bright patch mirrors into the gun [K]. */
    REFLECTED,
    /** What this eye takes a film for, in temperature at equal time: seen less true [K]. */
    COLOUR_BIAS,
    /** Film growth on this steel over that of clean plain carbon steel [1]. */
    FILM_RATE,
    /** This batch's hardness less its kind's [HRC]. */
    STEEL_BATCH,
    /** The rest by which the tempering law is off here, in its own standard deviations [1]. */
    TEMPERING_LAW,
    /** Hardness as quenched, true less that of a full quench [HRC]. */
    AS_QUENCHED,
    /** By how much the fast model is off in time, in its own standard deviations [1]. */
    FAST_TIME,
    /** By how much the fast model is off in temperature, in its own standard deviations [1]. */
    FAST_LEVEL;

    /** The influence of a word; absent where the word is none of ours. */
    public static Optional<Influence> of(String key) {
        return Arrays.stream(values()).filter(i -> i.key().equals(key)).findFirst();
    }

    /** Its word in data files: "contact-gap". */
    public String key() {
        StringBuilder key = new StringBuilder();
        for (char c : name().toCharArray()) {
            key.append(c == '_' ? '-' : Character.toLowerCase(c));
        }
        return key.toString();
    }
}
