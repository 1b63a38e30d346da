package org.strawblue.app.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.strawblue.core.job.Job;
import org.strawblue.core.job.Unknown;
import org.strawblue.core.job.WorkPiece;
import org.strawblue.core.part.PartShape;
import org.strawblue.core.pyrometry.Crayons;
import org.strawblue.core.pyrometry.InfraredGun;
import org.strawblue.core.quantity.Band;
import org.strawblue.core.quantity.Dimension;

/** What comes of a good file. Limits of 8g6 and 8H7: ISO 286-2, tables (8 g6 = −5/−14 µm, 8 H7 = 0/+15 µm). */
class JobReaderTest {

    private static final Path EXAMPLES =
            Path.of(System.getProperty("strawblue.root")).resolve("examples");

    private static Job example(String name) {
        return JobReader.read(EXAMPLES.resolve(name)).value().orElseThrow();
    }

    private static Job read(String text) {
        Read<Job> read = JobReader.read("t.yaml", text);
        assertThat(read.problems())
                .as(() -> new ProblemPrinter(100, false).print(read.problems()))
                .isEmpty();
        return read.value().orElseThrow();
    }

    @Test
    void thePlungerIsReadAsWritten() {
        Job job = example("index-plunger.yaml");
        WorkPiece pin = job.parts().get(0);
        assertThat(pin.steel().orElseThrow().name()).isEqualTo("O1");
        assertThat(pin.shape()).hasValue(new PartShape.RoundBar(0.008, 0.046));
        assertThat(pin.hardness()).hasValue(new Band(Dimension.HARDNESS, 59, 61));
        assertThat(pin.temper().time()).hasValue(3600);
        Band limits = pin.features().get(0).limits().orElseThrow();
        assertThat(limits.low()).isCloseTo(0.007986, within(1e-9));
        assertThat(limits.high()).isCloseTo(0.007995, within(1e-9));
        assertThat(job.pockets().get(0).travel()).hasValue(0.008);
        assertThat(job.unknowns()).contains(new Unknown("pockets / return spring / cycles", "cycles"));
        assertThat(job.shop().drawer().orElseThrow()).isNotEmpty();
        assertThat(job.shop().indicators())
                .hasAtLeastOneElementOfType(Crayons.class)
                .hasAtLeastOneElementOfType(InfraredGun.class);
    }

    @Test
    void theShopsOwnOvenGoesBeforeTheUsualOne() {
        Job job = example("index-plunger.yaml");
        double stated =
                job.parts().get(0).temper().with().orElseThrow().traits().offset();
        assertThat(stated * 1.2816).isCloseTo(12, within(1e-3)); // 80 % of a normal error lies within 1.2816 sd
    }

    @Test
    void inchesAreReadAsInches() {
        Job job = example("drill-jig-bush.yaml");
        PartShape.Tube bush = (PartShape.Tube) job.parts().get(0).shape().orElseThrow();
        assertThat(bush.outside()).isCloseTo(0.015875, within(1e-12));
        assertThat(bush.inside()).isCloseTo(0.009525, within(1e-12));
        assertThat(bush.length()).isCloseTo(0.028575, within(1e-12));
        assertThat(job.parts().get(0).temper().temperature().orElseThrow()).isCloseTo(463.706, within(1e-3));
    }

    @Test
    void keysAndWordsAreTakenInManyForms() {
        Job job = read("""
                Title: t
                UNITS: imperial
                lighting: Warm LED
                Pieces:
                  - Name: bushing
                    made_of: silver steel
                    SHAPE: Bushing
                    O.D.: 1/2
                    hole: 0.25
                    Overall-Length: 1
                    hardness wanted: 60
                Workshop:
                  hardening_heat: Propane Torch
                  indicators: [IR gun]
                  checks: [test blocks]
                """);
        assertThat(job.parts().get(0).shape())
                .hasValueSatisfying(s -> assertThat(s.section()).isCloseTo(0.003175, within(1e-12)));
        assertThat(job.parts().get(0).hardness()).hasValue(new Band(Dimension.HARDNESS, 59, 61));
        assertThat(job.findings())
                .as("silver steel is taken as W1, and that is told")
                .isNotEmpty();
        assertThat(job.shop().hardeningHeat()).hasSize(1);
    }

    @Test
    void everyFieldMayBeUnknown() {
        Job job = read("""
                title: t
                units: ?
                light: not sure
                parts:
                  - name: p
                    steel: don't know
                    shape: round bar
                    diameter: 8 mm
                    length: ?
                    duty: unknown
                    hardness: don’t know
                    harden: dk
                    temper:
                      with: ?
                      time: don't know
                pockets:
                  - name: s
                    length at rest: don't know
                    travel: 3 mm
                shop: don't know
                """);
        assertThat(job.unknowns().stream().map(Unknown::path))
                .contains(
                        "units",
                        "light",
                        "parts / p / steel",
                        "parts / p / length",
                        "parts / p / temper / time",
                        "shop");
        assertThat(job.parts().get(0).shape()).as("taken as a long bar").isPresent();
        assertThat(job.pockets().get(0).pocket()).isEmpty();
    }

    @Test
    void windowsLineEndsAndAMarkAtTheStartMakeNoDifference() throws IOException {
        String plain = Files.readString(EXAMPLES.resolve("too-soft-to-harden.yaml"));
        assertThat(read("\uFEFF" + plain.replace("\n", "\r\n"))).isEqualTo(read(plain));
    }

    @Test
    void otherEncodingsAreReadAndTold(@TempDir Path folder) throws IOException {
        String text =
                "title: Stift ½\nparts:\n  - {name: p, steel: O1, shape: flat, thickness: 1 mm, width: 9 mm, length: 1 in}\n";
        Path latin = Files.write(folder.resolve("latin.yaml"), text.getBytes(StandardCharsets.ISO_8859_1));
        Path wide = Files.write(folder.resolve("wide.yaml"), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE));
        assertThat(JobReader.read(latin).value().orElseThrow().title()).isEqualTo("Stift ½");
        assertThat(JobReader.read(latin).notes()).anyMatch(n -> n.contains("Latin-1"));
        assertThat(JobReader.read(wide).value().orElseThrow().title()).isEqualTo("Stift ½");
    }

    @Test
    void whatIsNoTextOrTooLargeIsRefused(@TempDir Path folder) throws IOException {
        Path binary = Files.write(folder.resolve("b.yaml"), new byte[] {1, 0, 2});
        Path large = Files.write(folder.resolve("l.yaml"), new byte[5 << 20]);
        Path long256 = Files.writeString(folder.resolve("m.yaml"), "title: " + "x".repeat(300_000));
        for (Path file : new Path[] {binary, large, long256, folder, folder.resolve("none.yaml")}) {
            assertThat(JobReader.read(file).problems()).as(file.toString()).hasSize(1);
        }
    }

    @Test
    void aProblemIsPrintedWithItsLineUnderlined() {
        Read<Job> read = JobReader.read("job.yaml", "title: t\nunits: metrc\n");
        String printed = new ProblemPrinter(80, false).print(read.problems());
        assertThat(printed)
                .contains("job.yaml:2:8\n    units: metrc\n           ^^^^^\n")
                .contains("did you mean: metric")
                .endsWith("Nothing was written.\n");
        assertThat(new ProblemPrinter(80, true).print(read.problems())).contains("\u001b[");
        String narrow = new ProblemPrinter(40, false).print(read.problems());
        assertThat(narrow.lines()).allMatch(l -> l.length() <= 42);
    }
}
