package org.strawblue.core.heat.course;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.estimate.Validity;
import org.strawblue.core.heat.SteelProperties;
import org.strawblue.core.history.Trace;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;

/** Whether a course lies within what the fast model is good for. */
final class FastLimits {

    private static final String LAW = "The fast model of heating";
    private static final Validity PART = temperature("A temperature", "hottest");
    private static final Validity GAS = temperature("A flame", "hottest-flame");
    private static final Validity SECTION = new Validity(
            LAW,
            "A section",
            new Band(
                    Dimension.LENGTH,
                    Air.FAST.si("thinnest", Dimension.LENGTH),
                    Air.FAST.si("thickest", Dimension.LENGTH)));
    private static final Validity TIME =
            new Validity(LAW, "A course", new Band(Dimension.TIME, 0, Air.FAST.si("longest", Dimension.TIME)));

    private FastLimits() {}

    static List<Finding> stops(Course course) {
        Section section = Section.of(course.shape());
        return Stream.of(
                        PART.check(course.start()).stream(),
                        SECTION.check(course.shape().section()).stream(),
                        SECTION.check(section.height()).stream(),
                        TIME.check(course.duration()).stream(),
                        course.spells().stream().flatMap(s -> stops(s.setting())))
                .flatMap(s -> s)
                .distinct()
                .toList();
    }

    /** Where the inside of the part does not keep pace with its surface. */
    static List<Finding> cautions(Course course) {
        double depth = course.shape().section() / 2;
        double most = course.spells().stream()
                .mapToDouble(s -> film(s.setting()))
                .max()
                .orElse(0);
        double lag = most * depth / SteelProperties.conductivity(course.start());
        return lag <= Air.FAST.number("keeps-pace") ? List.of() : List.of(lags());
    }

    private static Finding local() {
        return new Finding.Stop(
                Phrase.of("A part heated in one stretch is beyond the fast model."),
                Phrase.of("It takes the part as one; heat that runs along it is left out."),
                Phrase.of("Ask the full model; take evidence from the stretch itself."));
    }

    private static Finding lags() {
        return new Finding.Caution(
                Phrase.of("The inside of this part does not keep pace with its surface."),
                Phrase.of("The fast model takes the section as in step with the heat that flows through it."),
                Phrase.of("Ask the full model for the moment of a quench or a fierce flame."));
    }

    private static double film(Setting setting) {
        if (setting instanceof Setting.InBath bath) {
            return bath.strength()
                    * DoubleStream.of(bath.film().coefficient()).max().orElse(0);
        }
        return setting instanceof Setting.InFlame flame ? flame.film() : 0;
    }

    private static Stream<Finding> stops(Setting setting) {
        if (setting instanceof Setting.Partly) {
            return Stream.of(local());
        }
        if (setting instanceof Setting.OnSaggingPlate sagging) {
            return stops(sagging.on());
        }
        return setting instanceof Setting.InFlame flame
                ? Stream.of(GAS.check(flame.gas()), PART.check(flame.room())).flatMap(Optional::stream)
                : DoubleStream.of(temperatures(setting)).boxed().flatMap(t -> PART.check(t).stream());
    }

    private static double[] temperatures(Setting setting) {
        if (setting instanceof Setting.OnPlate plate) {
            return ends(plate.plate(), plate.room());
        }
        if (setting instanceof Setting.InOven oven) {
            return new double[] {oven.mean() - Math.abs(oven.swing()), oven.mean() + Math.abs(oven.swing())};
        }
        if (setting instanceof Setting.InLoggedOven oven) {
            return ends(oven.log(), oven.log().kelvin(0));
        }
        if (setting instanceof Setting.AsLogged log) {
            return ends(log.log(), log.log().kelvin(0));
        }
        return new double[] {
            setting instanceof Setting.InBath bath
                    ? bath.bath()
                    : setting instanceof Setting.InSand sand ? sand.sand() : ((Setting.InAir) setting).room()
        };
    }

    private static double[] ends(Trace trace, double other) {
        double coldest = DoubleStream.of(trace.kelvin()).min().orElseThrow();
        return new double[] {coldest, trace.peak(), other};
    }

    private static Validity temperature(String what, String hottest) {
        return new Validity(
                LAW,
                what,
                new Band(
                        Dimension.TEMPERATURE,
                        Air.FAST.si("coldest", Dimension.TEMPERATURE),
                        Air.FAST.si(hottest, Dimension.TEMPERATURE)));
    }
}
