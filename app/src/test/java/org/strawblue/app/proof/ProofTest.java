package org.strawblue.app.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every case of the verification table, one test each. */
class ProofTest {

    static final Path CASES =
            Path.of(System.getProperty("strawblue.root", "..")).resolve("cases");

    @TestFactory
    Stream<DynamicTest> everyCaseGivesTheVerdictItMust() {
        return Proof.of(CASES).verdicts().stream()
                .map(v -> DynamicTest.dynamicTest(
                        v.check().id(),
                        () -> assertThat(v.passed()).as(v.toString()).isTrue()));
    }

    @Test
    void everyControlNamesAnOperationThatNoCheckUses() {
        var checks = Proof.of(CASES).verdicts().stream()
                .map(Verdict::check)
                .filter(c -> !c.control())
                .map(Case::operation)
                .toList();
        assertThat(Proof.of(CASES).verdicts().stream().map(Verdict::check).filter(Case::control))
                .isNotEmpty()
                .noneMatch(c -> checks.contains(c.operation()));
    }
}
