package org.strawblue.core;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The rooms of the core and who may look into which. */
class ArchitectureTest {

    private static final String ROOT = "org.strawblue.core.";

    /** Each package and those it may use. */
    private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("table", List.of());
        MAY_USE.put("quantity", List.of("table"));
        MAY_USE.put("source", List.of("table", "quantity"));
        MAY_USE.put("estimate", List.of("table", "quantity", "source"));
        MAY_USE.put("part", List.of("table", "quantity", "source", "estimate"));
        MAY_USE.put("history", List.of("table", "quantity", "source", "estimate", "part"));
        List<String> base = List.of("table", "quantity", "source", "estimate", "part", "history");
        MAY_USE.put("steel", base);
        List<String> withSteel = plus(base, "steel");
        MAY_USE.put("spring", withSteel);
        MAY_USE.put("fit", withSteel);
        MAY_USE.put("heat", withSteel);
        List<String> withHeat = plus(withSteel, "heat");
        MAY_USE.put("colour", List.of("table", "quantity", "source", "estimate"));
        List<String> withColour = plus(withHeat, "colour");
        MAY_USE.put("oxide", withColour);
        MAY_USE.put("glow", withColour);
        MAY_USE.put("pyrometry", withColour);
        List<String> withOxide = plus(withColour, "oxide", "glow", "pyrometry");
        // putting together asks how a temper and a film come out of the heat that locks, loosens or blues
        MAY_USE.put("assembly", plus(withOxide, "fit"));
        MAY_USE.put("watch", withOxide);
        MAY_USE.put("evidence", plus(withOxide, "watch", "fit"));
        MAY_USE.put("job", plus(withOxide, "watch", "evidence", "spring", "fit", "assembly"));
    }

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.strawblue.core");

    @Test
    void eachRoomLooksOnlyIntoTheRoomsBeforeIt() {
        for (var room : MAY_USE.entrySet()) {
            String[] forbidden = MAY_USE.keySet().stream()
                    .filter(p -> !p.equals(room.getKey()) && !room.getValue().contains(p))
                    .map(p -> ROOT + p + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(ROOT + room.getKey() + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(forbidden)
                    .allowEmptyShould(true)
                    .check(CORE);
        }
    }

    @Test
    void everyPackageIsInThePlan() {
        assertThat(CORE.stream()
                        .map(c -> c.getPackageName())
                        .filter(p -> p.startsWith(ROOT))
                        .map(p -> p.substring(ROOT.length()).split("\\.")[0])
                        .distinct())
                .allMatch(MAY_USE::containsKey);
    }

    @Test
    void noTwoRoomsLeanOnEachOther() {
        slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void theCoreHasNoClockNoFilesAndNoFramework() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideOutsideOfPackages(
                        "java.lang..",
                        "java.util..",
                        "java.io",
                        "java.nio.charset",
                        "java.text",
                        "java.math",
                        "org.jspecify..",
                        "org.hipparchus..",
                        "de.siegmar.fastcsv..",
                        "org.strawblue.core..")
                .check(CORE);
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Locale")
                .allowEmptyShould(true)
                .check(CORE);
    }

    private static List<String> plus(List<String> some, String... more) {
        return java.util.stream.Stream.concat(some.stream(), Arrays.stream(more))
                .toList();
    }
}
