package org.strawblue.app.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.special.Erf;
import org.strawblue.core.evidence.HardnessCheck;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.heat.Traits;
import org.strawblue.core.job.Shop;
import org.strawblue.core.pyrometry.TemperatureIndicator;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;
import org.strawblue.core.spring.MeasuredSpring;
import org.strawblue.core.steel.Quenchant;
import org.strawblue.core.steel.Quenchants;

/** Reads what is in the shop. */
final class ShopReading {

    private final Section shop;
    private final Desk desk;

    ShopReading(Section shop) {
        this.shop = shop;
        this.desk = shop.desk();
    }

    Shop shop(Optional<List<MeasuredSpring>> drawer) {
        return new Shop(
                heats("hardening heat"),
                heats("tempering heat"),
                quenchants(),
                indicators(),
                checks(),
                drawer,
                shop.word("paper")
                        .filter("letter"::equals)
                        .map(w -> Shop.Paper.LETTER)
                        .orElse(Shop.Paper.A4));
    }

    private List<HeatSource> heats(String key) {
        List<HeatSource> heats = new ArrayList<>();
        for (YamlNode item : shop.items(key)) {
            thing("heat", key, item).flatMap(this::heat).ifPresent(heats::add);
        }
        return heats;
    }

    /** A thing given as one word or as a group of keys. */
    private Optional<Section> thing(String section, String key, YamlNode item) {
        if (item instanceof YamlNode.Scalar scalar && QuantityReader.notKnown(scalar.text())) {
            desk.unknown(shop.path(key), key);
            return Optional.empty();
        }
        YamlNode group = item instanceof YamlNode.Scalar scalar
                ? new YamlNode.MapNode(
                        List.of(new YamlNode.Entry(new YamlNode.Scalar("kind", item.place()), scalar)), item.place())
                : item;
        return Optional.of(new Section(section, shop.path(key), group, desk)).filter(Section::isGroup);
    }

    private Optional<HeatSource> heat(Section s) {
        Optional<HeatSource> usual =
                s.scalar("kind").flatMap(k -> Named.find(k, HeatSources::find, "a heat source", desk));
        Optional<Double> reach = s.si("reach");
        Optional<Double> error = s.si("error");
        Optional<Double> swing = s.si("swing");
        return usual.map(u -> u.with(measured(u.traits(), reach, error, swing)));
    }

    private static Traits measured(Traits t, Optional<Double> reach, Optional<Double> error, Optional<Double> swing) {
        Basis stated = new Basis("what this " + t.name() + " does", "job-file", Standing.PUBLISHED);
        Traits known = reach.map(r -> t.withReach(r, stated)).orElse(t);
        if (error.isEmpty() && swing.isEmpty()) {
            return known;
        }
        double sd = error.map(ShopReading::deviation).orElse(t.offset());
        return known.withError(sd, swing.orElse(t.swing()), stated);
    }

    /** Standard deviation of a normal error that is smaller than this eight times in ten. */
    private static double deviation(double eightInTen) {
        return eightInTen / (Math.sqrt(2) * Erf.erfInv(0.8));
    }

    private List<Quenchant> quenchants() {
        List<Quenchant> found = new ArrayList<>();
        for (YamlNode.Scalar word : words("quenchants")) {
            Named.find(word, Quenchants::find, "a quench", desk).ifPresent(found::add);
        }
        return found;
    }

    private List<HardnessCheck> checks() {
        List<HardnessCheck> found = new ArrayList<>();
        for (YamlNode item : shop.items("hardness checks")) {
            thing("check", "hardness checks", item).flatMap(this::check).ifPresent(found::add);
        }
        return found;
    }

    private Optional<HardnessCheck> check(Section s) {
        return s.word("kind").flatMap(kind -> switch (kind) {
            case "file" -> Optional.of(new HardnessCheck.CommonFile());
            case "graded files" -> Optional.of(new HardnessCheck.GradedFiles(s.values("levels")));
            case "comparison blocks" -> Optional.of(new HardnessCheck.IndentComparison());
            case "tester" -> Optional.of(new HardnessCheck.Tester());
            default -> Optional.empty();
        });
    }

    /** The single words of a list. */
    private List<YamlNode.Scalar> words(String key) {
        List<YamlNode.Scalar> words = new ArrayList<>();
        for (YamlNode item : shop.items(key)) {
            if (!(item instanceof YamlNode.Scalar scalar)) {
                desk.problem(
                        item.place(),
                        item.words(),
                        "one word or name for each",
                        "Write each on a line of its own after a dash.");
            } else if (QuantityReader.notKnown(scalar.text())) {
                desk.unknown(shop.path(key), key);
            } else {
                words.add(scalar);
            }
        }
        return words;
    }

    private List<TemperatureIndicator> indicators() {
        List<TemperatureIndicator> found = new ArrayList<>();
        for (YamlNode item : shop.items("temperature indicators")) {
            thing("indicator", "temperature indicators", item)
                    .flatMap(s -> new IndicatorReading(s).indicator())
                    .ifPresent(found::add);
        }
        return found;
    }
}
