package org.strawblue.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.job.UnitSystem;

/** Tables: what is kept, what is added, and what a bad row gets. */
class TableRunTest {

    private record Ran(TableRun.Outcome outcome, List<String> lines) {
        String line(int i) {
            return lines.get(i);
        }
    }

    private static Ran run(String question, String csv) {
        StringWriter out = new StringWriter();
        try {
            TableRun.Outcome outcome =
                    TableRun.run(question, UnitSystem.METRIC, "test.csv", new StringReader(csv), out);
            return new Ran(outcome, out.toString().lines().toList());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void inputColumnsAreKeptAndAnswersAdded() {
        Ran ran = run("colour", "piece,temperature_c,time (min),light\nA,230,60,lamp\n");
        assertThat(ran.outcome().problems()).isEmpty();
        assertThat(ran.line(0)).isEqualTo("piece,temperature_c,time (min),light,name,nm,hex,finding");
        assertThat(ran.line(1)).startsWith("A,230,60,lamp,").containsPattern("#[0-9a-f]{6}");
    }

    @Test
    void aColumnWithTheNameOfAnAnswerIsKeptUnderAnother() {
        assertThat(run("temper", "grade,temperature_c,time_h,hrc\nO1,200,1,60\n")
                        .line(0))
                .isEqualTo("grade,temperature_c,time_h,hrc_given,hrc,hrc_low,hrc_high,finding");
    }

    @Test
    void theSameHeatInEveryFormGivesTheSameHardness() {
        Ran ran = run("temper", """
                grade,temperature_c,time_s
                O1,204.44,3600
                O1,400 F,1 h
                O1,477.59 K,60 min
                gauge plate,"400 °F",1:00 h
                """);
        List<String> hardness = ran.lines().stream()
                .skip(1)
                .map(l -> l.replaceFirst("^.*?,([0-9.]+),[0-9.]+,[0-9.]+,[^,]*$", "$1"))
                .toList();
        assertThat(ran.outcome().unanswered()).isZero();
        assertThat(hardness.stream().distinct()).hasSize(1);
    }

    @Test
    void aBadRowGetsItsFindingAndDoesNotStopTheRest() {
        Ran ran = run(
                "temper",
                "grade,temperature_c,time_h\nO1,warm,1\nnosteel,200,1\nO1,200,\nO1,200\nO1,200,1,9\n,200,1\nO1,200,1\n");
        assertThat(ran.lines()).hasSize(8);
        assertThat(ran.line(1)).contains("warm", "expected a number");
        assertThat(ran.line(2)).contains("No steel is known here");
        assertThat(ran.line(3)).contains("time is missing");
        assertThat(ran.line(4)).contains("the row has 2 cells");
        assertThat(ran.line(5)).contains("the row has 4 cells");
        assertThat(ran.line(6)).contains("neither a grade nor a composition");
        assertThat(ran.line(7)).containsPattern("O1,200,1,[0-9.]+,[0-9.]+,[0-9.]+,");
        assertThat(ran.outcome().rows()).isEqualTo(7);
    }

    @Test
    void outsideTheRangeOfALawTheRowIsRefused() {
        Ran ran = run("temper", "grade,temperature_c,time_h\nO1,1200,1\n");
        assertThat(ran.line(1)).startsWith("O1,1200,1,,,,").contains("stop: ");
    }

    @Test
    void aBareTimeIsTakenInSecondsAndThatIsSaid() {
        Ran ran = run("temper", "grade,temperature,time\nO1,200,3600\nO1,200 C,1 h\n");
        assertThat(ran.line(1)).contains("note: time taken in s", "note: temperature taken in °C");
        assertThat(ran.line(2)).doesNotContain("taken in");
    }

    @Test
    void aCompositionServesInPlaceOfAGrade() {
        Ran ran = run(
                "temper",
                "C,Mn,Si,temperature_c,time_h,as_quenched\n0.74,0.37,0.15,204.4,2.5 h,\n0.74,0.37,0.15,204.4,2.5,65 HRC\n");
        assertThat(ran.outcome().unanswered()).isZero();
    }

    @Test
    void semicolonsAndDecimalCommasAreTaken() {
        Ran ran = run("colour", "temperature_c;time_min\n230,5;60\n");
        assertThat(ran.outcome().unanswered()).isZero();
        assertThat(ran.line(0)).isEqualTo("temperature_c;time_min;name;nm;hex;finding");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n",
                "a,b,c\n1,2,3\n",
                "grade,temperature_c\nO1,200\n",
                "grade,time_h\nO1,1\n",
                "temperature_c,time_h\n200,1\n",
                "grade;temperature_c\nO1;200\n",
                "temperture,tme,grad\n1,2,3\n",
                "grade,temperature_c,time_h\nO1,\"200,1\n",
            })
    void aTableThatCannotBeReadIsToldAsAWhole(String csv) {
        Ran ran = run("temper", csv);
        assertThat(ran.outcome().problems())
                .isNotEmpty()
                .allMatch(p -> !p.remedy().isBlank());
    }

    static Stream<Long> seeds() {
        return new SplittableRandom(20261125).longs(200).boxed();
    }

    /** Whatever stands in the cells, each row is answered or told why not. */
    @ParameterizedTest
    @MethodSource("seeds")
    void randomCellsNeverEscapeAsAnException(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder csv = new StringBuilder("grade,C,Mn,Cr,temperature,time,as_quenched,light\n");
        for (int row = 0; row < 5; row++) {
            for (int cell = 0; cell < 8; cell++) {
                csv.append(cell == 0 ? "" : ",").append(cell(random));
            }
            csv.append('\n');
        }
        for (String question : TableRun.questions()) {
            Ran ran = run(question, csv.toString());
            assertThat(ran.outcome().problems()).isEmpty();
            assertThat(ran.lines()).hasSize(6);
        }
    }

    private static String cell(SplittableRandom random) {
        String[] known = {
            "", "O1", "?", "don't know", "1e400", "-1", "0", "200 C", "1 h", "0.9", "NaN", "lamp", "1/0 h", "½ h"
        };
        if (random.nextInt(3) > 0) {
            return known[random.nextInt(known.length)];
        }
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
            char c = (char) random.nextInt(32, 0x2100);
            text.append(
                    c == ','
                                    || c == '"'
                                    || !Character.isDefined(c)
                                    || Character.isISOControl(c)
                                    || c == '\u2028'
                                    || c == '\u2029'
                                    || c == '\u0085'
                            ? 'x'
                            : c);
        }
        return text.toString();
    }
}
