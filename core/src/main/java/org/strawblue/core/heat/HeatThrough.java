package org.strawblue.core.heat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;

/**
 * How long a part takes to come to heat in a source: the part as one temperature, its surroundings by {@link Exposure}.
 *
 * <p>Right to a few percent against a radial model where k/h is large against the section, which holds for every source here
 * but the oxy-fuel torches on thick parts. The interval is that of emissivity and film, which matter far more. A part counts as
 * through when within 10 K of a furnace; a torch must bring it to the temperature itself.
 */
public final class HeatThrough {

    private HeatThrough() {}

    /** State of the part's surface while it heats. */
    public enum Surface {
        /** Bright, straw or blue. */
        BRIGHT("bright"),
        OXIDISED("oxidised"),
        /** Bright at first, scaling above a dull red. */
        SCALING("in-the-fire");

        private final String key;

        Surface(String key) {
            this.key = key;
        }

        public Estimate emissivity() {
            return SteelProperties.HEAT.estimate(key, Dimension.FRACTION);
        }
    }

    /** Time [s] from {@code from} [K] until the part is at {@code target} [K] in a source set to it. */
    public static Answer<Estimate> time(
            PartShape shape, HeatSource source, double from, double target, Surface surface) {
        Estimate emissivity = surface.emissivity();
        Estimate film = film(source, shape);
        double end = end(source, target);
        boolean open = source.gas().isPresent();
        // walls that are hotter than the part heat it the faster the blacker it is; in the open it loses the more
        double most = open ? emissivity.low() : emissivity.high();
        double least = open ? emissivity.high() : emissivity.low();
        OptionalDouble middle =
                exposure(source, target, film.value(), emissivity.value()).heating(shape, from, end);
        OptionalDouble fast = exposure(source, target, film.high(), most).heating(shape, from, end);
        OptionalDouble slow = exposure(source, target, film.low(), least).heating(shape, from, end);
        if (middle.isEmpty() || fast.isEmpty()) {
            return Answer.refused(never(source, target));
        }
        TreeSet<Basis> bases = new TreeSet<>(emissivity.bases());
        bases.addAll(film.bases());
        bases.add(SteelProperties.basis());
        double value = middle.getAsDouble();
        Estimate time = Estimate.of(
                Dimension.TIME, value, Math.min(value, fast.getAsDouble()), slow.orElse(Double.MAX_VALUE), bases);
        return slow.isPresent() ? Answer.of(time) : Answer.of(capped(time), perhaps(source, target));
    }

    /** Where a part counts as hot in a source set to {@code target}, or must be brought to in a flame [K]. */
    public static double hot(HeatSource source, double target) {
        return end(source, target);
    }

    /**
     * The way of a part in a source set to {@code target}: by even steps of temperature from one [K] to another; none where the
     * source does not bring it there.
     */
    public static List<Passing> passing(
            PartShape shape, HeatSource source, double from, double to, double target, Surface surface, int steps) {
        Estimate emissivity = surface.emissivity();
        Estimate film = film(source, shape);
        boolean open = source.gas().isPresent();
        double most = open ? emissivity.low() : emissivity.high();
        double least = open ? emissivity.high() : emissivity.low();
        Exposure likely = exposure(source, target, film.value(), emissivity.value());
        Exposure fast = exposure(source, target, film.high(), most);
        Exposure slow = exposure(source, target, film.low(), least);
        List<Passing> way = new ArrayList<>(List.of(new Passing(from, 0, 0, 0)));
        for (int i = 1; i <= steps; i++) {
            double kelvin = from + (to - from) * i / steps;
            OptionalDouble middle = likely.heating(shape, from, kelvin);
            OptionalDouble quick = fast.heating(shape, from, kelvin);
            if (middle.isEmpty() || quick.isEmpty()) {
                return List.of();
            }
            double slowest = slow.heating(shape, from, kelvin).orElse(Double.POSITIVE_INFINITY);
            double time = middle.getAsDouble();
            way.add(new Passing(kelvin, time, Math.min(time, quick.getAsDouble()), Math.max(time, slowest)));
        }
        return way;
    }

    /** What such a way rests on. */
    public static Collection<Basis> bases(HeatSource source) {
        TreeSet<Basis> bases = new TreeSet<>(Surface.BRIGHT.emissivity().bases());
        bases.addAll(source.traits().film().bases());
        bases.add(SteelProperties.basis());
        return bases;
    }

    /** A hand torch heats one side of a thick part but laps all round a thin one. */
    private static Estimate film(HeatSource source, PartShape shape) {
        Estimate film = source.traits().film();
        if (!(source instanceof HeatSource.Torch torch) || shape.section() > torch.wraps()) {
            return film;
        }
        Estimate gain = SteelProperties.HEAT.estimate("torch-wrap-gain", Dimension.NUMBER);
        TreeSet<Basis> bases = new TreeSet<>(film.bases());
        bases.addAll(gain.bases());
        return Estimate.of(
                film.dimension(),
                film.value() * gain.value(),
                film.low() * gain.value(),
                film.high() * gain.value(),
                bases);
    }

    private static Estimate capped(Estimate time) {
        double factor = time.value() / time.low();
        return Estimate.of(Dimension.TIME, time.value(), time.low(), time.value() * factor * factor, time.bases());
    }

    private static double end(HeatSource source, double target) {
        double within = SteelProperties.HEAT.si("within", Dimension.TEMPERATURE_DIFFERENCE);
        return source.gas().isPresent() ? target : target - within;
    }

    static Exposure exposure(HeatSource source, double target, double film, double emissivity) {
        double room = SteelProperties.HEAT.si("room", Dimension.TEMPERATURE);
        if (source.gas().isPresent()) {
            return Exposure.to(film, source.gas().getAsDouble(), emissivity, room);
        }
        if (source instanceof HeatSource.HotPlate) {
            double share = SteelProperties.HEAT.number("plate-loss-share");
            double loss = SteelProperties.HEAT.number("plate-loss-film");
            // a plate is set above the target by what the part loses to the room, so that it settles there
            double lost = -new Exposure(0, target, share * emissivity, room, loss).flux(target);
            return new Exposure(film, target + lost / film, share * emissivity, room, loss);
        }
        return Exposure.to(film, target, emissivity, target);
    }

    private static Finding never(HeatSource source, double target) {
        return new Finding.Stop(
                Phrase.of("The " + source.name() + " does not bring this part to {}.", Quantity.temperature(target)),
                Phrase.of("The part loses as much heat as it takes up before it gets there."),
                Phrase.of("Build a hearth of firebrick round it, use a second torch, or a kiln."));
    }

    private static Finding perhaps(HeatSource source, double target) {
        return new Finding.Caution(
                Phrase.of("The " + source.name() + " only just brings this part to {}.", Quantity.temperature(target)),
                Phrase.of("A weaker flame or a draught, and it stops short."),
                Phrase.of("Heat it in a nest of firebrick out of the wind; watch that the heat still rises."));
    }
}
