package org.strawblue.core.evidence.judge;

import java.util.Optional;
import java.util.OptionalDouble;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Trace;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.steel.Steel;

/**
 * What is known of a heat apart from what was seen.
 *
 * @param histories how many are drawn
 */
public record Situation(Course course, Optional<Steel> steel, Priors priors, int histories, long seed) {

    private static final int USUAL = 5000;

    public Situation(Course course, Optional<Steel> steel, Priors priors) {
        this(course, steel, priors, USUAL, 1);
    }

    /**
     * A heat of which nothing is known but how long it lasted [s]: any temperature of a wide range, as likely as any other as
     * far as a bell can say so. What was seen must tell.
     */
    public static Situation unknownHeat(OptionalDouble seconds, Optional<Steel> steel) {
        double middle = Looks.ALL.si("unknown-heat", Dimension.TEMPERATURE);
        double spread = Looks.kelvin("unknown-heat-spread");
        double lasts = seconds.orElse(Looks.ALL.si("unknown-time", Dimension.TIME));
        Priors wide = Priors.usual()
                .with(
                        Influence.SENSOR_OFFSET,
                        Distribution.normal(0, spread),
                        new Basis("a heat of which nothing is known", "assumed", Standing.ASSUMED));
        // the shape does not matter to a part whose own temperature is given
        Course course = new Course(
                new PartShape.RoundBar(0.01, 0.05),
                SteelProperties.room(),
                java.util.List.of(new Spell(new Setting.AsLogged(Trace.hold(middle, lasts)), lasts)));
        return new Situation(course, steel, wide);
    }
}
