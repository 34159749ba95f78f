package changeover.deploy;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The invariants of the house that no compiler sees. */
class HouseTest {

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("changeover");

    private static final Pattern BANNED_NAME =
            Pattern.compile(".*(Service|Manager|Helper|Utils?|Impl|DTO|Dto)|Abstract.*");

    @Test
    void no_package_of_a_module_goes_round_in_a_circle() {
        for (String module : List.of("contracts", "scheduling", "billing", "web", "deploy")) {
            slices().matching("changeover." + module + ".(*)..")
                    .should()
                    .beFreeOfCycles()
                    .allowEmptyShould(true)
                    .check(HOUSE);
        }
    }

    @Test
    void the_audiences_never_import_each_other() {
        for (String audience : List.of("office", "field", "portal", "api")) {
            String[] others = Stream.of("office", "field", "portal", "api")
                    .filter(other -> !other.equals(audience))
                    .map(other -> "changeover.web." + other + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("changeover.web." + audience + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(others)
                    .allowEmptyShould(true)
                    .check(HOUSE);
        }
    }

    @Test
    void only_the_documents_know_the_pdf_library() {
        noClasses()
                .that()
                .resideOutsideOfPackages("changeover.billing.documents..", "changeover.deploy.bench..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.openpdf..")
                .check(HOUSE);
    }

    @Test
    void no_page_below_the_web() {
        noClasses()
                .that()
                .resideInAnyPackage("changeover.contracts..", "changeover.scheduling..", "changeover.billing..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("jakarta.ws.rs..", "io.quarkus.qute..")
                .check(HOUSE);
    }

    @Test
    void no_class_is_longer_than_250_lines() throws IOException {
        assertEquals(List.of(), sources(path -> lines(path) > 250));
    }

    @Test
    void no_class_has_a_name_that_says_nothing() throws IOException {
        assertEquals(
                List.of(),
                sources(path -> BANNED_NAME
                        .matcher(path.getFileName().toString().replace(".java", ""))
                        .matches()));
    }

    @Test
    void every_package_says_what_is_in_it() throws IOException {
        assertEquals(
                List.of(),
                sources(path -> path.toString().contains("/src/main/")
                        && !Files.exists(path.resolveSibling("package-info.java"))));
    }

    private static long lines(Path path) {
        try (Stream<String> lines = Files.lines(path)) {
            return lines.count();
        } catch (IOException cause) {
            throw new java.io.UncheckedIOException(cause);
        }
    }

    private static List<String> sources(Predicate<Path> wanted) throws IOException {
        Path root = Path.of("..").toAbsolutePath().normalize();
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.toString().contains("/target/"))
                    .filter(wanted)
                    .map(path -> root.relativize(path).toString())
                    .sorted()
                    .toList();
        }
    }
}
