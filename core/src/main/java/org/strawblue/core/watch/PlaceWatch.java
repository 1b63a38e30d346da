package org.strawblue.core.watch;

import java.util.List;
import java.util.stream.IntStream;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.ColourReading;
import org.strawblue.core.oxide.FilmRun;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.TemperRun;

/**
 * One place of a part, watched: hardness and film colour at any moment of its history.
 *
 * @param film refused where this steel's colour tells nothing at all
 */
public record PlaceWatch(Trace trace, TemperRun temper, Answer<FilmRun> film) {

    /** First moment [s] there is anything to read. */
    double start() {
        return trace.second(0);
    }

    /** The end of the history [s]. */
    public double end() {
        return trace.second(trace.size() - 1);
    }

    /** @param seconds after the start and not after the end [s] */
    public Reading at(double seconds) {
        Temper equivalent = temper.equivalent(seconds);
        return new Reading(seconds, trace.at(seconds), equivalent, temper.hardness(seconds), colour(seconds));
    }

    /** The same once all is over. */
    public Reading last() {
        return at(end());
    }

    /** The whole in {@code n} readings, evenly spaced in time. */
    public List<Reading> curve(int n) {
        return IntStream.rangeClosed(1, n)
                .mapToObj(i -> at(i == n ? end() : start() + trace.duration() * i / n))
                .toList();
    }

    private Answer<ColourReading> colour(double seconds) {
        return film.then(f -> f.at(seconds));
    }
}
