package org.strawblue.core.oxide;

import java.util.List;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Estimate;

/**
 * The colour to expect after a heat.
 *
 * @param colour the one to expect
 * @param thickness film thickness with its 80 % interval [m]
 * @param thinner colour at the low end of that interval
 * @param thicker colour at the high end
 * @param rivals what the other growth laws say, the bound of what is known
 */
public record ColourReading(
        Light light,
        FilmColour colour,
        Estimate thickness,
        FilmColour thinner,
        FilmColour thicker,
        List<Rival> rivals) {

    public ColourReading {
        rivals = List.copyOf(rivals);
    }

    /** What one rival growth law says of the same heat. */
    public record Rival(String law, FilmColour colour) {}
}
