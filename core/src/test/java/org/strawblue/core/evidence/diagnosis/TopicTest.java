package org.strawblue.core.evidence.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.strawblue.core.job.Hazards;

/** The tables of causes and clues hold together. */
class TopicTest {

    static Stream<Topic> topics() {
        return Stream.concat(Topic.symptoms().stream(), Stream.of(UnknownSteel.topic()));
    }

    @ParameterizedTest
    @MethodSource("topics")
    void sharesAndChancesMakeOneAndNothingIsImpossible(Topic topic) {
        assertThat(topic.causes().stream().mapToDouble(Cause::weight).sum()).isCloseTo(1, within(1e-9));
        for (Clue clue : topic.clues()) {
            double[][] table = topic.table(clue);
            for (int c = 0; c < topic.causes().size(); c++) {
                int cause = c;
                assertThat(Arrays.stream(table).mapToDouble(a -> a[cause]).sum())
                        .as(topic.key() + " " + clue.key() + " "
                                + topic.causes().get(c).key())
                        .isCloseTo(1, within(1e-9));
                assertThat(Arrays.stream(table).mapToDouble(a -> a[cause]).min().orElseThrow())
                        .isPositive();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("topics")
    void everyWordMeansOneAnswerEveryCautionIsWrittenAndEveryNeedIsAClue(Topic topic) {
        for (Clue clue : topic.clues()) {
            HashSet<String> words = new HashSet<>();
            for (Clue.Reply reply : clue.answers()) {
                assertThat(clue.answer(reply.key())).contains(reply);
                for (String word : reply.words()) {
                    assertThat(clue.answer(word)).as(clue.key() + " " + word).contains(reply);
                    assertThat(words.add(word))
                            .as(clue.key() + " twice " + word)
                            .isTrue();
                }
            }
            assertThat(clue.answer("purple cow")).isEmpty();
            assertThat(Hazards.of(clue.hazards().toArray(String[]::new)))
                    .hasSize(clue.hazards().size());
            if (!clue.needs().isBlank()) {
                String[] needs = clue.needs().split("=");
                Clue first = topic.clue(needs[0]).orElseThrow();
                assertThat(needs.length == 1 || first.answer(needs[1]).isPresent())
                        .isTrue();
            }
        }
        for (Cause cause : topic.causes()) {
            assertThat(Hazards.of(cause.hazards().toArray(String[]::new)))
                    .hasSize(cause.hazards().size());
        }
        assertThat(topic.clue("no such clue")).isEmpty();
    }

    @Test
    void symptomsAreFoundByWhatPeopleSay() {
        assertThat(Topic.find("Did not harden").orElseThrow().key()).isEqualTo("did-not-harden");
        assertThat(Topic.find("warped").orElseThrow().key()).isEqualTo("bent");
        assertThat(Topic.find("color does not match").orElseThrow().key()).isEqualTo("colour");
        assertThat(Topic.find("mystery steel")).isEmpty();
        assertThat(Topic.find("sings")).isEmpty();
        assertThat(Topic.nearest("crackd")).containsExactly("cracked");
        assertThatThrownBy(() -> Topic.of("sings")).hasMessageContaining("sings");
    }

    @Test
    void everyFamilyHasItsAdvice() {
        for (Cause family : UnknownSteel.topic().causes()) {
            Family f = Family.of(family.key());
            assertThat(f.advice()).isNotBlank();
            assertThat(f.windows().isEmpty()).isNotEqualTo(f.hardens());
            f.window()
                    .ifPresent(w -> assertThat(f.windows().values())
                            .allMatch(each -> each.contains(w.low()) && each.contains(w.high())));
            assertThat(Hazards.of(f.hazards().toArray(String[]::new)))
                    .hasSize(f.hazards().size());
        }
        assertThat(List.of(Family.of("oil-tool").grades().get(0).name())).containsExactly("O1");
        assertThatThrownBy(() -> Family.of("wood")).hasMessageContaining("wood");
    }
}
