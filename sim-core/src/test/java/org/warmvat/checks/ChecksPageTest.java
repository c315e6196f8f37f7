package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Keeps {@code docs/checks.md} and its count in the README true. With {@code -Dchecks.write=true} the page is written, and
 * then compared like any other time.
 */
class ChecksPageTest {

    private static final Path DOCS = Path.of("..", "docs", "checks.md");
    private static final Path README = Path.of("..", "README.md");

    private static ChecksPage page;

    @BeforeAll
    static void gather() throws IOException, URISyntaxException, ReflectiveOperationException {
        page = new ChecksPage(all());
        if (Boolean.getBoolean("checks.write")) {
            Files.writeString(DOCS, page.text());
        }
    }

    /** Every test class that is {@link Published}. */
    private static List<Published> all() throws IOException, URISyntaxException, ReflectiveOperationException {
        Path root = Path.of(ChecksPageTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        List<Published> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(f -> f.toString().endsWith("Test.class"))
                    .sorted()
                    .toList()) {
                String name = root.relativize(file).toString().replace(".class", "");
                Class<?> found = Class.forName(name.replace('/', '.').replace('\\', '.'));
                if (Published.class.isAssignableFrom(found)) {
                    Constructor<?> constructor = found.getDeclaredConstructor();
                    constructor.setAccessible(true);
                    all.add((Published) constructor.newInstance());
                }
            }
        }
        return all;
    }

    @Test
    void thePageIsFresh() throws IOException {
        assertEquals(page.text(), Files.readString(DOCS), "docs/checks.md is stale: write it with -Dchecks.write=true");
    }

    @Test
    void theReadmeSaysHowMany() throws IOException {
        String readme = Files.readString(README);
        assertTrue(readme.contains(page.inOneLine()), "README.md should say: " + page.inOneLine());
        assertTrue(readme.contains("docs/checks.md"));
    }

    @Test
    void thereAreEnoughOfThem() {
        assertTrue(page.values() >= 60, String.format(Locale.ROOT, "%d values", page.values()));
        assertTrue(page.sources() >= 25, String.format(Locale.ROOT, "%d sources", page.sources()));
        assertTrue(page.digesterValues() >= 15, String.format(Locale.ROOT, "%d on digesters", page.digesterValues()));
    }
}
