package org.strawblue.core.heat.course;

/** A setting the part stays in for a time [s]. */
public record Spell(Setting setting, double seconds) {

    public Spell {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("a spell lasts longer than nothing, not " + seconds + " s");
        }
    }
}
