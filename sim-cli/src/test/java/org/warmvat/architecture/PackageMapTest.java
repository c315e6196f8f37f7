package org.warmvat.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackageMapTest {

    private static final String ROOT = "org.warmvat.";

    private static PackageMap map;
    private static JavaClasses classes;

    @BeforeAll
    static void readMapAndClasses() throws IOException {
        map = PackageMap.read(Path.of(System.getProperty("basedir", ".")).resolve("../docs/packages.md"));
        classes = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.warmvat");
    }

    @Test
    void bothModulesAreSeen() {
        assertTrue(classes.contain("org.warmvat.physics.PhysicalConstants"), "sim-core");
        assertTrue(classes.contain("org.warmvat.cli.Warmvat"), "sim-cli");
    }

    @Test
    void everyClassLivesInAPackageOnTheMap() {
        Set<String> offTheMap = new TreeSet<>();
        classes.forEach(c -> {
            if (!map.arrows().containsKey(below(c))) {
                offTheMap.add(c.getPackageName());
            }
        });
        assertEquals(Set.of(), offTheMap);
    }

    /** A reader who meets a name needs one guess where it lives. */
    @Test
    void noTwoPublicTypesShareAName() {
        Map<String, List<String>> packages = new TreeMap<>();
        classes.stream()
                .filter(c -> c.getModifiers().contains(JavaModifier.PUBLIC) && c.isTopLevelClass())
                .filter(c -> !c.getSimpleName().equals("package-info"))
                .forEach(c -> packages.computeIfAbsent(c.getSimpleName(), unused -> new ArrayList<>())
                        .add(below(c)));
        assertFalse(packages.isEmpty());
        packages.values().removeIf(one -> one.size() == 1);
        assertEquals(Map.of(), packages);
    }

    @Test
    void onlyDrawnArrowsAreUsed() {
        Set<String> undrawn = uses((from, target) -> target.getPackageName().startsWith(ROOT)
                && !below(target).equals(from)
                && !map.arrows().getOrDefault(from, Set.of()).contains(below(target)));
        assertEquals("", String.join("\n", undrawn));
    }

    @Test
    void everyDrawnArrowIsUsed() {
        Set<String> unused = new TreeSet<>();
        map.arrows().forEach((from, targets) -> targets.forEach(target -> unused.add(from + " --> " + target)));
        assertFalse(unused.isEmpty(), "the drawing was not read");
        for (JavaClass user : classes) {
            for (Dependency use : user.getDirectDependenciesFromSelf()) {
                unused.remove(below(user) + " --> " + below(use.getTargetClass().getBaseComponentType()));
            }
        }
        assertEquals(Set.of(), unused, "arrows that nobody uses");
    }

    @Test
    void theDrawingHasNoCircleAndNoNameWithoutABox() {
        assertEquals(Set.of(), map.tangled());
        assertEquals(Set.of(), map.named());
    }

    @Test
    void librariesStayWhereTheTableSays() {
        Set<String> unused = new TreeSet<>(map.libraries().keySet());
        assertFalse(unused.isEmpty(), "the table was not read");
        unused.removeIf(
                library -> !uses((from, target) -> isWithin(target, library)).isEmpty());
        assertEquals(Set.of(), unused, "rows of the table that nothing uses");
        Set<String> astray = uses((from, target) -> map.libraries().entrySet().stream()
                .anyMatch(library -> isWithin(target, library.getKey())
                        && !library.getValue().contains(from)));
        assertEquals("", String.join("\n", astray));
    }

    @Test
    void aRunNeitherAsksTheClockNorThrowsDice() {
        DescribedPredicate<AccessTarget> chance = DescribedPredicate.describe(
                "the clock or chance",
                target ->
                        Set.of("now", "currentTimeMillis", "nanoTime", "random").contains(target.getName())
                                && target.getOwner().getPackageName().startsWith("java."));
        noClasses()
                .that()
                .resideOutsideOfPackages("org.warmvat.cli", "org.warmvat.cli.*")
                .should()
                .accessTargetWhere(
                        DescribedPredicate.describe("asks the clock or chance", a -> chance.test(a.getTarget())))
                .because("the same input gives the same output, bit for bit")
                .check(classes);
    }

    @Test
    void aCircleAndAnUndrawnNameAreFound(@TempDir Path folder) throws IOException {
        PackageMap drawn =
                PackageMap.read(page(folder, "sun --> weather", "weather --> sun & moon", "gas --> sun", "air"));
        assertEquals(Set.of("gas", "sun", "weather"), drawn.tangled());
        assertEquals(Set.of("moon"), drawn.named());
    }

    @Test
    void aLineThatIsNoArrowIsRefused(@TempDir Path folder) throws IOException {
        Path page = page(folder, "sun -> weather");
        assertEquals(
                "the map's line \"sun -> weather\", expected one line per package like \"gas --> network & design\"",
                assertThrows(IllegalArgumentException.class, () -> PackageMap.read(page))
                        .getMessage());
    }

    private static Path page(Path folder, String... arrows) throws IOException {
        String text = "# map\n```mermaid\nflowchart TD\n" + String.join("\n", arrows) + "\n```\n";
        return Files.writeString(folder.resolve("map.md"), text);
    }

    /** Every use of a class, as "package -> package: class uses class", that the condition objects to. */
    private static Set<String> uses(Objection objection) {
        Set<String> found = new TreeSet<>();
        for (JavaClass user : classes) {
            for (Dependency use : user.getDirectDependenciesFromSelf()) {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (objection.to(below(user), target)) {
                    found.add(below(user) + " --> " + target.getPackageName() + ": " + user.getSimpleName() + " uses "
                            + target.getSimpleName());
                }
            }
        }
        return found;
    }

    private static boolean isWithin(JavaClass target, String library) {
        return (target.getPackageName() + ".").startsWith(library + ".");
    }

    private static String below(JavaClass c) {
        return c.getPackageName().startsWith(ROOT) ? c.getPackageName().substring(ROOT.length()) : c.getPackageName();
    }

    private interface Objection {
        boolean to(String from, JavaClass target);
    }
}
