package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The commands of the worked stories run in their order, and every number that a story tells of an answer stands in the sentences
 * that the program prints, there perhaps with more digits.
 */
class StoryTest {

    private static final Path DOCS = Path.of("../docs");
    private static final Path WEATHER = Path.of("../weather-samples/cool-maritime-hills.csv");
    private static final Path STEPPE = Path.of("../weather-samples/cold-continental.csv");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    private static final Pattern TABLE_ROW = Pattern.compile("\\S {2,}\\S");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"story.md, 11, 45", "story-tunnel.md, 3, 12", "story-decision.md, 3, 30"})
    void theStoryTellsWhatTheProgramPrints(String story, int leastCommands, int leastNumbers) throws IOException {
        Files.copy(WEATHER, folder.resolve("hills.csv"));
        Files.copy(DOCS.resolve("examples/polytunnel-winter-rest.yaml"), folder.resolve("tunnel.yaml"));
        Files.copy(DOCS.resolve("examples/choices.yaml"), folder.resolve("choices.yaml"));
        Files.copy(DOCS.resolve("examples/steppe-as-advised.yaml"), folder.resolve("better.yaml"));
        Files.copy(STEPPE, folder.resolve("steppe.csv"));
        List<BigDecimal> printed = new ArrayList<>();
        List<String> untrue = new ArrayList<>();
        int commands = 0;
        int told = 0;
        for (String line : Files.readAllLines(DOCS.resolve(story))) {
            if (line.equals("```sh")) {
                printed.clear();
            } else if (line.startsWith("warmvat ")) {
                printed.addAll(numbers(sentences(line)));
                commands++;
            } else if (line.startsWith(">")) {
                List<BigDecimal> numbers = numbers(line);
                told += numbers.size();
                numbers.stream()
                        .filter(number -> !stands(number, printed))
                        .forEach(number -> untrue.add(number + " in: " + line));
            }
        }
        assertEquals("", String.join("\n", untrue), "told in " + story + " and not printed");
        assertTrue(commands >= leastCommands && told >= leastNumbers, commands + " commands, " + told + " numbers");
    }

    /** What a command prints, without the rows of its tables. */
    private String sentences(String command) {
        Program program = new Program();
        assertEquals(0, program.run(here(command)), () -> command + "\n" + program.err());
        return String.join(
                "\n",
                program.out()
                        .lines()
                        .filter(line -> !TABLE_ROW.matcher(line.strip()).find())
                        .toList());
    }

    private static List<BigDecimal> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(MatchResult::group)
                .map(BigDecimal::new)
                .toList();
    }

    private static boolean stands(BigDecimal number, List<BigDecimal> printed) {
        return printed.stream()
                .anyMatch(full ->
                        full.setScale(number.scale(), RoundingMode.HALF_UP).compareTo(number) == 0);
    }

    /** Files and folders of the story lie in the test's folder. */
    private String[] here(String command) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.remove(0);
        for (int i = 0; i < words.size(); i++) {
            boolean file = words.get(i)
                    .matches(
                            "(hollow\\.yaml|choices\\.yaml|part[12]|tunnel\\.yaml|hills\\.csv|(steppe|better)\\.yaml|steppe\\.csv)");
            if (file || (i > 0 && words.get(i - 1).equals("--out"))) {
                words.set(i, folder.resolve(words.get(i)).toString());
            }
        }
        return words.toArray(new String[0]);
    }
}
