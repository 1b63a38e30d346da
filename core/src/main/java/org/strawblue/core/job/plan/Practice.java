package org.strawblue.core.job.plan;

import java.util.List;
import java.util.stream.DoubleStream;
import org.strawblue.core.estimate.Constants;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.job.Job;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** What the trade does where a job leaves it open, from {@code practice.csv}. */
final class Practice {

    private static final Constants FIGURES = Constants.of(Job.class, "practice.csv");

    private Practice() {}

    /** Time of one temper at heat [s]: by the heat source, and longer for a thick section in an oven or kiln. */
    static Estimate temperTime(HeatSource source, PartShape shape) {
        Estimate usual = FIGURES.estimate(timeKey(source), Dimension.TIME);
        if (!(source instanceof HeatSource.Oven || source instanceof HeatSource.Kiln)) {
            return usual;
        }
        double share = shape.section() / FIGURES.si("thickness-for-that", Dimension.LENGTH);
        double byThickness = share * FIGURES.si("temper-time-per-thickness", Dimension.TIME);
        return byThickness <= usual.value() ? usual : longer(usual, byThickness / usual.value());
    }

    private static Estimate longer(Estimate time, double times) {
        return Estimate.of(Dimension.TIME, time.value() * times, time.low() * times, time.high() * times, time.bases());
    }

    private static String timeKey(HeatSource source) {
        if (source instanceof HeatSource.HotPlate) {
            return "temper-time-hot-plate";
        }
        if (source instanceof HeatSource.SandTray) {
            return "temper-time-sand-tray";
        }
        if (source instanceof HeatSource.Torch || source instanceof HeatSource.Forge) {
            return "temper-time-torch";
        }
        return "temper-time-oven";
    }

    /** Hardness of a new ordinary file [HRC]. */
    static Estimate ordinaryFile() {
        return FIGURES.estimate("file-common", Dimension.HARDNESS);
    }

    /** How far to either side of a file's hardness it half bites [HRC]. */
    static double fileMargin() {
        return FIGURES.si("file-margin", Dimension.HARDNESS);
    }

    /** Right end of the hardness curve [K]. */
    static double curveTo() {
        return FIGURES.si("curve-to", Dimension.TEMPERATURE);
    }

    /** Chances [1] that are told as they are; beyond, the nearer limit is. */
    static Band tellableChance() {
        return FIGURES.estimate("tellable-chance", Dimension.FRACTION).band();
    }

    /** The chance from which on nothing need be said of a gap [1]. */
    static double enoughChance() {
        return FIGURES.si("enough-chance", Dimension.FRACTION);
    }

    /** Step of the usual set of graded files [HRC]. */
    static double fileStep() {
        return FIGURES.si("file-set-step", Dimension.HARDNESS);
    }

    /** The levels of the graded files usually sold as a set [HRC]. */
    static List<Double> fileSet() {
        double step = fileStep();
        double to = FIGURES.si("file-set-to", Dimension.HARDNESS);
        return DoubleStream.iterate(FIGURES.si("file-set-from", Dimension.HARDNESS), l -> l <= to, l -> l + step)
                .boxed()
                .toList();
    }

    /** Temperature of the workshop [K]. */
    static double room() {
        return FIGURES.si("room", Dimension.TEMPERATURE);
    }

    /** What a part is taken to be where its size is not known. */
    static PartShape usualShape() {
        return new PartShape.RoundBar(
                FIGURES.si("usual-diameter", Dimension.LENGTH), FIGURES.si("usual-length", Dimension.LENGTH));
    }

    /** Left end of the colour ribbon [K]. */
    static double ribbonFrom() {
        return FIGURES.si("ribbon-from", Dimension.TEMPERATURE);
    }

    /** Right end of the colour ribbon [K]. */
    static double ribbonTo() {
        return FIGURES.si("ribbon-to", Dimension.TEMPERATURE);
    }

    /** How much hotter than the part a covered plate is set [K]. */
    static double plateAbove() {
        return FIGURES.si("plate-above", Dimension.TEMPERATURE_DIFFERENCE);
    }

    /** Longest a part is left on a hot plate [s]. */
    static double plateLongest() {
        return FIGURES.si("plate-longest", Dimension.TIME);
    }

    /** Time in air after the plate that is reckoned [s]. */
    static double plateCooling() {
        return FIGURES.si("plate-cooling", Dimension.TIME);
    }

    /** Least difference of hardness that a file or a tester tells [HRC]. */
    static double tellableHardness() {
        return FIGURES.si("tellable-hardness", Dimension.HARDNESS);
    }

    /** Time at heat of a colour run by a torch [s]. */
    static double quickColour() {
        return FIGURES.si("temper-time-torch", Dimension.TIME);
    }

    /** Longest a part is left in an oven [s]. */
    static double ovenLongest() {
        return FIGURES.si("oven-longest", Dimension.TIME);
    }

    /** Time a hand takes to act [s]. */
    static double reaction() {
        return FIGURES.si("reaction", Dimension.TIME);
    }
}
