package org.strawblue.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.quantity.Phrase;
import org.strawblue.core.quantity.Quantity;
import org.strawblue.core.source.Basis;
import org.strawblue.core.source.Standing;

class EstimateTest {

    private static final Basis PRINTED = new Basis("curve", "astm-e140", Standing.PUBLISHED);
    private static final Basis RECALLED = new Basis("constant", "from-memory", Standing.FROM_MEMORY);

    @Test
    void anEstimateIsWeakWhereAnyPartOfItIs() {
        assertThat(Estimate.of(Dimension.HARDNESS, 60, 58, 61, PRINTED).weak()).isFalse();
        assertThat(Estimate.of(Dimension.HARDNESS, 60, 58, 61, PRINTED, RECALLED)
                        .weak())
                .isTrue();
    }

    @Test
    void anEstimateKeepsItsOrder() {
        Estimate e = Estimate.of(Dimension.HARDNESS, 60, 58, 61, PRINTED);
        assertThat(e.quantity()).isEqualTo(Quantity.hardness(60));
        assertThat(e.band()).isEqualTo(new Band(Dimension.HARDNESS, 58, 61));
        assertThatThrownBy(() -> Estimate.of(Dimension.HARDNESS, 60, 61, 62, PRINTED))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Estimate.of(Dimension.HARDNESS, Double.NaN, 61, 62, PRINTED))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void outsideARangeTheFindingGivesTheValueAndBothLimits() {
        Validity validity = new Validity("The law", "time", new Band(Dimension.TIME, 40, 3600));
        assertThat(validity.check(60)).isEmpty();
        assertThat(validity.check(10).orElseThrow())
                .isInstanceOfSatisfying(
                        Finding.Stop.class,
                        stop -> assertThat(stop.what().amounts())
                                .containsExactly(Quantity.time(10), Quantity.time(40), Quantity.time(3600)));
    }

    @Test
    void findingsAddUpAlongTheWay() {
        Finding note = new Finding.Note(Phrase.of("a"), Phrase.of("b"), Phrase.of("c"));
        Finding stop = new Finding.Stop(Phrase.of("x"), Phrase.of("y"), Phrase.of("z"));
        Answer<Integer> one = Answer.of(1, note);
        assertThat(one.then(n -> Answer.of(n + 1, note)).findings()).containsExactly(note, note);
        assertThat(one.map(n -> n + 1).value()).contains(2);
        Answer<Integer> none = one.then(n -> Answer.refused(stop));
        assertThat(none.value()).isEmpty();
        assertThat(none.stopped()).isTrue();
        assertThat(none.then(n -> Answer.of(9)).findings()).containsExactly(note, stop);
        assertThat(one.stopped()).isFalse();
    }
}
