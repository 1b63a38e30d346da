package org.strawblue.core.steel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.estimate.Answer;
import org.strawblue.core.estimate.Estimate;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.source.Bibliography;
import org.strawblue.core.table.Table;

class GradesTest {

    static List<Grade> grades() {
        return Grades.all();
    }

    @Test
    void thereAreTwentyThree() {
        assertThat(Grades.all()).hasSize(23);
    }

    /** European numbers as the steelmakers' cards pair them; UK and US words as the trade uses them (common practice). */
    @ParameterizedTest
    @CsvSource({
        "o1,O1",
        "O-1,O1",
        "1.2510,O1",
        "100 MnCrW4,O1",
        "gauge plate,O1",
        "Gage Plate,O1",
        "ground flat stock,O1",
        "silver steel,W1",
        "Silver-Steel,W1",
        "water-hardening drill rod,W1",
        "O1 drill rod,O1",
        "100Cr6,52100",
        "EN31,52100",
        "1.2379,D2",
        "HSS,M2",
        "mild steel,1018",
        "EN19,4140",
        "42CrMo4,4140",
        "C75S,1075",
        "1.4125,440C"
    })
    void wordsOfTheTradeLeadToTheGrade(String word, String grade) {
        assertThat(Grades.find(word).value()).map(Grade::name).contains(grade);
    }

    @ParameterizedTest
    @ValueSource(strings = {"drill rod", "spring strip", "carbon steel", "tool steel", "stainless steel"})
    void aWordForSeveralSteelsIsAsked(String word) {
        Answer<Grade> answer = Grades.find(word);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.stopped()).isTrue();
        assertThat(answer.findings().get(0).what().template()).contains("which is it");
    }

    @Test
    void silverSteelSaysWhatItIsTakenFor() {
        assertThat(Grades.find("silver steel").findings())
                .singleElement()
                .isInstanceOfSatisfying(
                        Finding.Caution.class,
                        c -> assertThat(c.why().template()).contains("chromium"));
    }

    @ParameterizedTest
    @CsvSource({"gage plat,gage plate", "42CrMo5,42CrMo4", "silver stel,silver steel", "{}gauge plate,gauge plate"})
    void anUnknownWordGetsTheNearestKnown(String word, String near) {
        Answer<Grade> answer = Grades.find(word);
        assertThat(answer.stopped()).isTrue();
        assertThat(answer.findings().get(0).remedy().template()).contains(near);
    }

    @Test
    void nonsenseGetsNoSuggestion() {
        assertThat(Grades.find("qqqqqqqqqqqq").findings().get(0).remedy().template())
                .contains("composition");
    }

    @ParameterizedTest
    @MethodSource("grades")
    void theNominalLiesWithinTheLimits(Grade grade) {
        grade.limits()
                .forEach((element, band) -> assertThat(
                                band.contains(grade.composition().of(element)))
                        .as("%s of %s", element, grade.name())
                        .isTrue());
    }

    @ParameterizedTest
    @MethodSource("grades")
    void figuresAreInTheOrderOfMetallurgy(Grade grade) {
        Estimate ac1 = grade.found(Property.AC1).orElseThrow();
        Estimate ac3 = grade.found(Property.AC3).orElseThrow();
        assertThat(ac1.value()).isLessThan(ac3.value());
        grade.found(Property.MARTENSITE_START)
                .ifPresent(ms -> assertThat(ms.high()).isLessThan(ac1.low()));
        grade.found(Property.AUSTENITISE).ifPresent(a -> assertThat(a.low()).isGreaterThan(ac1.value()));
        if (grade.madeFor().isPresent()) {
            assertThat(grade.found(Property.AUSTENITISE)).isPresent();
            assertThat(grade.found(Property.SOAK)).isPresent();
            assertThat(grade.fits()).hasSize(Quenchant.Family.values().length);
            Band carbon = grade.limits().get(Element.C);
            assertThat(grade.found(Property.DISSOLVED_CARBON).orElseThrow().value() * 100)
                    .isLessThanOrEqualTo(carbon.high());
        }
    }

    @ParameterizedTest
    @MethodSource("grades")
    void everyFigureHasASourceInTheBibliography(Grade grade) {
        grade.figures()
                .values()
                .forEach(e -> e.bases()
                        .forEach(b -> assertThat(Bibliography.find(b.source()))
                                .as(b.source())
                                .isPresent()));
        grade.compositionBases()
                .forEach(b ->
                        assertThat(Bibliography.find(b.source())).as(b.source()).isPresent());
    }

    @Test
    void everyTableOfThePackageNamesKnownSources() {
        for (String table : List.of("grade-words.csv", "grade-quenches.csv", "quenchants.csv", "quench-films.csv")) {
            Table.of(Grades.class, table)
                    .rows()
                    .forEach(row -> assertThat(Bibliography.find(row.text("source")))
                            .as("%s line %d", table, row.line())
                            .isPresent());
        }
    }

    @Test
    void everyGradeHasWords() {
        assertThat(Grades.all()).allSatisfy(g -> assertThat(Grades.words(g)).contains(g.name()));
    }
}
