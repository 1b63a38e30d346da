package org.strawblue.core.evidence.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.heat.HeatSource;
import org.strawblue.core.heat.HeatSources;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Grade;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Quenchants;
import org.strawblue.core.steel.Temper;

/** Cases of the trade: what each clue points to is common practice (any book on hardening tools in a small shop). */
class DiagnosisTest {

    private static final double ZERO = 273.15;

    /** A job told piece by piece. */
    private record Story(Known known) {
        static Story of(String grade) {
            return new Story(new Known(
                    Optional.of(Grades.of(grade)),
                    Known.NOTHING.shape(),
                    Known.NOTHING.quench(),
                    Known.NOTHING.source(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }

        Story bar(double diameter, double length) {
            return new Story(new Known(
                    known.grade(),
                    Optional.of(new PartShape.RoundBar(diameter, length)),
                    known.quench(),
                    known.source(),
                    known.hardenedFrom(),
                    known.inTheHeat(),
                    known.temper(),
                    known.wanted()));
        }

        Story hardened(String quench, double celsius, double seconds) {
            HeatSource kiln = HeatSources.find("kiln").value().orElseThrow();
            return new Story(new Known(
                    known.grade(),
                    known.shape(),
                    Quenchants.find(quench).value(),
                    Optional.of(kiln),
                    OptionalDouble.of(celsius + ZERO),
                    OptionalDouble.of(seconds),
                    known.temper(),
                    known.wanted()));
        }

        Story tempered(double celsius, double seconds, double low, double high) {
            return new Story(new Known(
                    known.grade(),
                    known.shape(),
                    known.quench(),
                    known.source(),
                    known.hardenedFrom(),
                    known.inTheHeat(),
                    Optional.of(new Temper(celsius + ZERO, seconds)),
                    Optional.of(new Band(Dimension.HARDNESS, low, high))));
        }
    }

    private static Diagnosis of(String symptom, Known known, String... seen) {
        Map<String, String> answers = new HashMap<>();
        for (String s : seen) {
            answers.put(s.split("=")[0], s.split("=")[1]);
        }
        return Diagnosis.of(Topic.of(symptom), known, answers);
    }

    static Stream<Arguments> cases() {
        Known nothing = Known.NOTHING;
        return Stream.of(
                Arguments.of(
                        "did-not-harden",
                        Story.of("1018").hardened("water", 850, 1200).known(),
                        "",
                        "low-carbon"),
                Arguments.of(
                        "did-not-harden",
                        Story.of("O1").hardened("oil", 690, 1800).known(),
                        "",
                        "not-hot"),
                Arguments.of("did-not-harden", nothing, "magnet=held", "not-hot"),
                Arguments.of(
                        "did-not-harden",
                        Story.of("1095")
                                .bar(0.03, 0.1)
                                .hardened("canola oil", 800, 3600)
                                .known(),
                        "magnet=let-go",
                        "slow-quench"),
                Arguments.of("did-not-harden", Story.of("O1").known(), "below=skates", "skin"),
                Arguments.of("did-not-harden", nothing, "below=skates scale=heavy", "skin"),
                Arguments.of("did-not-harden", nothing, "spark=plain grain=bends", "low-carbon"),
                Arguments.of("did-not-harden", nothing, "coupon=hard below=bites", "slow-quench"),
                Arguments.of(
                        "cracked", Story.of("O1").hardened("water", 800, 1800).known(), "", "fierce"),
                Arguments.of("cracked", nothing, "where=net when=grinding", "grinding"),
                Arguments.of("cracked", nothing, "where=along faces=black", "flaw"),
                Arguments.of("cracked", nothing, "corners=sharp where=corner", "corners"),
                Arguments.of("cracked", nothing, "when=later temper=waited", "late-temper"),
                Arguments.of(
                        "cracked", Story.of("O1").hardened("oil", 960, 1800).known(), "grain=coarse", "overheated"),
                Arguments.of("chips", Story.of("O1").tempered(150, 3600, 57, 59).known(), "", "hard"),
                Arguments.of("chips", nothing, "grain=coarse", "coarse"),
                Arguments.of("chips", nothing, "angle=holds", "thin"),
                Arguments.of(
                        "rolls-over", Story.of("O1").tempered(330, 7200, 60, 62).known(), "", "soft"),
                Arguments.of("rolls-over", nothing, "below=skates colours=no", "skin"),
                Arguments.of("rolls-over", nothing, "quenched-file=bites below=bites", "not-hard"),
                Arguments.of("bent", nothing, "entry=slanted", "entry"),
                Arguments.of("bent", nothing, "before=bent machined=yes", "stress"),
                Arguments.of("bent", Story.of("O1").bar(0.004, 0.2).known(), "entry=straight machined=no", "slender"),
                Arguments.of("colour", Story.of("D2").known(), "witness=other", "chromium"),
                Arguments.of("colour", Story.of("O1").tempered(220, 60, 58, 62).known(), "patchy=even", "time"),
                Arguments.of("colour", nothing, "patchy=patchy", "dirty"),
                Arguments.of("colour", nothing, "crayon=disagrees", "oven-off"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theTradeWouldSayTheSame(String symptom, Known known, String seen, String cause) {
        Diagnosis diagnosis = of(symptom, known, seen.isEmpty() ? new String[0] : seen.split(" "));
        assertThat(diagnosis.causes().get(0).cause().key())
                .as(diagnosis.causes().stream()
                        .map(r -> r.cause().key() + " "
                                + Math.round(100 * r.chance().value()))
                        .toList()
                        .toString())
                .isEqualTo(cause);
    }

    @Test
    void withNothingKnownNoCauseStandsOutAndACheapTellingTestIsNamed() {
        Diagnosis diagnosis = of("did-not-harden", Known.NOTHING);
        assertThat(diagnosis.findings()).anyMatch(f -> f.what().template().contains("No cause stands out"));
        assertThat(diagnosis.sure()).isFalse();
        assertThat(diagnosis.tests().get(0).bits()).isGreaterThan(0.1);
        assertThat(diagnosis.causes().stream()
                        .mapToDouble(r -> r.chance().value())
                        .sum())
                .isBetween(0.999, 1.001);
    }

    @Test
    void whatWasReckonedIsTold() {
        Diagnosis diagnosis =
                of("did-not-harden", Story.of("O1").hardened("oil", 690, 1800).known());
        Ranked first = diagnosis.causes().get(0);
        assertThat(first.because().orElseThrow().template()).contains("it wants");
        assertThat(first.words()).isIn("likely", "very likely");
        assertThat(first.chance().weak()).isTrue();
        assertThat(first.chance().low()).isLessThan(first.chance().value());
    }

    /** A steel the program says hardens is not blamed: the check lowers a cause as well as it raises one. */
    @Test
    void aCheckCanClearACause() {
        double before = chance(of("did-not-harden", Known.NOTHING), "low-carbon");
        double after = chance(of("did-not-harden", Story.of("O1").known()), "low-carbon");
        assertThat(after).isLessThan(before / 2);
    }

    private static double chance(Diagnosis diagnosis, String cause) {
        return diagnosis.causes().stream()
                .filter(r -> r.cause().key().equals(cause))
                .findFirst()
                .orElseThrow()
                .chance()
                .value();
    }

    @Test
    void whatDoesNotFitIsSaid() {
        Diagnosis diagnosis = of("cracked", Known.NOTHING, "where=net", "when=bath", "faces=black");
        assertThat(diagnosis.findings()).anyMatch(f -> f.what().template().contains("does not fit the rest"));
    }

    @Test
    void aTestAlreadyDoneIsNotNamedAgain() {
        Diagnosis diagnosis = of("did-not-harden", Known.NOTHING, "magnet=held");
        assertThat(diagnosis.tests()).noneMatch(t -> t.clue().key().equals("magnet"));
    }

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** Any job and any answers: chances between 0 and 1, in sum 1, in order. */
    @ParameterizedTest
    @MethodSource("seeds")
    void anythingIsAnswered(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Topic> topics = Topic.symptoms();
        Topic topic = topics.get(random.nextInt(topics.size()));
        Map<String, String> seen = new HashMap<>();
        for (Clue clue : topic.clues()) {
            if (random.nextInt(3) == 0) {
                seen.put(
                        clue.key(),
                        clue.answers()
                                .get(random.nextInt(clue.answers().size()))
                                .key());
            }
        }
        List<Grade> grades = Grades.all();
        Story story = Story.of(grades.get(random.nextInt(grades.size())).name())
                .bar(Math.exp(-7 + 4 * random.nextDouble()), 0.01 + random.nextDouble())
                .hardened(
                        Quenchants.all()
                                .get(random.nextInt(Quenchants.all().size()))
                                .name(),
                        600 + 700 * random.nextDouble(),
                        1 + 20000 * random.nextDouble())
                .tempered(50 + 700 * random.nextDouble(), 1 + 50000 * random.nextDouble(), 40, 50);
        Diagnosis diagnosis = Diagnosis.of(topic, story.known(), seen);
        assertThat(diagnosis.causes()).hasSize(topic.causes().size());
        assertThat(diagnosis.causes().stream()
                        .mapToDouble(r -> r.chance().value())
                        .sum())
                .isBetween(0.999, 1.001);
        assertThat(diagnosis.causes())
                .isSortedAccordingTo(
                        (a, b) -> Double.compare(b.chance().value(), a.chance().value()));
    }
}
