package org.strawblue.app.service;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Place;
import org.strawblue.core.job.Picture;
import org.strawblue.core.oxide.ColourReading;

/**
 * All of one heat, for its files.
 *
 * @param rows the history, evenly in time
 * @param section absent where the part's own log leaves nothing to draw
 */
public record HeatStory(
        List<String> places, List<Row> rows, Picture.HeatClock clock, Optional<Picture.SectionWarming> section) {

    public HeatStory {
        places = List.copyOf(places);
        rows = List.copyOf(rows);
    }

    /** One moment [s]; a cell for each place. */
    public record Row(double seconds, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One place at one moment.
     *
     * @param kelvin temperature [K]
     * @param colour of the film; absent where it tells nothing or is not asked
     * @param hardness [HRC] were it cooled now; absent where it is not known
     */
    public record Cell(Place place, Estimate kelvin, Optional<ColourReading> colour, Optional<Estimate> hardness) {}
}
