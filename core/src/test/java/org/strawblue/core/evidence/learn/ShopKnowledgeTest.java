package org.strawblue.core.evidence.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.evidence.sample.Distribution;
import org.strawblue.core.evidence.sample.Ensemble;
import org.strawblue.core.evidence.sample.Influence;
import org.strawblue.core.evidence.sample.Priors;
import org.strawblue.core.heat.course.Course;
import org.strawblue.core.heat.course.Setting;
import org.strawblue.core.heat.course.Spell;
import org.strawblue.core.history.Place;
import org.strawblue.core.part.PartShape;

class ShopKnowledgeTest {

    private static final Subject OVEN = new Subject(Influence.OVEN_OFFSET, "kitchen oven");

    private static Told told(double value, double half, String from) {
        return new Told(value, value - half, value + half, from);
    }

    private static double width(Distribution d) {
        return d.high() - d.low();
    }

    @Test
    void nothingLearnedLeavesWhatIsUsual() {
        Priors usual = Priors.usual();
        assertThat(ShopKnowledge.NOTHING.priors(usual, List.of("kitchen oven"))).isSameAs(usual);
        assertThat(ShopKnowledge.NOTHING.next(OVEN)).isEmpty();
    }

    @Test
    void oneJobIsBelievedLessThanThreeAndAnotherOvenNotAtAll() {
        ShopKnowledge one =
                ShopKnowledge.NOTHING.with(OVEN, told(-14, 5, "a")).value().orElseThrow();
        ShopKnowledge three = one.with(OVEN, told(-12, 5, "b"))
                .then(k -> k.with(OVEN, told(-16, 5, "c")))
                .value()
                .orElseThrow();
        Priors usual = Priors.usual();
        Distribution after1 = one.priors(usual, List.of("kitchen oven")).of(Influence.OVEN_OFFSET);
        Distribution after3 = three.priors(usual, List.of("kitchen oven")).of(Influence.OVEN_OFFSET);
        assertThat(width(after1)).isBetween(10.1, width(usual.of(Influence.OVEN_OFFSET)));
        assertThat(width(after3)).isLessThan(width(after1));
        assertThat(after3.centre()).isCloseTo(-13.5, within(1.0));
        assertThat(three.priors(usual, List.of("toaster"))).isSameAs(usual);
        assertThat(three.next(OVEN).orElseThrow().bases())
                .allMatch(b -> b.source().equals("shop-knowledge") && b.what().contains("3 logs"));
        assertThat(width(three.of(OVEN).orElseThrow().own(usual.of(Influence.OVEN_OFFSET))))
                .isLessThan(width(after3));
    }

    @Test
    void theSameLogAgainDoesNotCountTwice() {
        ShopKnowledge twice = ShopKnowledge.NOTHING
                .with(OVEN, told(-14, 5, "a"))
                .then(k -> k.with(OVEN, told(-14, 5, "a")))
                .value()
                .orElseThrow();
        assertThat(twice.of(OVEN).orElseThrow().jobs()).isEqualTo(1);
    }

    @Test
    void whatDoesNotFitIsSaidNotToFit() {
        Answer<ShopKnowledge> odd = ShopKnowledge.NOTHING
                .with(OVEN, told(-14, 5, "a"))
                .then(k -> k.with(OVEN, told(-12, 5, "b")))
                .then(k -> k.with(OVEN, told(45, 5, "c")));
        assertThat(odd.value()).isPresent();
        assertThat(odd.findings()).hasSize(1);
        assertThat(odd.findings().get(0).what().template()).contains("c does not fit the 2 before it");
    }

    @ParameterizedTest
    @EnumSource(Influence.class)
    void whatIsLearnedOfAThingIsNarrowerAndStaysWithinWhatCanBe(Influence influence) {
        if (!ShopKnowledge.learnable(influence)) {
            assertThat(ShopKnowledge.thing(influence)).isEmpty();
            assertThatThrownBy(() -> ShopKnowledge.dimension(influence)).hasMessageContaining("of a job");
            return;
        }
        Distribution usual = Priors.usual().of(influence);
        Learned learned = new Learned(new Subject(influence, "x"), List.of());
        for (int i = 0; i < 6; i++) {
            learned = learned.with(new Told(usual.at(0.8), usual.at(0.5), usual.at(1.1), "job " + i));
        }
        Distribution next = learned.next(usual);
        assertThat(usual.score(next.high()) - usual.score(next.low()))
                .isBetween(0.2, 0.95 * 2 * org.strawblue.core.estimate.Normal.HALF_OF_80);
        assertThat(usual.score(next.centre())).isBetween(0.3, 1.1);
    }

    private static Ensemble heat() {
        Setting oven = new Setting.InOven(473, 15, 900, 0, 6, 0.8);
        Course course = new Course(new PartShape.RoundBar(0.006, 0.05), 295, List.of(new Spell(oven, 3600)));
        return Ensemble.draw(course, Optional.empty(), Priors.usual(), 4000, 3, 3600);
    }

    /** Evidence of known bell in, the same bell out: what was believed before is taken away again. */
    @Test
    void aJudgedJobTellsWhatItsEvidenceTold() {
        Ensemble ensemble = heat();
        var weights = ensemble.weights((e, i) -> {
            double off = (e.influence(Influence.OVEN_OFFSET, i) + 12) / 6;
            return -off * off / 2;
        });
        Map<Influence, Told> told = JobTells.of(ensemble, weights, "job 1");
        assertThat(told).containsOnlyKeys(Influence.OVEN_OFFSET);
        Told offset = told.get(Influence.OVEN_OFFSET);
        assertThat(offset).isNotNull();
        assertThat(offset.value()).isCloseTo(-12, within(0.7));
        assertThat((offset.high() - offset.low()) / 2 / 1.2816).isCloseTo(6, within(0.6));
    }

    @Test
    void aPartThatCameOutHotTellsOfTheOvenAndLaterJobsUseIt() {
        Ensemble ensemble = heat();
        var weights = ensemble.weights((e, i) -> {
            double off = (e.peak(Place.TOP, i) - 505) / 3;
            return -off * off / 2;
        });
        ShopKnowledge shop = ShopKnowledge.NOTHING;
        for (var entry : JobTells.of(ensemble, weights, "job 1").entrySet()) {
            shop = shop.with(new Subject(entry.getKey(), "the oven"), entry.getValue())
                    .value()
                    .orElseThrow();
        }
        Priors better = shop.priors(Priors.usual(), List.of("the oven"));
        assertThat(better.of(Influence.OVEN_OFFSET).centre()).isGreaterThan(8);
        assertThat(width(better.of(Influence.OVEN_OFFSET)))
                .isLessThan(width(Priors.usual().of(Influence.OVEN_OFFSET)));
    }

    @Test
    void evidenceThatTellsNothingTeachesNothing() {
        Ensemble ensemble = heat();
        assertThat(JobTells.of(ensemble, ensemble.weights(), "job")).isEmpty();
        assertThatThrownBy(() -> new Subject(Influence.OVEN_OFFSET, " ")).hasMessageContaining("name");
        assertThatThrownBy(() -> new Told(1, 2, 3, "x")).hasMessageContaining("order");
    }
}
