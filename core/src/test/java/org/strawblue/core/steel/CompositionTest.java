package org.strawblue.core.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.history.Trace;

class CompositionTest {

    @Test
    void elementsGoInAndComeOut() {
        Composition steel = Composition.carbon(0.9).with(Element.MN, 1.2).with(Element.W, 0.5);
        assertEquals(1.2, steel.of(Element.MN));
        assertEquals(steel, Composition.of(steel.map()));
        assertEquals(0, Composition.of(Map.of()).c());
    }

    @Test
    void symbolsAreReadInAnyCase() {
        for (Element element : Element.values()) {
            assertEquals(Optional.of(element), Element.find(element.symbol()));
        }
        assertEquals(Optional.of(Element.MN), Element.find(" mn "));
        assertEquals(Optional.empty(), Element.find("Xx"));
    }

    @Test
    void noSteelHasLessThanNothingOrMoreThanAll() {
        assertThrows(IllegalArgumentException.class, () -> Composition.carbon(-0.1));
        assertThrows(
                IllegalArgumentException.class, () -> Composition.carbon(60).with(Element.CR, 60));
        assertThrows(IllegalArgumentException.class, () -> Composition.carbon(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Temper(500, 0));
    }

    /** 1.15 % carbon is more than any heat in the data (1.02): answered, with a note. */
    @Test
    void aLittleBeyondTheDataIsAnsweredWithANote() {
        Answer<Estimate> answer = Tempering.hardness(
                Steel.of(Composition.carbon(1.15).with(Element.MN, 0.5)), List.of(new Temper(473.15, 3600)));
        assertTrue(answer.value().isPresent());
        assertTrue(answer.findings().get(0) instanceof Finding.Note);
    }

    /** Halving the steps of a ramp by splitting it must not change what it does. */
    @Test
    void aRampMayBeCutInTwo() {
        HollomonJaffe exchange = new HollomonJaffe(17);
        Trace whole = Trace.ramp(400, 700, 3000);
        Trace cut = new Trace(new double[] {0, 1500, 3000}, new double[] {400, 550, 700});
        Temper one = exchange.equivalent(whole);
        Temper two = exchange.equivalent(cut);
        assertEquals(one.seconds(), two.seconds(), one.seconds() * 5e-3);
    }
}
