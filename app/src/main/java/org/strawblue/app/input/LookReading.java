package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.strawblue.core.colour.Light;
import org.strawblue.core.evidence.judge.Files;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.history.Place;
import org.strawblue.core.oxide.ColourName;
import org.strawblue.core.pyrometry.OvenDial;
import org.strawblue.core.pyrometry.OvenThermometer;
import org.strawblue.core.pyrometry.Surface;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.pyrometry.Thermocouple;
import org.strawblue.core.quantity.Dimension;

/** Reads one look: what was seen decides which other keys count. */
final class LookReading {

    private static final List<String> KINDS = List.of(
            "crayon",
            "infrared",
            "colour",
            "dial",
            "thermometer",
            "thermocouple",
            "magnet",
            "file",
            "indent",
            "tester",
            "coupon",
            "fit");

    private final Section look;
    private final Light light;

    LookReading(Section look, Light light) {
        this.look = look;
        this.light = light;
    }

    Optional<Observation> observation() {
        List<String> kinds = new ArrayList<>(KINDS);
        kinds.removeIf(k -> !look.has(k));
        if (kinds.size() != 1) {
            look.desk()
                    .problem(
                            look.place(),
                            kinds.isEmpty() ? "nothing seen" : String.join(" and ", kinds),
                            "one of " + String.join(", ", KINDS),
                            "Write each thing that was seen as an item of its own.");
            return Optional.empty();
        }
        return read(kinds.get(0), seen());
    }

    private Seen seen() {
        Place place = look.word("place")
                .map(p -> Place.valueOf(p.toUpperCase(Locale.ROOT)))
                .orElse(Place.TOP);
        return new Seen(place, PartReading.optional(look.si("at")));
    }

    private Optional<Observation> read(String kind, Seen seen) {
        return switch (kind) {
            case "crayon" -> crayon(seen);
            case "infrared" -> look.si("infrared").map(t -> new Observation.Infrared(t, setting(), surface(), seen));
            case "colour" -> look.scalar("colour").flatMap(s -> colour(s, seen));
            case "dial" -> look.si("dial").map(t -> new Observation.SourceReads(t, new OvenDial(), seen));
            case "thermometer" -> look.si("thermometer").map(t -> reads(t, new OvenThermometer(), "oven", seen));
            case "thermocouple" -> thermocouple(seen);
            case "magnet" -> look.word("magnet").map(w -> new Observation.Magnet(w.equals("holds"), seen));
            case "file" -> look.scalar("file").flatMap(s -> file(s, seen));
            case "indent" -> look.group("indent").flatMap(g -> indent(g, seen));
            case "tester" -> look.si("tester").map(h -> new Observation.Tester(h, state(), seen));
            case "coupon" ->
                look.word("coupon")
                        .map(w -> new Observation.SnappedCoupon(
                                Observation.Break.valueOf(w.toUpperCase(Locale.ROOT)), seen));
            default -> look.word("fit").map(w -> new Observation.TrialFit(w.equals("yes"), seen));
        };
    }

    /** What the crayon or file did, by a family of words. */
    private Optional<String> result(String family) {
        if (!look.has("result")) {
            look.desk()
                    .problem(
                            look.place(),
                            "no result",
                            "result: " + String.join(", ", Lexicon.of(family).words()),
                            "Say what it did.");
            return Optional.empty();
        }
        return look.scalar("result").flatMap(s -> look.word(s, Lexicon.of(family)));
    }

    private Optional<Observation> crayon(Seen seen) {
        Optional<Double> rating = look.si("crayon");
        return result("melt")
                .flatMap(r -> rating.map(
                        t -> new Observation.Crayon(t, Observation.Melt.valueOf(r.toUpperCase(Locale.ROOT)), seen)));
    }

    private double setting() {
        return look.si("setting").orElse(Assumed.of("emissivity setting"));
    }

    private Surface surface() {
        return look.word("surface")
                .map(w -> Surface.valueOf(w.toUpperCase(Locale.ROOT)))
                .orElse(Surface.BRIGHT);
    }

    private Optional<Observation> colour(YamlNode.Scalar scalar, Seen seen) {
        Light by = look.scalar("light").flatMap(s -> LogReader.light(look, s)).orElse(light);
        if (scalar.text().strip().startsWith("#")) {
            return look.convert(
                    scalar,
                    hex -> Observation.Colour.picked(hex, by, seen).map(c -> (Observation) c),
                    "a colour as #rrggbb",
                    none -> Optional.empty());
        }
        List<String> names =
                List.of(ColourName.values()).stream().map(ColourName::word).toList();
        return look.convert(
                scalar,
                text -> ColourName.find(text).map(n -> Observation.Colour.named(n, by, seen)),
                String.join(", ", names),
                text -> Lexicon.nearest(ColourName.vocabulary(), text));
    }

    private Observation reads(double kelvin, TemperatureIndicator by, String usual, Seen seen) {
        String subject = look.word("of").orElse(usual);
        return subject.equals("part")
                ? new Observation.PartReads(kelvin, by, seen)
                : new Observation.SourceReads(kelvin, by, seen);
    }

    private Optional<Observation> thermocouple(Seen seen) {
        String type = look.text("type").orElse("K").toUpperCase(Locale.ROOT);
        Optional<Double> kelvin = look.si("thermocouple");
        try {
            Thermocouple by = new Thermocouple(type, 2);
            return kelvin.map(t -> reads(t, by, "part", seen));
        } catch (IllegalArgumentException e) {
            look.desk()
                    .problem(
                            look.place("type"),
                            type,
                            "the letter of a thermocouple: K, J, N or T",
                            "It stands on the plug or the meter; most are K.");
            return Optional.empty();
        }
    }

    private State state() {
        return look.word("state").filter("quenched"::equals).isPresent() ? State.QUENCHED : State.TEMPERED;
    }

    private Optional<Observation> file(YamlNode.Scalar scalar, Seen seen) {
        Optional<String> bite = result("bite");
        String text = scalar.text().strip().toLowerCase(Locale.ROOT);
        boolean common = text.startsWith("common") || text.equals("file") || text.equals("new") || text.equals("yes");
        Optional<Double> level = common
                ? Optional.of(Files.commonLevel())
                : look.convert(
                        scalar,
                        t -> QuantityReader.quantity(
                                        t,
                                        Expectation.of(
                                                Dimension.HARDNESS, look.desk().units()))
                                .found()
                                .map(q -> q.si()),
                        "common, or the level of a graded file such as 55 HRC",
                        none -> Optional.empty());
        return bite.flatMap(b -> level.map(l ->
                new Observation.File(l, !common, Observation.Bite.valueOf(b.toUpperCase(Locale.ROOT)), state(), seen)));
    }

    private Optional<Observation> indent(Section g, Seen seen) {
        Optional<Double> ball = g.si("ball");
        Optional<Double> part = g.si("part");
        Optional<Double> reference = g.si("reference");
        Optional<Double> hardness = g.si("hardness");
        if (ball.isEmpty() || part.isEmpty() || reference.isEmpty() || hardness.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Observation.Indent(ball.get(), part.get(), reference.get(), hardness.get(), state(), seen));
    }
}
