package org.strawblue.core.evidence.judge;

import java.util.Optional;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.history.Place;
import org.strawblue.core.pyrometry.InfraredReading;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.HardnessConversion;

/** Turns what was seen into what it says of each history. Absent where it says nothing of heat or hardness. */
final class Clues {

    private static final double FILE_SPREAD = Math.hypot(Looks.hrc("file-spread"), Looks.hrc("file-hand"));

    private Clues() {}

    static Optional<Clue> of(Observation seen) {
        if (seen instanceof Observation.Crayon o) {
            return Optional.of(crayon(o));
        }
        if (seen instanceof Observation.Infrared o) {
            return Optional.of(infrared(o));
        }
        if (seen instanceof Observation.Colour o) {
            return Optional.of(colour(o));
        }
        if (seen instanceof Observation.PartReads o) {
            double spread = Math.hypot(o.by().errorAt(o.reading()).sd(), Looks.kelvin("mounting"));
            return Optional.of(new Measured(o.reading(), (e, i) -> kelvin(e, o.seen(), i), spread));
        }
        if (seen instanceof Observation.SourceReads o) {
            return Optional.of(SourceHeat.clue(o));
        }
        return hardness(seen);
    }

    private static Optional<Clue> hardness(Observation seen) {
        if (seen instanceof Observation.Magnet o) {
            double curie = Looks.ALL.si("curie", Dimension.TEMPERATURE);
            double spread = Looks.kelvin("magnet-spread");
            return Optional.of(new Choice(
                    (e, i) -> {
                        double gone = Normal.nearlyBelow((kelvin(e, o.seen(), i) - curie) / spread);
                        return new double[] {1 - gone, gone};
                    },
                    o.holds() ? 0 : 1));
        }
        if (seen instanceof Observation.File o) {
            return Optional.of(file(o));
        }
        if (seen instanceof Observation.Indent o) {
            return Optional.of(new Measured(indentHrc(o), (e, i) -> hrc(e, o.seen(), o.state(), i), indentSpread(o)));
        }
        if (seen instanceof Observation.Tester o) {
            return Optional.of(
                    new Measured(o.reading(), (e, i) -> hrc(e, o.seen(), o.state(), i), Looks.hrc("tester-spread")));
        }
        return seen instanceof Observation.SnappedCoupon o ? Optional.of(snapped(o)) : Optional.empty();
    }

    /** Temperature of the place when it was looked at, or the highest it ever had. */
    private static double kelvin(Ensemble ensemble, Seen seen, int draw) {
        Place place = seen.place();
        return seen.seconds().isPresent()
                ? ensemble.kelvin(place, Math.min(seen.seconds().getAsDouble(), ensemble.duration()), draw)
                : ensemble.peak(place, draw);
    }

    /** Hardness of the place when the heat was over, or before it began. */
    private static double hrc(Ensemble ensemble, Seen seen, State state, int draw) {
        return state == State.QUENCHED
                ? ensemble.asQuenched(draw)
                : ensemble.hardness(seen.place(), ensemble.duration(), draw);
    }

    /** P(dry) = Φ((r − 8 − T)/s), P(slick) = Φ((T − r − 4)/s), s = √((0.0058 r)² + 3²), r and T in degrees. */
    private static Choice crayon(Observation.Crayon o) {
        double spread = Math.hypot(Looks.number("melt-share") * (o.rating() - ZERO), Looks.kelvin("melt-judged"));
        double below = Looks.kelvin("melt-below");
        double above = Looks.kelvin("melt-above");
        return new Choice(
                (e, i) -> {
                    double t = kelvin(e, o.seen(), i) - o.rating() - e.influence(Influence.CRAYON_BIAS, i);
                    double dry = Normal.nearlyBelow((-below - t) / spread);
                    double slick = Normal.nearlyBelow((t - above) / spread);
                    return new double[] {dry, Math.max(0, 1 - dry - slick), slick};
                },
                o.melt().ordinal());
    }

    private static final double ZERO =
            org.strawblue.core.quantity.Units.of(Dimension.TEMPERATURE, "°C").toSi(0);

