package org.strawblue.core.evidence.observe;

import org.strawblue.core.colour.Light;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.oxide.FilmPalette;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.quantity.Band;

/** One thing seen or measured. Temperatures [K], hardness [HRC], lengths [m]. */
public sealed interface Observation {

    Seen seen();

    /** What a melting crayon did on the hot part. */
    enum Melt {
        DRY,
        BARELY,
        SLICK
    }

    /** What a file did. */
    enum Bite {
        BITES,
        BARELY,
        SKATES
    }

    /** Before or after tempering. */
    enum State {
        QUENCHED,
        TEMPERED
    }

    /** How a snapped piece looks. */
    enum Break {
        BENDS,
        COARSE,
        FINE
    }

    /** A melting crayon of a rating [K] drawn over the part. */
    record Crayon(double rating, Melt melt, Seen seen) implements Observation {}

    /** An infrared gun set to an emissivity reads this [K] on a surface. */
    record Infrared(double reading, double setting, Surface surface, Seen seen) implements Observation {}

    /**
     * A temper colour, by its name or picked from swatches.
     *
     * @param film thicknesses that look so [m]
     */
    record Colour(String word, Band film, Light light, Seen seen) implements Observation {

        /** The film whose colour is nearest to a swatch, "#rrggbb"; absent where that is no colour. */
        public static java.util.Optional<Colour> picked(String hex, Light light, Seen seen) {
            if (!hex.matches("#[0-9a-fA-F]{6}")) {
                return java.util.Optional.empty();
            }
            FilmColours colours = FilmColours.standard();
            double step = FilmPalette.limit() / SWATCHES;
            double best = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= SWATCHES; i++) {
                double off = difference(colours.colour(i * step, light).hex(), hex);
                best = off < least ? i * step : best;
                least = Math.min(least, off);
            }
            // as far to either side as eyes differ in picking
            Band film = new Band(
                    org.strawblue.core.quantity.Dimension.LENGTH, best / Picking.FACTOR, best * Picking.FACTOR + step);
            return java.util.Optional.of(new Colour(hex, film, light, seen));
        }

        private static double difference(String a, String b) {
            double sum = 0;
            for (int k = 1; k < 7; k += 2) {
                int x = Integer.parseInt(a.substring(k, k + 2), 16);
                int y = Integer.parseInt(b.substring(k, k + 2), 16);
                sum += (double) (x - y) * (x - y);
            }
            return sum;
        }

        public static Colour named(ColourName name, Light light, Seen seen) {
            return new Colour(name.word(), FilmColours.standard().band(name, light), light, seen);
        }
    }

    /** Steps in which swatches are gone through. */
    int SWATCHES = 400;

    /** An instrument shows the temperature [K] of the part itself, or of a twin of it that was heated beside it. */
    record PartReads(double reading, TemperatureIndicator by, Seen seen) implements Observation {}

    /** An instrument, or the dial, shows the temperature [K] of oven, plate or sand. */
    record SourceReads(double reading, TemperatureIndicator by, Seen seen) implements Observation {}

    /** Whether a magnet held while the part was hot. */
    record Magnet(boolean holds, Seen seen) implements Observation {}

    /**
     * A file tried on it.
     *
     * @param level what the file is hardened to [HRC]; a common file's where it is none of a graded set
     * @param graded whether it is one of a graded set
     */
    record File(double level, boolean graded, Bite bite, State state, Seen seen) implements Observation {}

    /**
     * A ball pressed into the part and a reference piece with the same force.
     *
     * @param ball diameter of the ball [m]
     * @param dent diameter of the dent in the part [m]
     * @param referenceDent in the reference [m]
     * @param reference its hardness [HRC]
     */
    record Indent(double ball, double dent, double referenceDent, double reference, State state, Seen seen)
            implements Observation {}

    /** A hardness tester, its figure [HRC]. */
    record Tester(double reading, State state, Seen seen) implements Observation {}

    /** A coupon quenched with the part and snapped. */
    record SnappedCoupon(Break look, Seen seen) implements Observation {}

    /** Whether it goes where it has to: kept with the rest, but it tells nothing of heat. */
    record TrialFit(boolean goes, Seen seen) implements Observation {}
}
