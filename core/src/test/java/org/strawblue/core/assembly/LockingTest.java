package org.strawblue.core.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.part.ScrewThread;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.steel.Grades;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;

class LockingTest {

    private static final double ROOM = 293.15;

    private static Lock lock(String thread, String strength, String metal, double room, OptionalDouble gap) {
        ScrewThread screw = ScrewThread.find(thread).value().orElseThrow();
        return new Lock(
                screw,
                screw.major(),
                Strength.find(strength).orElseThrow(),
                Metal.find(metal).orElseThrow(),
                room,
                gap);
    }

    private static Locking of(String thread, String strength) {
        return Locking.of(lock(thread, strength, "steel", ROOM, OptionalDouble.empty()))
                .value()
                .orElseThrow();
    }

    /** Encyclopaedia: 3/8-16 breaks loose at 7, 12, 25 N·m and turns on at 3, 6, 25 N·m. */
    @ParameterizedTest
    @CsvSource({"low, 7, 3", "medium, 12, 6", "high, 25, 25"})
    void theReferenceScrewHasThePrintedTorques(String strength, double loose, double on) {
        assertThat(of("3/8-16", strength).breakLoose().value()).isCloseTo(loose, within(1e-6));
        assertThat(of("3/8-16", strength).runOn().value()).isCloseTo(on, within(1e-6));
    }

    /** A maker's rule: M4, M8, M16 as 2, 12, 72: six times for each doubling. M3, M6, M10 medium from memory, inside the interval or near. */
    @Test
    void torqueGoesWithTheSize() {
        double four = of("M4", "medium").breakLoose().value();
        assertThat(of("M8", "medium").breakLoose().value() / four).isCloseTo(6, within(1e-6));
        assertThat(of("M4", "medium").breakLoose().band().contains(2)).isTrue();
        assertThat(of("M8", "medium").breakLoose().band().contains(12)).isTrue();
        assertThat(of("M10", "medium").breakLoose().band().contains(15)).isTrue();
    }

    /** Recalled amounts: M3 0.01, M6 0.04, M10 0.1 ml over a nut's length; a drop is 0.05 ml. */
    @ParameterizedTest
    @CsvSource({"M3, 0.01", "M6, 0.04", "M10, 0.1"})
    void theAmountIsAsRecalled(String thread, double millilitres) {
        assertThat(of(thread, "low").drops().value() * 0.05).isCloseTo(millilitres, within(0.15 * millilitres));
    }

    /** The core of a class 8.8 screw yields where ISO 898-7's least breaking torques (recalled: M3 1.5, M6 14 N·m) are not yet reached. */
    @Test
    void aScrewYieldsBeforeItBreaks() {
        assertThat(of("M3", "low").twistsOff().value()).isBetween(0.5, 1.5);
        assertThat(of("M6", "low").twistsOff().value()).isBetween(6.0, 14.0);
    }

    @Test
    void smallScrewsLockedHardAreCautioned() {
        var small = Locking.of(lock("M2", "high", "steel", ROOM, OptionalDouble.empty()));
        var large = Locking.of(lock("M10", "low", "steel", ROOM, OptionalDouble.empty()));
        assertThat(small.findings().size()).isGreaterThan(large.findings().size());
    }

    @Test
    void coldAndPlatedSetSlowly() {
        Locking warm = of("M4", "low");
        Locking cold = Locking.of(lock("M4", "low", "steel", 278.15, OptionalDouble.empty()))
                .value()
                .orElseThrow();
        assertThat(cold.fullCure().value() / warm.fullCure().value()).isCloseTo(4, within(1e-6));
        assertThat(Locking.of(lock("M4", "low", "zinc", ROOM, OptionalDouble.empty()))
                        .findings())
                .anyMatch(f -> f.what().template().contains("not at all"));
        assertThat(Locking.of(lock("M4", "low", "stainless", 270, OptionalDouble.empty()))
                        .findings())
                .hasSize(3);
    }

    /** Wider gaps hold less, and none at all beyond the printed 0.76 mm. */
    @Test
    void wideGapsHoldLess() {
        double last = Double.POSITIVE_INFINITY;
        for (double gap = 0.06; gap < 0.7; gap += 0.05) {
            double torque = Locking.of(lock("M6", "medium", "steel", ROOM, OptionalDouble.of(gap / 1000)))
                    .value()
                    .orElseThrow()
                    .breakLoose()
                    .value();
            assertThat(torque).isLessThan(last);
            last = torque;
        }
        var none = Locking.of(lock("M6", "medium", "steel", ROOM, OptionalDouble.of(0.8e-3)));
        assertThat(none.value()).isEmpty();
        assertThat(none.stopped()).isTrue();
    }

    @Test
    void aSlideBesideItIsWarnedOf() {
        assertThat(new Slide(new Band(Dimension.LENGTH, 5e-6, 29e-6)).besideLocking())
                .hasSize(1);
        assertThat(new Slide(new Band(Dimension.LENGTH, 2e-4, 3e-4)).besideLocking())
                .hasSize(1);
        assertThat(new Slide(new Band(Dimension.LENGTH, -2e-5, -1e-5)).besideLocking())
                .isEmpty();
        assertThat(new Slide(new Band(Dimension.LENGTH, 5e-6, 29e-6)).oil())
                .isNotEqualTo(new Slide(new Band(Dimension.LENGTH, 7e-5, 1e-4)).oil());
    }

    /** Heated loose a part tempered low loses hardness, the more the hotter; one tempered above it loses next to none. */
    @Test
    void removalTempersAnew() {
        Steel o1 =
                Steel.ofGrade("O1").with(Grades.find("O1").value().orElseThrow().composition());
        var low = Removal.of(o1, new Temper(477.15, 3600));
        Removal loss = low.value().orElseThrow();
        assertThat(loss.harshly().value()).isLessThan(loss.gently().value());
        assertThat(loss.gently().value()).isLessThanOrEqualTo(loss.before().value());
        assertThat(low.findings()).anyMatch(f -> f.what().template().contains("can cost"));
        Removal high = Removal.of(o1, new Temper(700, 3600)).value().orElseThrow();
        assertThat(high.before().value() - high.harshly().value()).isLessThan(0.3);
        assertThat(Removal.fumes()).allMatch(Finding.Caution.class::isInstance);
    }

    @Test
    void everySourceIsInTheBibliography() {
        Locking locking = of("1/4-40", "high");
        for (var e : List.of(
                locking.breakLoose(), locking.drops(), locking.fixture(), locking.fullCure(), locking.twistsOff())) {
            e.bases()
                    .forEach(b -> assertThat(Bibliography.find(b.source()))
                            .as(b.source())
                            .isPresent());
        }
    }
}
