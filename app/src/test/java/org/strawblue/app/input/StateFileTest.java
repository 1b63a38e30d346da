package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.evidence.learn.Learned;
import org.strawblue.core.evidence.learn.ShopKnowledge;
import org.strawblue.core.evidence.learn.Subject;
import org.strawblue.core.evidence.learn.Told;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;

class StateFileTest {

    private static final String ONE = "learned:\n  - thing: the oven\n    property: oven-offset\n    told:\n      - ";

    @Test
    void whatIsWrittenIsReadBack() {
        ShopKnowledge shop = ShopKnowledge.NOTHING;
        for (Influence influence : Influence.values()) {
            if (ShopKnowledge.learnable(influence)) {
                Distribution d = Priors.usual().of(influence);
                Subject subject = new Subject(influence, "the \"old\" one: \\ # {}");
                shop = shop.with(subject, new Told(d.at(0.2), d.at(-0.5), d.at(1), "a: b.csv 1f"))
                        .then(s -> s.with(subject, new Told(d.at(-0.3), d.at(-1), d.at(0.5), "c")))
                        .value()
                        .orElseThrow();
            }
        }
        String text = StateFile.write(shop);
        Read<ShopKnowledge> read = StateFile.read("s.yaml", text);
        assertThat(read.problems()).isEmpty();
        ShopKnowledge back = read.value().orElseThrow();
        assertThat(back.all().keySet()).isEqualTo(shop.all().keySet());
        for (Learned learned : shop.all().values()) {
            double was = shop.next(learned.subject()).orElseThrow().value();
            double is = back.next(learned.subject()).orElseThrow().value();
            assertThat(is).as(learned.subject().toString()).isCloseTo(was, within(Math.abs(was) * 1e-3 + 1e-5));
        }
        assertThat(text).contains("standing: fitted", "jobs: 2");
        // the words for people are worked out anew and may change in the last figure; what was told may not
        assertThat(told(StateFile.write(back))).isEqualTo(told(text));
    }

    private static java.util.List<String> told(String text) {
        return text.lines().filter(l -> l.contains("from:")).toList();
    }

    @Test
    void nothingLearnedAndNoFileAreShopsOfWhichNothingIsKnown() {
        assertThat(StateFile.read("s.yaml", StateFile.write(ShopKnowledge.NOTHING))
                        .value())
                .contains(ShopKnowledge.NOTHING);
        assertThat(StateFile.read(Path.of("no-such-state.yaml")).value()).contains(ShopKnowledge.NOTHING);
        assertThat(StateFile.read(Path.of("src")).problems()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{from: a, value: -12 K, low: -18 K}",
                "{from: a, value: warm, low: -18 K, high: -6 K}",
                "{from: a, value: -12 mm, low: -18 K, high: -6 K}",
                "{from: a, value: -12 K, low: -6 K, high: -18 K}",
                "{from: a, value: -12 K, low: -12 K, high: -12 K}",
                "{value: -12 K, low: -18 K, high: -6 K}",
                "{from: a, valeu: -12 K, low: -18 K, high: -6 K}",
                "just words",
            })
    void aFaultIsTold(String told) {
        Read<ShopKnowledge> read = StateFile.read("s.yaml", ONE + told + "\n");
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).isNotEmpty().allMatch(p -> !p.remedy().isBlank());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "5",
                "learned: 5",
                "[1]",
                "learned:\n  - {thing: x, property: mood, told: []}",
                "learned:\n  - {thing: x, property: oven-phase, told: []}",
                "learned:\n  - {property: oven-offset, told: []}",
                "learned:\n  - {thing: x, property: contact-gap, told: [{from: a, value: 20 um, low: -3 um, high: 30 um}]}",
                "learned:\n  - {thing: x, property: gun-emissivity, told: [{from: a, value: 0.2, low: 0.1, high: 1.5}]}",
            })
    void aFaultOfTheWholeIsTold(String text) {
        Read<ShopKnowledge> read = StateFile.read("s.yaml", text);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).isNotEmpty();
    }

    static IntStream seeds() {
        return IntStream.range(0, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyTextEndsInKnowledgeOrInProblems(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String[] pieces = {
            "learned:",
            "\n",
            "  - ",
            "thing: ",
            "property: ",
            "oven-swing",
            "told:",
            "{",
            "}",
            "[",
            "]",
            ", ",
            "value: ",
            "0",
            "-1 K",
            "1e9",
            "low: ",
            "high: ",
            "from: ",
            "'",
            "\"",
            "#",
            "?",
            "x"
        };
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(60); i > 0; i--) {
            text.append(pieces[random.nextInt(pieces.length)]);
        }
        Read<ShopKnowledge> read = StateFile.read("s.yaml", text.toString());
        assertThat(read.value().isPresent()).isEqualTo(read.problems().isEmpty());
    }
}