    private static Measured infrared(Observation.Infrared o) {
        double own = Math.max(Looks.kelvin("gun-least"), Looks.number("gun-share") * Math.abs(o.reading() - ZERO));
        double spread = Math.hypot(own, Looks.kelvin("gun-contrast"));
        Estimate usual = o.surface().emissivity();
        Distribution surface =
                new Distribution(Distribution.Kind.LOGITNORMAL, usual.value(), usual.low(), usual.high());
        return new Measured(
                o.reading(),
                (e, i) -> {
                    double emissivity = e.influence(Influence.GUN_EMISSIVITY, i);
                    if (o.surface() != Surface.BRIGHT) {
                        // another surface: as far to its own side as this history's bright one is
                        emissivity = surface.at(
                                e.priors().of(Influence.GUN_EMISSIVITY).score(emissivity));
                    }
                    double reflected = e.influence(Influence.REFLECTED, i);
                    return InfraredReading.reads(o.setting(), kelvin(e, o.seen(), i), emissivity, reflected, reflected);
                },
                spread);
    }

    /** The film lies between the borders of the colour's name as this eye draws them. */
    private static Choice colour(Observation.Colour o) {
        double edge = Looks.number("colour-edge");
        double slope = Looks.number("eye-slope");
        double low = Math.log(Math.max(o.film().low(), 1e-10));
        double high = Math.log(o.film().high());
        return new Choice(
                (e, i) -> {
                    double seconds = Math.min(o.seen().seconds().orElse(e.duration()), e.duration());
                    double rate = Math.exp(slope * e.influence(Influence.COLOUR_BIAS, i));
                    double film = Math.log(e.film(o.seen().place(), seconds, i, rate));
                    double thinner = Normal.nearlyBelow((low - film) / edge);
                    double thicker = Normal.nearlyBelow((film - high) / edge);
                    return new double[] {thinner, Math.max(0, 1 - thinner - thicker), thicker};
                },
                1);
    }

    /** P(skates) = Φ((H − H_f − b)/s), P(bites) = Φ((H_f − b − H)/s). */
    private static Choice file(Observation.File o) {
        double spread = o.graded() ? FILE_SPREAD : Math.hypot(FILE_SPREAD, Looks.hrc("common-file-spread"));
        double barely = Looks.hrc("file-barely");
        return new Choice(
                (e, i) -> {
                    double over = hrc(e, o.seen(), o.state(), i) - o.level();
                    double skates = Normal.nearlyBelow((over - barely) / spread);
                    double bites = Normal.nearlyBelow((-barely - over) / spread);
                    return new double[] {bites, Math.max(0, 1 - skates - bites), skates};
                },
                o.bite().ordinal());
    }

    /**
     * HB = HB_ref (D − √(D² − d_ref²))/(D − √(D² − d²)), told as HRC by the table of ASTM E140, in which Vickers stands for Brinell:
     * only their ratio counts. Beyond the table's end that end.
     */
    private static double indentHrc(Observation.Indent o) {
        double ratio = depth(o.ball(), o.referenceDent()) / depth(o.ball(), o.dent());
        return rockwell(vickers(o.reference()) * ratio);
    }

    private static double indentSpread(Observation.Indent o) {
        double reading = 2 * Looks.length("dent-read") / o.dent();
        double share = Math.hypot(Looks.number("indent-share"), reading);
        double hv = vickers(indentHrc(o));
        return Math.max(Looks.hrc("tester-spread"), (rockwell(hv * (1 + share)) - rockwell(hv * (1 - share))) / 2);
    }

    private static double vickers(double hrc) {
        return HardnessConversion.vickers(Math.max(SOFTEST, Math.min(HARDEST, hrc)))
                .value()
                .orElseThrow()
                .value();
    }

    private static double rockwell(double hv) {
        return hv <= vickers(SOFTEST)
                ? SOFTEST
                : hv >= vickers(HARDEST)
                        ? HARDEST
                        : HardnessConversion.rockwell(hv).value().orElseThrow().value();
    }

    private static final double SOFTEST = Looks.hrc("table-softest");
    private static final double HARDEST = Looks.hrc("table-hardest");

    private static double depth(double ball, double dent) {
        double d = Math.min(dent, ball);
        return Math.max(ball - Math.sqrt(ball * ball - d * d), 1e-9);
    }

    /** A coupon that bends was not hardened; one that snaps, fine or coarse, was. How coarse it is tells of the fire, not of this. */
    private static Choice snapped(Observation.SnappedCoupon o) {
        double slack = Looks.hrc("slack");
        double spread = Looks.hrc("slack-spread");
        return new Choice(
                (e, i) -> {
                    double bends = Normal.nearlyBelow((-slack - e.influence(Influence.AS_QUENCHED, i)) / spread);
                    return new double[] {bends, 1 - bends};
                },
                o.look() == Observation.Break.BENDS ? 0 : 1);
    }
}
