package org.strawblue.core.evidence.diagnosis;

import java.util.List;
import java.util.Optional;
import org.strawblue.core.colour.Light;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.history.Trace;
import org.strawblue.core.oxide.FilmColours;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Element;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;
import org.strawblue.core.steel.Tempering;

/** What the temper makes of hardness and colour. */
final class TemperChecks {

    private TemperChecks() {}

    static Optional<Check> tooHard(Known known) {
        return temper(known, true);
    }

    static Optional<Check> tooSoft(Known known) {
        return temper(known, false);
    }

    private static Optional<Check> temper(Known known, boolean hard) {
        if (known.grade().isEmpty()
                || known.temper().isEmpty()
                || known.wanted().isEmpty()) {
            return Optional.empty();
        }
        Grade grade = known.grade().get();
        Temper temper = known.temper().get();
        Steel steel = grade.catalogued()
                ? Steel.ofGrade(grade.name()).with(grade.composition())
                : Steel.of(grade.composition());
        Band wanted = known.wanted().get();
        return Tempering.hardness(steel, List.of(temper))
                .value()
                .map(h -> new Check(
                        hard ? 1 - h.chanceBelow(wanted.high()) : h.chanceBelow(wanted.low()),
                        Phrase.of("that temper gives {}; wanted {}", h.band(), wanted),
                        h.bases().first()));
    }

    /** Chance that the chart's time moves the colour further than colours scatter. */
    static Optional<Check> time(Known known) {
        if (known.temper().isEmpty()) {
            return Optional.empty();
        }
        Temper temper = known.temper().get();
        FilmColours colours = FilmColours.standard();
        double chart = colours.chartSeconds();
        return colours.after(Trace.hold(temper.kelvin(), temper.seconds()), Light.DAYLIGHT, 0)
                .then(r -> colours.temperatureFor(r.thickness().value(), chart, 0))
                .value()
                .map(t -> {
                    double sd = t.band().width() / 2 / Normal.HALF_OF_80;
                    double off = Math.abs(t.value() - temper.kelvin()) / sd;
                    return new Check(
                            2 * Normal.below(off) - 1,
                            Phrase.of(
                                    "after {} the usual chart reads that colour as {}, and it was {}",
                                    Quantity.time(temper.seconds()),
                                    t.quantity(),
                                    Quantity.temperature(temper.kelvin())),
                            t.bases().first());
                });
    }

    static Optional<Check> chromium(Known known) {
        return known.grade().map(grade -> {
            double percent = grade.composition().of(Element.CR);
            String much = percent >= Figures.number("chromium-much")
                    ? "chromium-much"
                    : percent >= Figures.number("chromium-some") ? "chromium-some" : "chromium-none";
            return new Check(
                    Figures.number(much + "-chance"),
                    Phrase.of(grade.name() + " holds {} % chromium", Quantity.number(percent)),
                    Figures.ALL.basis("colours of chromium steels", much + "-chance"));
        });
    }
}
