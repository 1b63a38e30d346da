package org.strawblue.core.oxide;

import java.util.List;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.history.Trace;

/** From a heat to the colour it leaves, and back. */
public final class FilmColours {

    private static final FilmColours STANDARD = new FilmColours();

    private FilmColours() {}

    public static FilmColours standard() {
        return STANDARD;
    }

    /** The exposure of the trade's usual chart [s]: what to take where no time is given. */
    public double chartSeconds() {
        throw new UnsupportedOperationException("being built");
    }

    /**
     * The colour a heat leaves on clean, plain carbon or low-alloy steel.
     *
     * @param chromium of the steel [mass %]; beyond 1.5 the interval widens, beyond 6 there is no answer
     */
    public Answer<ColourReading> after(Trace trace, Light light, double chromium) {
        throw new UnsupportedOperationException("being built");
    }

    /** The temperature [K] at which a steel shows a colour after a time [s] there. */
    public Answer<Estimate> temperatureFor(ColourName name, double seconds, Light light, double chromium) {
        throw new UnsupportedOperationException("being built");
    }

    /** The temperature [K] at which a film reaches a thickness [m] in a time [s]. */
    public Answer<Estimate> temperatureFor(double thickness, double seconds, double chromium) {
        throw new UnsupportedOperationException("being built");
    }

    /** The colours of plain carbon steel at {@code n} evenly spaced temperatures [K], after a time [s] at each. */
    public List<RibbonColour> ribbon(double seconds, Light light, double fromKelvin, double toKelvin, int n) {
        throw new UnsupportedOperationException("being built");
    }
}
