package org.strawblue.core.watch;

import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Tempering;

/** What a part is taken off the heat for: a measure that only grows while it is hot, and the limits it must end within. */
public sealed interface Goal {

    /** The measure once a place's history is over. */
    double of(PlaceWatch place);

    /** Limits of the measure. */
    Band limits();

    /** The value of the measure to aim for. */
    double best();

    /**
     * A hardness.
     *
     * @param wanted [HRC]
     * @param limits Hollomon–Jaffe parameters [K] whose expected hardness is wanted
     * @param best parameter [K] with the greatest chance of it
     */
    record Hardness(Band wanted, Band limits, double best) implements Goal {
        @Override
        public double of(PlaceWatch place) {
            return place.temper().parameter();
        }
    }

    /**
     * Film colours.
     *
     * @param first the first of them
     * @param last the last of them
     * @param limits film thickness [m]
     */
    record Colour(ColourName first, ColourName last, Band limits) implements Goal {
        @Override
        public double of(PlaceWatch place) {
            return place.film().value().map(f -> f.thickness(place.end())).orElse(0.0);
        }

        @Override
        public double best() {
            return limits.middle();
        }
    }

    /** The highest temperature the metal gets [K]. */
    record Peak(Band limits) implements Goal {
        @Override
        public double of(PlaceWatch place) {
            return place.trace().peak();
        }

        @Override
        public double best() {
            return limits.middle();
        }
    }

    /**
     * A hardness, by the steel's tempering law; refused where no temper gives it.
     *
     * @param seconds about how long such a heat counts as, at its peak [s]
     */
    static Answer<Goal> hardness(Steel steel, Band wanted, double seconds) {
        return Tempering.temperature(steel, wanted, seconds)
                .then(choice -> Tempering.law(steel).map(law -> {
                    double low = law.exchange().parameter(choice.window().low(), seconds);
                    double high = law.exchange().parameter(choice.window().high(), seconds);
                    double best = law.exchange().parameter(choice.aim().value(), seconds);
                    return new Hardness(wanted, Band.between(Dimension.TEMPERATURE, low, high), best);
                }));
    }

    /** One colour; refused where its name has but one edge or this steel does not show it. */
    static Answer<Goal> colour(ColourName name, Light light, double chromium) {
        FilmColours films = FilmColours.standard();
        Answer<?> told = films.temperatureFor(name, films.chartSeconds(), light, chromium);
        if (told.value().isEmpty()) {
            return Answer.refused(told.findings());
        }
        return Answer.of(new Colour(name, name, films.band(name, light)), told.findings());
    }

    /** From one colour to another. */
    static Answer<Goal> colours(ColourName first, ColourName last, Light light, double chromium) {
        return colour(first, light, chromium)
                .then(a -> colour(last, light, chromium)
                        .map(b -> new Colour(
                                first,
                                last,
                                new Band(
                                        Dimension.LENGTH,
                                        Math.min(a.limits().low(), b.limits().low()),
                                        Math.max(a.limits().high(), b.limits().high())))));
    }
}
