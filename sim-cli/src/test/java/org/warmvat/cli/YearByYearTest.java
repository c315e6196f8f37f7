package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Answering;
import org.warmvat.weather.file.WeatherFiles;
import picocli.CommandLine;

/** Questions of several weather files and of one that holds several years: each named, the worst in full, the middle beside it. */
class YearByYearTest {

    private static final int DAY_H = 24;

    @TempDir
    static Path folder;

    private static Path design;
    private static Path winter;
    private static Path spring;
    private static Path summer;

    @BeforeAll
    static void writeInputs() throws IOException {
        design = Files.write(folder.resolve("tank.yaml"), DesignDocument.demonstrationBytes());
        winter = stretch("winter.csv", 0);
        spring = stretch("spring.csv", 90);
        summer = stretch("summer.csv", 181);
    }

    private static List<String> demonstration() {
        return new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }

    private static int head() {
        return (int) demonstration().stream()
                .takeWhile(line -> !line.matches("[0-9].*"))
                .count();
    }

    /** Eight days of the built-in weather. */
    private static Path stretch(String name, int fromDay) throws IOException {
        List<String> lines = demonstration();
        int from = head() + fromDay * DAY_H;
        return Files.write(
                folder.resolve(name),
                Stream.concat(lines.subList(0, head()).stream(), lines.subList(from, from + 8 * DAY_H).stream())
                        .toList());
    }

    private static Document document(Object... words) throws Exception {
        CommandLine line = Warmvat.commandLine();
        line.parseArgs(Stream.of(words).map(Object::toString).toArray(String[]::new));
        return ((Answering) line.getSubcommands().get(words[0]).getCommand()).document();
    }

    @Test
    void theWorstYearIsToldInFullAndTheMiddleOneBesideIt() throws Exception {
        Document told = document("year", design, summer, winter, spring);
        Map<String, Object> figures = told.data().figures();
        assertEquals("winter.csv", figures.get("worst_year"));
        assertEquals("spring.csv", figures.get("middle_year"));
        assertTrue(
                told.verdict().sentence().startsWith("In the worst of 3 years, winter.csv: "),
                told.verdict().sentence());
        assertTrue(
                told.verdict().but().get(0).startsWith("In the middle year, spring.csv: "),
                told.verdict().toString());
        Document alone = document("year", design, winter);
        assertEquals(alone.data().figures().get("year"), figures.get("year"), "the worst year's own figures");
        List<?> years = (List<?>) figures.get("years");
        assertEquals(
                List.of("summer.csv", "winter.csv", "spring.csv"),
                years.stream().map(year -> ((Map<?, ?>) year).get("name")).toList());
        assertEquals(
                3,
                told.grounds().inputs().stream()
                        .filter(input -> input.role().equals("weather"))
                        .count());
        assertEquals(
                3,
                told.body().paragraphs().get(0).sentences().stream()
                        .filter(s -> s.contains(".csv: "))
                        .count());
    }

    @Test
    void everyQuestionNamesTheYears() throws Exception {
        for (Object[] words : List.of(
                new Object[] {"hold", design, winter, summer},
                new Object[] {"carry", design, winter, winter, "--from", "01-02", "--to", "01-05"})) {
            Document told = document(words);
            assertEquals(2, ((List<?>) told.data().figures().get("years")).size(), words[0].toString());
            assertTrue(
                    told.verdict()
                            .sentence()
                            .matches("(?s)In the worst of 2 years, (winter|summer)\\.csv( \\(2\\))?: .*"),
                    told.verdict().toString());
        }
        assertEquals(
                "winter.csv",
                document("hold", design, summer, winter).data().figures().get("worst_year"));
    }

    /** A use of little more than nothing would be served by less than a holder may have: the search ends at the least allowed. */
    @Test
    void theLeastHolderIsSoughtInEachYear() throws Exception {
        Path using = Files.writeString(
                folder.resolve("using.yaml"),
                Files.readString(design)
                        .replace(
                                "\ngas:\n",
                                "\ngas:\n  holder: {useful_m3: 0.5}\n  uses: [{name: lamp, kind: burner, kw: 0.001, efficiency: 0.5}]\n"));
        Document told = document("holder", using, winter, summer);
        assertEquals(2, ((List<?>) told.data().figures().get("years")).size());
        List<?> curve = (List<?>) ((Map<?, ?>) told.data().figures().get("holder")).get("curve");
        assertEquals(0.001, ((Map<?, ?>) curve.get(0)).get("useful_m3"), "the least that the key allows");
    }

    @Test
    void aFileOfTwoYearsIsCutIntoThem() throws Exception {
        List<String> lines = demonstration();
        List<String> rows = lines.subList(head(), lines.size());
        Path two = Files.write(
                folder.resolve("two.csv"),
                Stream.concat(
                                lines.stream(),
                                rows.stream()
                                        .map(row -> (Integer.parseInt(row.substring(0, 4)) + 1) + row.substring(4)))
                        .toList());
        Document told = document("year", design, two);
        assertEquals("two.csv 2025", told.data().figures().get("worst_year"), "alike: the first");
        assertTrue(told.body().paragraphs().get(0).sentences().get(1).startsWith("two.csv 2026: "), "the second year");
        Document spring = document("spring", design, two, "--from", "03-01");
        assertEquals(
                "two.csv 2026", ((Map<?, ?>) ((List<?>) spring.data().figures().get("years")).get(1)).get("name"));
        assertEquals(8760.0, ((Map<?, ?>) told.data().figures().get("year")).get("hours"));
    }
}
