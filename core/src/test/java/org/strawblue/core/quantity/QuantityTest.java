package org.strawblue.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    /** NIST SP 811 appendix B; the temperatures are the fixed points of the scales. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, in, 1, 0.0254",
        "LENGTH, thou, 1000, 0.0254",
        "FORCE, lbf, 1, 4.448221615",
        "FORCE, kgf, 1, 9.80665",
        "FORCE, ozf, 16, 4.448221615",
        "STRESS, ksi, 1, 6894757.293",
        "STIFFNESS, lbf/in, 1, 175.1268352",
        "MOMENT, lbf·in, 1, 0.112984829",
        "IMPACT_ENERGY, ft·lbf, 1, 1.355817948",
        "TEMPERATURE, °F, 32, 273.15",
        "TEMPERATURE, °F, 212, 373.15",
        "TEMPERATURE, °C, 0, 273.15",
        "TEMPERATURE_DIFFERENCE, °F, 9, 5",
        "MASS, lb, 1, 0.45359237",
        "ANGLE, °, 180, 3.141592654",
    })
    void unitsAgreeWithThePublishedFactors(Dimension dimension, String symbol, double value, double si) {
        Unit unit = Units.of(dimension, symbol);
        assertThat(unit.toSi(value)).isCloseTo(si, within(Math.abs(si) * 1e-9 + 1e-9));
        assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(1e-9));
    }

    @Test
    void noNameStandsForTwoUnitsOfOneDimension() {
        for (Dimension dimension : Dimension.values()) {
            Set<String> seen = new HashSet<>();
            Units.all().stream()
                    .filter(u -> u.dimension() == dimension)
                    .flatMap(u -> u.names().stream())
                    .forEach(name -> assertThat(seen.add(name))
                            .as(dimension + " " + name)
                            .isTrue());
        }
    }

    @Test
    void everyDimensionCanBeWritten() {
        assertThat(Units.all()).extracting(Unit::dimension).contains(Dimension.values());
    }

    @Test
    void anUnknownUnitIsRefused() {
        assertThat(Units.find(Dimension.LENGTH, "furlong")).isEmpty();
        assertThatThrownBy(() -> Units.of(Dimension.LENGTH, "furlong")).hasMessageContaining("furlong");
    }

    @Test
    void aBandKnowsItsMiddleAndItsLimits() {
        Band band = Band.between(Dimension.HARDNESS, 60, 58);
        assertThat(band.low()).isEqualTo(58);
        assertThat(band.middle()).isEqualTo(59);
        assertThat(band.width()).isEqualTo(2);
        assertThat(band.contains(60)).isTrue();
        assertThat(band.contains(60.01)).isFalse();
        assertThat(band.clamp(70)).isEqualTo(60);
        assertThatThrownBy(() -> new Band(Dimension.HARDNESS, 60, 58)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(Dimension.HARDNESS, Double.NaN, 58))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPhraseTakesItsAmountsInOrder() {
        Phrase phrase = Phrase.of("grows to {} in a {} bore", Quantity.length(0.5), Quantity.length(0.25));
        assertThat(phrase.write(a -> ((Quantity) a).si() + " m")).isEqualTo("grows to 0.5 m in a 0.25 m bore");
        assertThatThrownBy(() -> Phrase.of("one {} only")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void shorthandsCarryTheirDimension() {
        assertThat(Quantity.temperature(300).dimension()).isEqualTo(Dimension.TEMPERATURE);
        assertThat(Quantity.temperatureDifference(3).dimension()).isEqualTo(Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(Quantity.time(3).dimension()).isEqualTo(Dimension.TIME);
        assertThat(Quantity.force(3).dimension()).isEqualTo(Dimension.FORCE);
        assertThat(Quantity.hardness(60).dimension()).isEqualTo(Dimension.HARDNESS);
        assertThat(Quantity.number(3).dimension()).isEqualTo(Dimension.NUMBER);
        assertThat(Quantity.fraction(0.3).dimension()).isEqualTo(Dimension.FRACTION);
        assertThat(Dimension.FORCE.si()).isEqualTo("N");
    }
}
