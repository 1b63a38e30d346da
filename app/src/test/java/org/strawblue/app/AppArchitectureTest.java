package org.strawblue.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The rooms of the app and who may look into which. */
class AppArchitectureTest {

    private static final String ROOT = "org.strawblue.app.";

    /** Each package and those it may use. */
    private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        // problems tell their numbers in the units a person thinks in
        MAY_USE.put("input", List.of("report"));
        MAY_USE.put("service", List.of());
        MAY_USE.put("proof", List.of());
        MAY_USE.put("report", List.of("service", "proof"));
        MAY_USE.put("pages", List.of("service", "report"));
        MAY_USE.put("table", List.of("input", "service", "report"));
        MAY_USE.put("cli", List.of("input", "service", "proof", "report", "table"));
    }

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.strawblue.app");

    @Test
    void eachRoomLooksOnlyIntoThoseItMay() {
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
                    .check(APP);
        }
    }

    @Test
    void everyPackageIsInThePlan() {
        assertThat(APP.stream()
                        .map(c -> c.getPackageName())
                        .filter(p -> p.startsWith(ROOT))
                        .map(p -> p.substring(ROOT.length()).split("\\.")[0])
                        .distinct())
                .allMatch(MAY_USE::containsKey);
    }

    @Test
    void onlyTheCommandLineKnowsTheCommandLineLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "cli..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .check(APP);
    }
}
