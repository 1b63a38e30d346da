package org.strawblue.core.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.source.Standing;

class DutiesTest {

    private static Estimate hardness(String duty, String grade) {
        return Duties.hardness(Duties.find(duty).orElseThrow(), grade).value().orElseThrow();
    }

    /** Measured bench chisels of O1 and W1: 61.5 to 62 HRC (edge-tools-measured); the band for an edge holds them. */
    @Test
    void edgesAreAsHardAsMeasuredChisels() {
        assertTrue(hardness("cutting edge", "O1").band().contains(61.75));
        assertTrue(hardness("chisel", "W1").band().contains(61.75));
    }

    /** Hardened 0.75 % C strip is sold at 38 to 54 HRC (c75s-sheet). */
    @Test
    void springsLieWithinHardenedStrip() {
        Estimate spring = hardness("spring", "1075");
        assertTrue(spring.low() >= 38 && spring.high() <= 54);
    }

    /** Dies of 1.2363 and 1.2379 at 60 ± 1 (forming-handbook): published, where the duty it resembles is common practice. */
    @Test
    void publishedFiguresComeFirst() {
        assertEquals(60, hardness("die", "D2").value());
        assertTrue(hardness("die", "D2").bases().stream().allMatch(b -> b.standing() == Standing.PUBLISHED));
        assertTrue(hardness("die", "O1").bases().stream().allMatch(b -> b.standing() == Standing.COMMON_PRACTICE));
    }

    @Test
    void wordsOfBothSidesOfTheOcean() {
        assertEquals(Duties.find("centre punch"), Duties.find("Center  punch"));
        assertEquals(Duties.find("gauge"), Duties.find("gage"));
        assertTrue(Duties.find("hat stand").isEmpty());
    }

    @Test
    void aDutyTheSteelIsNotUsedForIsRefused() {
        assertTrue(Duties.hardness(Duties.find("spring").orElseThrow(), "D2").stopped());
        assertTrue(Duties.hardness(Duties.find("edge").orElseThrow(), "no such").stopped());
    }

    @Test
    void noWordMeansTwoDuties() {
        long words = Duties.all().stream().mapToLong(d -> d.names().size()).sum();
        long different = Duties.all().stream()
                .flatMap(d -> d.names().stream())
                .distinct()
                .count();
        assertEquals(words, different);
    }
}
