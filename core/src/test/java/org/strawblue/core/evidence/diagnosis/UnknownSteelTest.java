package org.strawblue.core.evidence.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.core.quantity.Band;

/** Cases of the trade (common practice), and a check of the reckoning on steels drawn from the tables themselves. */
class UnknownSteelTest {

    private static UnknownSteel of(String seen) {
        Map<String, String> answers = new HashMap<>();
        for (String s : seen.split(" ")) {
            answers.put(s.split("=")[0], s.split("=")[1]);
        }
        return UnknownSteel.of(answers);
    }

    @ParameterizedTest
    @CsvSource({
        "oil=hard spark=bushy look=ground, oil-tool",
        "oil=soft water=hard spark=bushy, high-carbon",
        "oil=soft water=soft spark=plain, mild",
        "spark=red oil=soft, high-speed",
        "magnet=none look=stainless, soft-stainless",
        "spark=some look=black oil=hard, spring-alloy",
        "look=cast spark=red snap=grey, cast-iron",
        "look=drawn spark=plain, mild",
        "spark=straw magnet=holds look=stainless oil=soft, hard-stainless",
    })
    void theTradeWouldSayTheSame(String seen, String family) {
        UnknownSteel steel = of(seen);
        assertThat(steel.families().get(0).cause().key())
                .as(steel.families().stream()
                        .map(r -> r.cause().key() + " "
                                + Math.round(100 * r.chance().value()))
                        .toList()
                        .toString())
                .isEqualTo(family);
    }

    @Test
    void aClearCaseIsAdvised() {
        Family family =
                of("oil=hard thick=hard spark=bushy look=ground").advice().orElseThrow();
        assertThat(family.quench()).isEqualTo("oil");
        Band window = family.window().orElseThrow();
        // O1 and O2 are hardened from 760 to 820 °C (data sheets)
        assertThat(window.low() - 273.15).isBetween(740.0, 830.0);
        assertThat(window.high() - 273.15).isBetween(740.0, 840.0);
    }

    @ParameterizedTest
    @CsvSource({"oil=hard", "oil=soft", "magnet=holds look=black", "spark=some", "spark=plain oil=hard look=ground"})
    void aGuessIsRefused(String seen) {
        UnknownSteel steel = of(seen);
        assertThat(steel.advice()).isEmpty();
        assertThat(steel.findings()).anyMatch(f -> f.what().template().contains("No treatment is advised"));
        assertThat(steel.tests()).isNotEmpty();
    }

    @Test
    void waterComesAfterOilAndOnlyWhereOilLeftItSoft() {
        assertThat(UnknownSteel.of(Map.of()).tests())
                .noneMatch(t -> t.clue().key().equals("water"));
        assertThat(of("oil=soft").tests()).anyMatch(t -> t.clue().key().equals("water"));
        assertThat(of("oil=hard").tests()).noneMatch(t -> t.clue().key().equals("water"));
        assertThat(of("oil=hard").tests()).anyMatch(t -> t.clue().key().equals("thick"));
        assertThat(UnknownSteel.of(Map.of()).tests())
                .noneMatch(t -> t.clue().key().equals("snap"));
    }

    @Test
    void nothingSeenLeavesTheSharesAsTheyAre() {
        UnknownSteel steel = UnknownSteel.of(Map.of());
        steel.families()
                .forEach(r -> assertThat(r.chance().value()).isCloseTo(r.cause().weight(), within(1e-9)));
    }

    /**
     * Steels and answers drawn from the tables: of those told with a chance of so much, so many are what they are told to be; advice
     * is wrong less often than its limit allows. This tests the reckoning, not the tables.
     */
    @Test
    void chancesAreKeptAndAdviceIsSeldomWrong() {
        SplittableRandom random = new SplittableRandom(5);
        Topic topic = UnknownSteel.topic();
        double told = 0;
        double right = 0;
        int advised = 0;
        int wrong = 0;
        int n = 500;
        for (int i = 0; i < n; i++) {
            int truth = drawn(topic.causes().stream().mapToDouble(Cause::weight).toArray(), random);
            Map<String, String> seen = new HashMap<>();
            for (Clue clue : topic.clues()) {
                String[] needs = clue.needs().split("=");
                boolean may = clue.needs().isBlank()
                        || (needs.length == 1 ? seen.containsKey(needs[0]) : needs[1].equals(seen.get(needs[0])));
                if (may && random.nextInt(3) > 0) {
                    double[][] table = topic.table(clue);
                    double[] chances = new double[table.length];
                    for (int a = 0; a < table.length; a++) {
                        chances[a] = table[a][truth];
                    }
                    seen.put(
                            clue.key(),
                            clue.answers().get(drawn(chances, random)).key());
                }
            }
            UnknownSteel steel = UnknownSteel.of(seen);
            Ranked first = steel.families().get(0);
            boolean hit = first.cause() == topic.causes().get(truth);
            told += first.chance().value() / n;
            right += hit ? 1.0 / n : 0;
            advised += steel.advice().isPresent() ? 1 : 0;
            wrong += steel.advice().isPresent() && !hit ? 1 : 0;
        }
        assertThat(right).isCloseTo(told, within(0.03));
        assertThat(advised).isGreaterThan(n / 10);
        assertThat((double) wrong / advised).isLessThan(0.1);
    }

    private static int drawn(double[] chances, SplittableRandom random) {
        double u = random.nextDouble();
        for (int k = 0; k < chances.length - 1; k++) {
            u -= chances[k];
            if (u < 0) {
                return k;
            }
        }
        return chances.length - 1;
    }
}
