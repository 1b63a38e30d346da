package org.strawblue.core.evidence.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.strawblue.core.estimate.Normal;
import org.strawblue.core.pyrometry.Surface;

class DistributionTest {

    @ParameterizedTest
    @EnumSource(Influence.class)
    void oneInTenLiesBeyondEachLimit(Influence influence) {
        Distribution d = Priors.usual().of(influence);
        assertThat(d.at(-Normal.HALF_OF_80)).isCloseTo(d.low(), within(1e-9));
        assertThat(d.at(0)).isCloseTo(d.centre(), within(1e-9));
        assertThat(d.at(Normal.HALF_OF_80)).isCloseTo(d.high(), within(1e-9));
        assertThat(d.score(d.at(0.7))).isCloseTo(0.7, within(1e-9));
        assertThat(d.score(d.at(-1.9))).isCloseTo(-1.9, within(1e-9));
    }

    @Test
    void sharesStayBetweenNoneAndAllAndGapsAboveNothing() {
        Distribution share = Priors.usual().of(Influence.ROOM_SHARE);
        Distribution gap = Priors.usual().of(Influence.CONTACT_GAP);
        assertThat(share.at(-6)).isBetween(0.0, 0.05);
        assertThat(share.at(6)).isBetween(0.5, 1.0);
        assertThat(gap.at(-6)).isPositive();
        assertThat(gap.centre()).isCloseTo(20e-6, within(1e-12));
    }

    @Test
    void whatTheShopKnowsBetterTakesThePlace() {
        Priors usual = Priors.usual();
        Priors.Prior learned = new Priors.Prior(Distribution.normal(-14, 4), usual.basis(Influence.OVEN_OFFSET));
        Priors better = usual.with(Map.of(Influence.OVEN_OFFSET, learned))
                .with(Influence.GUN_EMISSIVITY, Surface.PAINTED.emissivity());
        assertThat(better.of(Influence.OVEN_OFFSET).centre()).isEqualTo(-14);
        assertThat(better.of(Influence.OVEN_OFFSET).at(1)).isCloseTo(-10, within(1e-9));
        assertThat(better.of(Influence.GUN_EMISSIVITY).centre()).isEqualTo(0.95);
        assertThat(better.of(Influence.CONTACT_GAP)).isEqualTo(usual.of(Influence.CONTACT_GAP));
        assertThat(usual.bases()).hasSize(Influence.values().length);
        assertThat(Distribution.known(3).score(5)).isZero();
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Distribution(Distribution.Kind.NORMAL, 1, 2, 3))
                .hasMessageContaining("order");
        assertThatThrownBy(() -> new Distribution(Distribution.Kind.LOGNORMAL, 1, 0, 3))
                .hasMessageContaining("reach");
        assertThatThrownBy(() -> Distribution.Kind.of("flat")).hasMessageContaining("flat");
        assertThatThrownBy(() -> new Priors(Map.of())).hasMessageContaining("every influence");
        assertThat(List.of(Distribution.Kind.values())).allMatch(k -> Distribution.Kind.of(k.word()) == k);
    }
}
