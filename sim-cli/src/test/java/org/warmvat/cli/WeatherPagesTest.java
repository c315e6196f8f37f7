package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.LayoutDocument;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.ColumnUnit;
import org.warmvat.weather.service.Recognised;
import picocli.CommandLine;

/** What the pages on weather say of commands, options, keys, units, kinds of files and each other is so. */
class WeatherPagesTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]*)(#[^)]*)?\\)");

    private static String page(String name) throws IOException {
        return Files.readString(DOCS.resolve(name));
    }

    private static Stream<String> spans(String page) {
        return CODE.matcher(page.replaceAll("(?s)```.*?```", "")).results().map(found -> found.group(1));
    }

    private static Set<String> options(CommandLine command) {
        Set<String> options = new TreeSet<>();
        command.getCommandSpec().options().forEach(option -> options.addAll(List.of(option.names())));
        command.getSubcommands().values().forEach(sub -> options.addAll(options(sub)));
        return options;
    }

    @ParameterizedTest
    @ValueSource(strings = {"weather-sources.md", "weather-file.md", "glossary.md"})
    void commandsAndOptionsExist(String name) throws IOException {
        CommandLine program = Warmvat.commandLine();
        Set<String> options = options(program);
        for (String span : spans(page(name)).toList()) {
            String words = span.replaceFirst("^warmvat ", "");
            String[] said = words.split(" ");
            for (String word : said) {
                if (word.matches("--[a-z-]+")) {
                    assertTrue(options.contains(word), name + " names the option " + word);
                }
            }
            if (span.startsWith("warmvat ") || words.startsWith("weather ")) {
                CommandLine command = program.getSubcommands().get(said[0]);
                assertTrue(command != null, name + " names the command " + span);
                boolean inner = said[0].equals("weather");
                assertTrue(
                        !inner || command.getSubcommands().containsKey(said[1]), name + " names the command " + span);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"weather-sources.md", "weather-file.md", "glossary.md"})
    void linksLeadSomewhere(String name) throws IOException {
        for (MatchResult link : LINK.matcher(page(name)).results().toList()) {
            String target = link.group(1);
            if (target.startsWith("http")) {
                assertTrue(target.startsWith("https://"), target);
                continue;
            }
            Path file = target.isEmpty() ? DOCS.resolve(name) : DOCS.resolve(target);
            assertTrue(Files.exists(file), name + " links to " + target);
            if (link.group(2) != null) {
                Set<String> anchors = Files.readString(file)
                        .lines()
                        .filter(line -> line.startsWith("#"))
                        .map(line -> line.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT))
                        .map(line -> "#" + line.replaceAll("[^\\p{L}\\d -]", "").replace(' ', '-'))
                        .collect(Collectors.toSet());
                assertTrue(anchors.contains(link.group(2)), name + " links to " + target + link.group(2));
            }
        }
    }

    /** The services said to be read as they come are those that are recognised. */
    @Test
    void servicesReadAsTheyCome() throws IOException {
        Set<String> known = new TreeSet<>();
        for (String kind : Recognised.known()) {
            known.add(kind.replaceAll(" (typical year|hourly series|hourly)$", ""));
        }
        Set<String> said = new TreeSet<>();
        page("weather-sources.md")
                .lines()
                .filter(line -> line.matches("\\|.*\\| as (it comes|they come).*"))
                .forEach(line -> known.stream().filter(line::contains).forEach(said::add));
        assertEquals(known, said);
        long rows = page("weather-sources.md")
                .lines()
                .filter(line -> line.matches("\\|.*\\| as (it comes|they come).*"))
                .filter(line -> known.stream().anyMatch(line::contains))
                .count();
        assertEquals(4, rows);
        assertEquals(
                rows,
                page("weather-sources.md")
                        .lines()
                        .filter(line -> line.matches("\\|.*\\| as (it comes|they come).*"))
                        .count());
    }

    /** Keys and words of layouts. */
    @Test
    void layoutsTakeWhatIsSaid() throws IOException {
        String schema = LayoutDocument.schema();
        Set<String> units = Arrays.stream(Quantity.values())
                .flatMap(quantity -> ColumnUnit.of(quantity).keySet().stream())
                .collect(Collectors.toSet());
        Set<String> stamps = Arrays.stream(Stamp.values()).map(Stamp::key).collect(Collectors.toSet());
        List<String> pairs = spans(page("weather-sources.md"))
                .filter(span -> span.matches("[a-z_]+: .*"))
                .toList();
        assertTrue(pairs.size() >= 5, pairs.toString());
        for (String pair : pairs) {
            String key = pair.substring(0, pair.indexOf(':'));
            String value = pair.substring(pair.indexOf(' ') + 1);
            assertTrue(schema.contains('"' + key + '"'), "no key " + key);
            assertTrue(!key.equals("unit") || units.contains(value), pair);
            assertTrue(!key.equals("stamp") || stamps.contains(value), pair);
        }
        for (String key : List.of("beside", "skip_lines")) {
            assertTrue(spans(page("weather-sources.md")).anyMatch(key::equals), key);
            assertTrue(schema.contains('"' + key + '"'), key);
        }
        String page = page("weather-file.md");
        String listed = page.substring(page.indexOf("in the stated unit: "), page.indexOf("Files beside each other"));
        assertEquals(new TreeSet<>(units), spans(listed).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** The glossary is in order, gives no word twice, and its keys stand, whole or as parts, in the design file or in what is put out. */
    @Test
    void theGlossaryIsInOrderAndItsKeysExist() throws IOException {
        List<String> words = page("glossary.md")
                .lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| word"))
                .map(line -> line.substring(2, line.indexOf(" |", 2)))
                .toList();
        assertTrue(words.size() > 20, words.toString());
        assertEquals(
                words.stream()
                        .map(word -> word.toLowerCase(Locale.ROOT))
                        .sorted()
                        .distinct()
                        .toList(),
                words.stream().map(word -> word.toLowerCase(Locale.ROOT)).toList());
        Set<String> keys = Pattern.compile("[a-z]+")
                .matcher(DesignDocument.schema() + page("outputs.md"))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
        spans(page("glossary.md"))
                .filter(span -> span.matches("[a-z_]+"))
                .flatMap(key -> Stream.of(key.split("_")))
                .forEach(part -> assertTrue(keys.contains(part), "no key holds " + part));
    }
}
