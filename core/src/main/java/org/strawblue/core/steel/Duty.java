package org.strawblue.core.steel;

import java.util.Set;

/**
 * What a tool has to do.
 *
 * @param key how the program calls it
 * @param names every way people say it
 */
public record Duty(String key, Set<String> names) {

    public Duty {
        names = Set.copyOf(names);
    }
}
