package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.strawblue.core.job.AssemblyWish;
import org.strawblue.core.job.Job;
import org.strawblue.core.oxide.ColourName;

/** The section of a job file that says how the parts go together. */
class AssemblyReadingTest {

    private static final String PARTS = """
            title: t
            units: metric
            parts:
              - name: pin
                steel: O1
                shape: round bar
                diameter: 6 mm
                length: 30 mm
                features:
                  - {name: shank, kind: outside diameter, size: 6 mm g6}
                  - {name: head, kind: length, size: 12 ±0.05 mm}
                  - {name: rough, kind: length, size: 20 mm}
              - name: bush
                steel: O1
                shape: tube
                outside: 12 mm
                bore: 6 mm
                length: 10 mm
                features:
                  - {name: bore, kind: bore, size: 6 mm H7}
                  - {name: head, kind: length, size: 3 ±0.1 mm}
            assembly:
            """;

    private static Read<Job> read(String assembly) {
        return JobReader.read("job.yaml", PARTS + assembly.indent(2));
    }

    private static AssemblyWish wish(String assembly) {
        Read<Job> read = read(assembly);
        assertThat(read.problems()).isEmpty();
        return read.value().orElseThrow().assembly();
    }

    @Test
    void theExampleIsReadAsWritten() {
        Job job = JobReader.read(Path.of(System.getProperty("strawblue.root"), "examples", "detent-block.yaml"))
                .value()
                .orElseThrow();
        AssemblyWish wish = job.assembly();
        assertThat(wish.slides()).hasSize(1);
        assertThat(wish.gaps()).hasSize(2);
        assertThat(wish.locks().get(0).lock().thread().pitch()).isCloseTo(0.001, within(1e-9));
        assertThat(wish.finishes().get(0).colour()).isEqualTo(ColourName.DARK_BLUE);
    }

    @Test
    void sizesAreFoundByTheirNames() {
        AssemblyWish wish = wish("slides: {hole: BORE, shaft: pin / shank}");
        assertThat(wish.slides().get(0).hole().nominal()).isCloseTo(0.006, within(1e-12));
        assertThat(wish.slides().get(0).name()).isEqualTo("shank in bore");
    }

    @Test
    void gapsTakeNamesAndSizes() {
        AssemblyWish wish =
                wish("gaps: {name: g, sizes: pin / head - bush / head - 8 mm h9 + 0.5 mm, at least: 0.1 mm}");
        assertThat(wish.gaps().get(0).chain().links()).hasSize(4);
        assertThat(wish.gaps().get(0).chain().worstCase().low()).isCloseTo(0.00135, within(1e-9));
        assertThat(wish.gaps().get(0).chain().worstCase().high()).isCloseTo(0.001686, within(1e-9));
    }

    @Test
    void locksTakeTradeWordsAndDefaults() {
        AssemblyWish wish =
                wish("locks: [{thread: 8-32}, {thread: M5x0.5, strength: permanent, surface: zinc, engaged: 1/4 in}]");
        assertThat(wish.locks().get(0).lock().strength().name()).isEqualTo("low");
        assertThat(wish.locks().get(1).lock().strength().hot()).isTrue();
        assertThat(wish.locks().get(1).lock().engaged()).isCloseTo(0.00635, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "slides: {hole: bore, shaft: shnak} | the name of one size",
                "slides: {hole: head, shaft: shank} | the name of one size",
                "slides: {hole: bore, shaft: rough} | the name of one size",
                "slides: {hole: bore} | shaft:",
                "gaps: {sizes: 12 mm - 8 mm} | at least: 0.1 mm",
                "gaps: {sizes: 12 mm - 8 q, at least: 1 mm} | a size",
                "gaps: {sizes: 12 mm q6, at least: 1 mm} | sizes with limits",
                "gaps: {sizes: 12 mm, at least: 2 mm, at most: 1 mm} | less than at most",
                "locks: {thread: M99} | a thread",
                "locks: {thread: M4, strength: iron} | low, medium, high",
                "locks: {thread: M4, engaged: 0 mm} | from",
                "finishes: {part: lid, colour: blue} | pin, bush",
                "finishes: {part: pin, colour: mauve} | straw",
                "slots: none | one of slides"
            })
    void faultsAreToldWithWhatWasExpected(String assembly, String expected) {
        Read<Job> read = read(assembly);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).anyMatch(p -> p.expected().contains(expected.strip()));
    }

    @Test
    void everyFieldMayBeUnknown() {
        Read<Job> read = read("slides: don't know\ngaps: don't know\nlocks: {thread: don't know, strength: don't know}"
                + "\nfinishes: {part: don't know, colour: don't know}");
        assertThat(read.problems()).isEmpty();
        assertThat(read.value().orElseThrow().assembly().isEmpty()).isTrue();
    }

    @Test
    void allFaultsAreToldAtOnce() {
        Read<Job> read = read("slides: {hole: x, shaft: y}\nlocks: {thread: M99}\nfinishes: {part: z, colour: q}");
        assertThat(read.problems()).hasSize(5);
    }

    @Test
    void piecesAreDividedWhereASignStandsAlone() {
        assertThat(ChainPieces.of("12 ±0.05 mm - 8 +0/-0.1 mm + a"))
                .extracting(ChainPieces.Piece::text)
                .isEqualTo(List.of("12 ±0.05 mm", "8 +0/-0.1 mm", "a"));
        assertThat(ChainPieces.of("- 3 mm"))
                .extracting(ChainPieces.Piece::weight)
                .containsExactly(-1.0);
        assertThat(ChainPieces.of("12 mm - ")).hasSize(2);
        assertThat(ChainPieces.of("")).hasSize(1);
    }
}
