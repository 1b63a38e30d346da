package org.strawblue.core.evidence.judge;

import java.util.List;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.pyrometry.OvenDial;

/**
 * What an oven, plate or sand had in a history when an instrument in it was read. A thermometer shows the swing of the moment; a
 * dial shows the mean that is set.
 */
final class SourceHeat {

    private SourceHeat() {}

    static Measured clue(Observation.SourceReads o) {
        double spread = Math.hypot(o.by().errorAt(o.reading()).sd(), Looks.kelvin("mounting"));
        boolean mean = o.by() instanceof OvenDial;
        return new Measured(o.reading(), (e, i) -> kelvin(e, o.seen(), mean, i), spread);
    }

    /** [K]; NaN where the source has no temperature that could be read. */
    private static double kelvin(Ensemble ensemble, Seen seen, boolean mean, int draw) {
        Course course = ensemble.drawn(draw);
        List<Spell> spells = course.spells();
        double left = seen.seconds().orElse(0);
        int i = 0;
        while (i < spells.size() - 1 && left > spells.get(i).seconds()) {
            left -= spells.get(i).seconds();
            i++;
        }
        return kelvin(spells.get(i).setting(), Math.min(left, spells.get(i).seconds()), mean);
    }

    private static double kelvin(Setting setting, double seconds, boolean mean) {
        if (setting instanceof Setting.InOven oven) {
            double turns = seconds / oven.period() + oven.phase();
            return oven.mean() + (mean ? 0 : oven.swing() * Math.sin(2 * Math.PI * turns));
        }
        if (setting instanceof Setting.InLoggedOven oven) {
            return oven.log().at(seconds);
        }
        if (setting instanceof Setting.OnPlate plate) {
            return plate.plate().at(seconds);
        }
        return setting instanceof Setting.InSand sand ? sand.sand() : Double.NaN;
    }
}
