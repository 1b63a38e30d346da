package org.strawblue.core.job;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;

/** What a picture of the card shows, as numbers; how it is drawn is the printer's matter. All in SI. */
public sealed interface Picture {

    Phrase caption();

    /**
     * The film colours of one steel over temperature, for one time and light.
     *
     * @param swatches by rising temperature, evenly spaced
     * @param target temperatures to aim for [K]
     * @param seconds how long the part is at temperature [s]
     */
    record ColourRibbon(Phrase caption, List<Swatch> swatches, Band target, double seconds, String light)
            implements Picture {
        public ColourRibbon {
            swatches = List.copyOf(swatches);
        }
    }

    /** @param hex display colour, "#rrggbb"; @param name the trade's name of it */
    record Swatch(double kelvin, String name, String hex) {}

    /**
     * Hardness after tempering, against temperature, for one time.
     *
     * @param wanted the hardness asked for [HRC]
     * @param chosen the temperatures chosen [K]; absent where none will do
     */
    record HardnessCurve(
            Phrase caption, List<CurvePoint> points, Optional<Band> wanted, Optional<Band> chosen, double seconds)
            implements Picture {
        public HardnessCurve {
            points = List.copyOf(points);
        }
    }

    /** Hardness [HRC] with its 80 % interval at one temperature [K]. */
    record CurvePoint(double kelvin, double hrc, double low, double high) {}

    /**
     * A compression spring to scale in its pocket. All lengths [m].
     *
     * @param bore inside diameter of the pocket, 0 where there is none
     * @param rod diameter of the rod, 0 where there is none
     */
    record SpringInPocket(
            Phrase caption,
            double wire,
            double outsideDiameter,
            double totalCoils,
            boolean closedEnds,
            boolean groundEnds,
            double freeLength,
            double lengthAtRest,
            double lengthAtFullTravel,
            double solidLength,
            double outsideDiameterAtFullTravel,
            double bore,
            double rod)
            implements Picture {}

    /**
     * Force against length, a straight line with its band, and the limits that matter.
     *
     * @param rate [N/m]
     * @param rateLow 80 % interval of it
     * @param forceAtRest asked for [N], absent where nothing was
     */
    record ForceLength(
            Phrase caption,
            double freeLength,
            double solidLength,
            double rate,
            double rateLow,
            double rateHigh,
            double lengthAtRest,
            double lengthAtFullTravel,
            Optional<Band> forceAtRest,
            Optional<Band> forceAtFullTravel,
            double forceAtSet)
            implements Picture {}

    /**
     * The section of a part while it warms, at some moments.
     *
     * @param cells the whole section in patches, x across, y up from the plate or tray it lies on
     * @param onPlate whether it lies on a hot plate at y = 0
     */
    record SectionWarming(Phrase caption, List<Cell> cells, List<Moment> moments, boolean onPlate) implements Picture {
        public SectionWarming {
            cells = List.copyOf(cells);
            moments = List.copyOf(moments);
        }
    }

    /** A patch of a section: its corners in turn [m]. */
    record Cell(List<Corner> corners) {
        public Cell {
            corners = List.copyOf(corners);
        }
    }

    /** [m] */
    record Corner(double x, double y) {}

    /** Temperatures [K] of the cells, in their order, a time [s] after the start. */
    record Moment(double seconds, List<Double> kelvin) {
        public Moment {
            kelvin = List.copyOf(kelvin);
        }
    }

    /**
     * Temperature of the named places against time, with the time to take the part off.
     *
     * @param traces one for each place, the hottest-heated first
     * @param wanted temperatures to take it off at [K]; absent where none was asked for
     * @param pull when to take it off [s]; absent where it never gets there
     * @param colours the film colour of the first place in its turn
     */
    record HeatClock(
            Phrase caption,
            List<ClockTrace> traces,
            Optional<Band> wanted,
            Optional<Band> pull,
            List<ColourSpan> colours)
            implements Picture {
        public HeatClock {
            traces = List.copyOf(traces);
            colours = List.copyOf(colours);
        }
    }

    /** @param place as a person calls it: "underside" */
    record ClockTrace(String place, List<ClockPoint> points) {
        public ClockTrace {
            points = List.copyOf(points);
        }

        /** At a time [s], straight between its points; before the first and after the last as there. */
        public ClockPoint at(double seconds) {
            int i = 1;
            while (i < points.size() - 1 && points.get(i).seconds() < seconds) {
                i++;
            }
            ClockPoint a = points.get(Math.min(i, points.size()) - 1);
            ClockPoint b = points.get(Math.min(i, points.size() - 1));
            double span = b.seconds() - a.seconds();
            double share = span > 0 ? Math.max(0, Math.min(1, (seconds - a.seconds()) / span)) : 0;
            return new ClockPoint(
                    seconds,
                    a.kelvin() + share * (b.kelvin() - a.kelvin()),
                    a.low() + share * (b.low() - a.low()),
                    a.high() + share * (b.high() - a.high()));
        }
    }

    /** Temperature [K] with its 80 % interval at a time [s]. */
    record ClockPoint(double seconds, double kelvin, double low, double high) {}

    /** A time [s] through which a film shows one name; {@code hex} at its middle. */
    record ColourSpan(double from, double to, String name, String hex) {}
}
