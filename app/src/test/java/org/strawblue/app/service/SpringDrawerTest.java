package org.strawblue.app.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.app.input.Drawer;
import org.strawblue.app.input.DrawerReader;
import org.strawblue.app.input.Read;
import org.strawblue.core.job.UnitSystem;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;
import org.strawblue.core.spring.Pocket;
import org.strawblue.core.spring.Seating;

/** The example drawer of 24 odd springs: each trap it holds is named by the search. The springs are invented. */
class SpringDrawerTest {

    private static final Path FILE =
            Path.of(System.getProperty("strawblue.root", "..")).resolve("examples/springs/drawer.csv");
    private static Read<Drawer> read = new Read<>(Optional.empty(), List.of(), List.of());
    private static List<String> said = List.of();

    @BeforeAll
    static void search() {
        read = DrawerReader.read(FILE, UnitSystem.METRIC);
        Pocket pocket = new Pocket(
                "the pocket",
                OptionalDouble.of(0.0096),
                OptionalDouble.of(0.004),
                0.026,
                0.008,
                Optional.of(new Band(Dimension.FORCE, 5, 10)),
                Optional.of(new Band(Dimension.FORCE, 12, 25)),
                Optional.of(Seating.BOTH_FLAT),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Sheet sheet = SpringFindService.find(read.value().orElseThrow().springs(), pocket);
        said = sheet.entries().stream()
                .map(Entry.Words.class::cast)
                .map(e -> e.label() + ": " + e.phrase().template())
                .toList();
    }

    @Test
    void everyRowIsUnderstood() {
        assertThat(read.problems()).isEmpty();
        assertThat(read.value().orElseThrow().springs()).hasSize(24);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            binds when compressed       | B1 wide one     | binds: grows to
            does not go in              | B2 twin of it   | does not go into the bore
            takes a set                 | S1 thin and     | takes a set at full travel
            buckles                     | K1 slender      | buckles: bows out
            too long but cuttable       | C1 off a long   | works
            too long, inch              | C2 longer still | cut by
            stainless like steel        | X1 bright one   | taken for stainless wire, whatever it looks like
            wrong hand in a nest        | N1 nest outer + N2 | wrong hand: both are wound to the right
            the right hand in a nest    | N1 nest outer + N3 | works
            few coils                   | F1 few coils    | few coils: only
            two short ones              | T1 stub + T1    | end to end
            slack, on a shim            | T2 short        | on a shim of
            rod                         | R1 slim         | will not go over the rod
            bronze                      | P1 golden       | taken for phosphor bronze
            too strong                  | H1 stiff        | too strong by
            solid                       | D1 solid        | all but solid at full travel
            works as it is              | L1 latch        | as it is
            weighed                     | W1 weighed      | works
            to be wound                 | to be wound     | music wire
            """)
    void theSearchNamesEachTrap(String trap, String spring, String words) {
        assertThat(said).as(trap).anyMatch(s -> s.startsWith(spring) && s.contains(words));
    }

    @Test
    void whatWorksComesFirst() {
        List<Boolean> works = said.stream().map(s -> s.contains(": works")).toList();
        assertThat(works).contains(true, false);
        assertThat(works.lastIndexOf(true)).isLessThan(works.indexOf(false));
    }
}
