package org.strawblue.app.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.job.HardenWish;
import org.strawblue.core.job.Shop;
import org.strawblue.core.job.TemperWish;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.steel.Duties;
import org.strawblue.core.steel.Duty;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;

/** Reads one part of a job. */
final class PartReading {

    private static final Lexicon DUTIES = duties();

    private final Section part;
    private final Shop shop;
    private final Desk desk;

    /** @param shop whose own, measured, heat sources go before the usual ones of the same name */
    PartReading(Section part, Shop shop) {
        this.part = part;
        this.shop = shop;
        this.desk = part.desk();
    }

    WorkPiece piece() {
        return new WorkPiece(
                part.text("name").orElse("part"),
                new SteelReading(part).steel(),
                new ShapeReading(part).shape(),
                duty(),
                hardness(),
                optional(part.si("as quenched")),
                part.group("harden").map(this::harden).orElse(HardenWish.OPEN),
                part.group("temper").map(this::temper).orElse(TemperWish.OPEN),
                part.groups("features").stream()
                        .flatMap(f -> new FeatureReading(f).feature().stream())
                        .toList());
    }

    /** One number alone is meant with the give and take of the trade. */
    private Optional<Band> hardness() {
        double give = Assumed.of("hardness give or take of one number");
        return part.band("hardness")
                .map(b -> b.width() > 0 ? b : new Band(b.dimension(), b.low() - give, b.high() + give));
    }

    private HardenWish harden(Section s) {
        return new HardenWish(
                s.scalar("with").flatMap(w -> heat(w, shop.hardeningHeat())),
                s.scalar("quench").flatMap(w -> quenchant(w)),
                optional(s.si("temperature")),
                optional(s.si("soak")));
    }

    private TemperWish temper(Section s) {
        Optional<Integer> times = s.quantity("times").flatMap(q -> whole(q, s));
        return new TemperWish(
                s.scalar("with").flatMap(w -> heat(w, shop.temperingHeat())),
                optional(s.si("temperature")),
                optional(s.si("time")),
                times.map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    private Optional<Integer> whole(Quantity times, Section s) {
        if (times.si() != Math.rint(times.si())) {
            desk.problem(
                    s.place("times"),
                    s.text("times").orElse(""),
                    "a whole number of tempers: 1, 2 or 3",
                    "Write a whole number.");
            return Optional.empty();
        }
        return Optional.of((int) times.si());
    }

    private Optional<HeatSource> heat(YamlNode.Scalar word, List<HeatSource> own) {
        Optional<HeatSource> usual = Named.find(word, HeatSources::find, "a heat source", desk);
        return usual.map(u -> own.stream()
                .filter(o -> o.traits().key().equals(u.traits().key()))
                .findFirst()
                .orElse(u));
    }

    private Optional<Quenchant> quenchant(YamlNode.Scalar word) {
        return Named.find(word, Quenchants::find, "a quench", desk);
    }

    private Optional<Duty> duty() {
        return part.scalar("duty").flatMap(s -> part.word(s, DUTIES)).flatMap(Duties::find);
    }

    private static Lexicon duties() {
        return new Lexicon(Duties.all().stream()
                .collect(Collectors.toMap(Duty::key, Duty::names, (a, b) -> a, LinkedHashMap::new)));
    }

    static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
