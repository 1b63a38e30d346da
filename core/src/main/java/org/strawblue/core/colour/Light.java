package org.strawblue.core.colour;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The light a film is looked at in. The same film is named a little differently under a lamp. */
public enum Light {
    DAYLIGHT("daylight", "day", "sun", "sky", "d65", "window"),
    LAMP("lamp", "incandescent", "tungsten", "halogen", "a", "bulb"),
    WARM_LED("warm LED", "warm white LED", "led-warm", "led warm"),
    NEUTRAL_LED("neutral LED", "LED", "cool LED", "led-neutral", "led neutral", "shop light");

    private final String word;
    private final List<String> also;

    Light(String word, String... also) {
        this.word = word;
        this.also = List.of(also);
    }

    public String word() {
        return word;
    }

    /** The light people call {@code text}; upper and lower case do not count. */
    public static Optional<Light> find(String text) {
        String sought = text.strip();
        return Arrays.stream(values())
                .filter(l -> l.word.equalsIgnoreCase(sought) || l.also.stream().anyMatch(sought::equalsIgnoreCase))
                .findFirst();
    }
}
