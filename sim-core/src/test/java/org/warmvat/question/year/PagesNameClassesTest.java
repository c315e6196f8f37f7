package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages on model and engines name classes that exist, and the model's page has every equation that the classes cite. */
class PagesNameClassesTest {
    private static final Path DOCS = Path.of("..", "docs");
    /** A name in code marks that looks like a class of ours: capital, then small letters. */
    private static final Pattern NAME = Pattern.compile("`([A-Z][A-Za-z]*[a-z][A-Za-z0-9]*)(?:\\.[a-z]\\w*)?`");

    private static final Pattern CITED = Pattern.compile("\\b[Ee]quations? (\\d+\\.\\d)");

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"model.md", "engines.md"})
    void everyClassNamedExists(String page) throws IOException {
        Set<String> known = sources().stream()
                .map(file -> file.getFileName().toString().replace(".java", ""))
                .collect(Collectors.toSet());
        Set<String> unknown = new TreeSet<>();
        int named = 0;
        Matcher matcher = NAME.matcher(Files.readString(DOCS.resolve(page)));
        while (matcher.find()) {
            named++;
            if (!known.contains(matcher.group(1))) {
                unknown.add(matcher.group(1));
            }
        }
        assertEquals(Set.of(), unknown);
        assertTrue(named > 10, "names found: " + named);
    }

    @ParameterizedTest
    @ValueSource(strings = {"model.md"})
    void everyEquationCitedIsOnThePage(String page) throws IOException {
        String text = Files.readString(DOCS.resolve(page));
        Set<String> missing = new TreeSet<>();
        for (Path source : sources()) {
            if (source.startsWith(Path.of("src", "test"))) {
                // tests cite equations of their own sources too
                continue;
            }
            Matcher matcher = CITED.matcher(Files.readString(source));
            while (matcher.find()) {
                if (!text.contains("(" + matcher.group(1) + ")")) {
                    missing.add(matcher.group(1) + " in " + source.getFileName());
                }
            }
        }
        assertEquals(Set.of(), missing);
    }
}
