package org.strawblue.core.evidence.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.strawblue.core.evidence.judge.Judge;
import org.strawblue.core.evidence.judge.Judgement;
import org.strawblue.core.evidence.judge.NextLook;
import org.strawblue.core.evidence.judge.Situation;
import org.strawblue.core.evidence.observe.Observation;
import org.strawblue.core.evidence.observe.Observation.Bite;
import org.strawblue.core.evidence.observe.Observation.State;
import org.strawblue.core.evidence.observe.Seen;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.pyrometry.Thermocouple;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.steel.Steel;
import org.strawblue.core.steel.Temper;

class AdviserTest {

    private static final Steel O1 = Steel.ofGrade("O1");
    private static final double ROOM = 295.15;

    /** An hour in an oven at a temperature [°C], the part's own followed by a thermocouple. */
    private static Judgement hour(double celsius) {
        double kelvin = celsius + 273.15;
        Setting oven = new Setting.InOven(kelvin, 5, 600, 0, 22, 0.15);
        Course course = new Course(new PartShape.Flat(0.003, 0.02, 0.05), ROOM, List.of(new Spell(oven, 5400)));
        Observation probe = new Observation.PartReads(kelvin, new Thermocouple("K", 2), Seen.SOME_TIME);
        Observation file = new Observation.File(60, true, Bite.SKATES, State.QUENCHED, Seen.SOME_TIME);
        return Judge.of(new Situation(course, Optional.of(O1), Priors.usual(), 2000, 3), List.of(probe, file));
    }

    private static Advice advice(Judgement judged, double low, double high) {
        NextLook.Candidate file =
                new NextLook.Candidate(new Observation.File(60, true, Bite.BITES, State.TEMPERED, Seen.SOME_TIME), 0.5);
        return Adviser.of(judged, O1, new Band(Dimension.HARDNESS, low, high), Costs.usual(), List.of(file))
                .orElseThrow();
    }

    @Test
    void whatIsWellWithinTheBandIsAccepted() {
        Judgement judged = hour(230);
        double middle = judged.hardness().orElseThrow().value();
        assertThat(advice(judged, middle - 4, middle + 4).deed()).isEqualTo(Advice.Deed.ACCEPT);
    }

    /** Too hard is cheap to mend: temper again, hotter than before, and the band is met more often than now. */
    @Test
    void tooHardIsTemperedAgainHotter() {
        Judgement judged = hour(180);
        Advice advice = advice(judged, 52, 58);
        assertThat(advice.deed()).isEqualTo(Advice.Deed.TEMPER_AGAIN);
        assertThat(advice.options().get(0).temper().orElseThrow().kelvin())
                .isGreaterThan(judged.peak().value());
        assertThat(advice.hard()).isGreaterThan(0.8);
    }

    /** Too soft is not mended by heat. */
    @Test
    void tooSoftIsHardenedAgain() {
        assertThat(advice(hour(320), 61, 63).deed()).isEqualTo(Advice.Deed.HARDEN_AGAIN);
    }

    @Test
    void chancesAddUp() {
        Advice advice = advice(hour(230), 57, 60);
        assertThat(advice.soft() + advice.within() + advice.hard()).isBetween(0.999, 1.001);
    }

    @Test
    void noVerdictWhereHardnessIsTooUncertain() {
        Judgement judged =
                Judge.of(Situation.unknownHeat(java.util.OptionalDouble.of(3600), Optional.of(O1)), List.of());
        Advice advice = advice(judged, 57, 58);
        assertThat(advice.deed()).isEqualTo(Advice.Deed.LOOK_FIRST);
        assertThat(advice.findings()).isNotEmpty();
    }

    @Test
    void costsThatSpareNoSoftPartNeverAcceptOne() {
        Judgement judged = hour(320);
        Costs gentle = new Costs(0, 0, 1, 6, 0.1);
        Band band = new Band(Dimension.HARDNESS, 61, 63);
        assertThat(Adviser.of(judged, O1, band, gentle, List.of()).orElseThrow().deed())
                .isEqualTo(Advice.Deed.ACCEPT);
    }

    /** Four in five too hard is not put to use: tempering once more is cheap, a chipped edge is not (common practice). */
    @Test
    void fourInFiveTooHardIsTemperedAgain() {
        Judgement judged = hour(200);
        double[] hrc = judged.ensemble()
                .values(i ->
                        judged.ensemble().hardness(Place.TOP, judged.ensemble().duration(), i));
        double top = judged.weights().quantiles(hrc, 0.2)[0];
        Advice advice = advice(judged, top - 3, top);
        assertThat(advice.hard()).isBetween(0.75, 0.85);
        Advice.Option best = advice.options().get(0);
        assertThat(best.deed()).isEqualTo(Advice.Deed.TEMPER_AGAIN);
        assertThat(best.within()).isGreaterThan(advice.within() + 0.3);
    }

    /** The same thermometer reading: by an oven whose ways are known the second temper hits better than by a heat of no known source. */
    @Test
    void aSecondTemperCarriesTheErrorOfItsOwnHeat() {
        Judgement oven = hour(180);
        Observation probe = new Observation.PartReads(453.15, new Thermocouple("K", 2), Seen.SOME_TIME);
        Judgement anyhow =
                Judge.of(Situation.unknownHeat(java.util.OptionalDouble.of(5400), Optional.of(O1)), List.of(probe));
        assertThat(again(oven).within()).isGreaterThan(again(anyhow).within() + 0.02);
        assertThat(again(oven).loss()).isLessThan(again(anyhow).loss());
    }

    private static Advice.Option again(Judgement judged) {
        return advice(judged, 54, 57).options().stream()
                .filter(o -> o.deed() == Advice.Deed.TEMPER_AGAIN)
                .findFirst()
                .orElseThrow();
    }

    /** Heat that has been had is had: a second temper cooler than the first leaves every history as hard as it was. */
    @Test
    void aCoolerSecondTemperHardlySoftens() {
        Judgement judged = hour(250);
        double[] after = new SecondTemper(judged).hardness(new Temper(453.15, 3600));
        double end = judged.ensemble().duration();
        for (int i = 0; i < after.length; i++) {
            double before = judged.ensemble().hardness(Place.TOP, end, i);
            assertThat(after[i]).isBetween(before - 0.1, before + 1e-9);
        }
    }
}
