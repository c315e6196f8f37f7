package org.warmvat.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How many main files know of a thing, told of things that were added last: so many a further one of its kind touches. */
class TouchedFilesTest {

    private static JavaClasses classes;

    @BeforeAll
    static void readClasses() {
        classes = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.warmvat");
    }

    private static String file(JavaClass type) {
        JavaClass at = type.getBaseComponentType();
        while (at.getEnclosingClass().isPresent()) {
            at = at.getEnclosingClass().get();
        }
        return at.getSimpleName();
    }

    /** The files of some types and all that use them. */
    private static Set<String> knowing(Set<String> own) {
        Set<String> knowing = new TreeSet<>();
        for (JavaClass type : classes) {
            boolean uses = type.getDirectDependenciesFromSelf().stream()
                    .map(Dependency::getTargetClass)
                    .anyMatch(target -> own.contains(file(target)));
            if ((uses || own.contains(file(type))) && !type.getSimpleName().equals("package-info")) {
                knowing.add(file(type));
            }
        }
        return knowing;
    }

    @Test
    void aCommandIsItsStudyItsSentencesItsOptionsAndALineInTheList() {
        assertEquals(
                Set.of("HolderStudy", "HolderAnswer", "HolderCommand", "Warmvat"),
                knowing(Set.of("HolderStudy", "HolderAnswer", "HolderCommand")));
        assertEquals(
                Set.of("SpringStudy", "SpringAnswer", "SpringCommand", "Warmvat"),
                knowing(Set.of("SpringStudy", "SpringAnswer", "SpringCommand")));
    }

    @Test
    void aKindOfPictureIsKnownByTheQuestionThatShowsItAlone() {
        assertEquals(Set.of("Histogram", "SpreadPictures"), knowing(Set.of("Histogram")));
    }

    @Test
    void aKindOfWeatherFileIsItsClassAndALineInTheListOfKinds() {
        assertEquals(Set.of("Tmy2", "Recognised"), knowing(Set.of("Tmy2")));
    }
}
