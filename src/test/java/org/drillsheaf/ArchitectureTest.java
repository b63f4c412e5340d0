package org.drillsheaf;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between the packages and the rules of the house. */
class ArchitectureTest {
    /** Package to the packages it may use, besides its own and the root. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("saying", Set.of()),
            Map.entry("client", Set.of()),
            Map.entry("figure", Set.of()),
            Map.entry("screen", Set.of("saying", "client")),
            Map.entry("drill", Set.of("saying", "figure", "client")),
            Map.entry("program", Set.of("drill", "screen", "figure", "saying", "client")),
            Map.entry("handout", Set.of("program", "drill", "screen", "figure", "saying", "client")),
            Map.entry("store", Set.of("program", "drill", "screen", "figure", "saying", "client")),
            Map.entry("exchange", Set.of("program", "drill", "screen", "figure", "saying", "client")),
            Map.entry("course", Set.of("handout", "program", "drill", "screen", "figure", "saying", "client")),
            Map.entry(
                    "cli",
                    Set.of(
                            "desk",
                            "course",
                            "handout",
                            "store",
                            "exchange",
                            "program",
                            "drill",
                            "screen",
                            "figure",
                            "saying",
                            "client")),
            Map.entry(
                    "desk",
                    Set.of(
                            "course",
                            "handout",
                            "store",
                            "exchange",
                            "program",
                            "drill",
                            "screen",
                            "figure",
                            "saying",
                            "client")));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.drillsheaf");

    static Stream<String> packages() {
        return ARROWS.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("packages")
    void packageUsesOnlyWhatLiesBelowIt(String name) {
        List<String> forbidden = new ArrayList<>();
        for (String other : ARROWS.keySet()) {
            if (!other.equals(name) && !ARROWS.get(name).contains(other)) {
                forbidden.add("org.drillsheaf." + other + "..");
            }
        }
        check(noClasses()
                .that()
                .resideInAPackage("org.drillsheaf." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden.toArray(String[]::new)));
    }

    @Test
    void rootKnowsNoPackage() {
        check(noClasses()
                .that()
                .resideInAPackage("org.drillsheaf")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ARROWS.keySet().stream()
                        .map(p -> "org.drillsheaf." + p + "..")
                        .toArray(String[]::new)));
    }

    @Test
    void packagesHaveNoCycles() {
        check(slices().matching("org.drillsheaf.(*)..").should().beFreeOfCycles());
    }

    @Test
    void windowToolkitStaysInTheDesk() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("org.drillsheaf.desk..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx.."));
    }

    @Test
    void databaseStaysInTheStore() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("org.drillsheaf.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql.."));
    }

    @Test
    void coreTouchesNoFileNoClockAndNoLocale() {
        String[] core = {
            "org.drillsheaf.figure..",
            "org.drillsheaf.screen..",
            "org.drillsheaf.drill..",
            "org.drillsheaf.program..",
            "org.drillsheaf.client.."
        };
        check(noClasses()
                .that()
                .resideInAnyPackage(core)
                .and()
                .haveSimpleNameNotEndingWith("Files")
                .and()
                .haveSimpleNameNotEndingWith("Reader")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now"));
    }

    @Test
    void onlyTheCommandLinePrints() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("org.drillsheaf.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err"));
    }

    @Test
    void noOldDates() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages("org.drillsheaf.handout..", "org.drillsheaf.saying..") // what ICU formats
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Date"));
    }

    @Test
    void noInjectionAndNoCatchAllClasses() {
        check(noFields().should().beAnnotatedWith("javax.inject.Inject"));
        check(classes().should().haveNameNotMatching(".*(Util|Utils|Helper|Manager)"));
    }

    @Test
    void everyPackageTellsWhatLivesThere() throws IOException {
        Path sources = Path.of("src/main/java");
        try (Stream<Path> files = Files.walk(sources)) {
            List<Path> silent = files.filter(Files::isDirectory)
                    .filter(ArchitectureTest::holdsJava)
                    .filter(folder -> !isDescribed(folder.resolve("package-info.java")))
                    .toList();
            assertThat(silent)
                    .as("folders without a package-info.java that is @NullMarked")
                    .isEmpty();
        }
    }

    private static boolean holdsJava(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(f -> f.toString().endsWith(".java"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static boolean isDescribed(Path info) {
        try {
            return Files.exists(info) && Files.readString(info).contains("@NullMarked");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }
}
