package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Answering;
import org.warmvat.weather.file.WeatherFiles;
import picocli.CommandLine;

/** Every question takes several weather files and one of several years, names each year, and tells the worst and the middle one. */
class ManyYearsTest {

    private static final int DAY_H = 24;
    private static final String CHOICES = "src/test/resources/few-choices.yaml";

    @TempDir
    static Path folder;

    private static Path design;
    private static Path log;
    private static List<String> twoFiles;
    private static List<String> twoYears;

    @BeforeAll
    static void writeInputs() throws Exception {
        String tank = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
        design = Files.writeString(
                folder.resolve("tank.yaml"),
                tank.replace(
                        "\ngas:\n",
                        "\ngas:\n  holder: {useful_m3: 0.5}\n  uses: [{name: lamp, kind: burner, kw: 0.2, efficiency: 0.5}]\n"));
        twoFiles = List.of(stretch("winter.csv", 0), stretch("summer.csv", 181));
        Path two = folder.resolve("two.csv");
        assertEquals(
                0,
                Warmvat.commandLine()
                        .execute(
                                "weather",
                                "make",
                                "../weather-samples/cool-maritime-hills-normals.csv",
                                "--years",
                                "2",
                                "--out",
                                two.toString(),
                                "--quiet"));
        twoYears = List.of(two.toString());
        StringBuilder rows = new StringBuilder("time,slurry_c,backup_electric_w\n");
        for (int hour = 0; hour < 5 * DAY_H; hour++) {
            rows.append(String.format(
                    java.util.Locale.ROOT,
                    "2025-01-%02dT%02d:00,%.3f,%d%n",
                    2 + hour / DAY_H,
                    hour % DAY_H,
                    30 + 0.01 * hour + (hour % 7) * 0.02,
                    hour % 48 < 24 ? 0 : 300));
        }
        log = Files.writeString(folder.resolve("log.csv"), rows);
    }

    /** Eight days of the built-in weather. */
    private static String stretch(String name, int fromDay) throws IOException {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        int head =
                (int) lines.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        int from = head + fromDay * DAY_H;
        return Files.write(
                        folder.resolve(name),
                        Stream.concat(lines.subList(0, head).stream(), lines.subList(from, from + 8 * DAY_H).stream())
                                .toList())
                .toString();
    }

    private static Document document(String command, List<String> weather) throws Exception {
        String[] words = command.split(" ");
        Stream<String> files = words[0].equals("compare") || words[0].equals("fit")
                ? weather.stream().flatMap(file -> Stream.of("--weather", file))
                : weather.stream();
        Stream<String> between = words[0].equals("choose")
                ? Stream.of(CHOICES)
                : words[0].equals("fit") ? Stream.of(log.toString()) : Stream.of();
        List<String> line = Stream.of(
                        Stream.of(words[0], design.toString()),
                        between,
                        files,
                        Stream.of(words).skip(1))
                .flatMap(part -> part)
                .toList();
        CommandLine commands = Warmvat.commandLine();
        commands.parseArgs(line.toArray(new String[0]));
        return ((Answering) commands.getSubcommands().get(words[0]).getCommand()).document();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "year",
                "carry --from 07-01 --to 07-05",
                "backup --sizes 500 --warm-up-days 5",
                "hold",
                "sizes --litres 900",
                "vary --set solar.area_m2=1,2",
                "holder",
                "spread --draws 8",
                "choose",
                "advise",
                "compare"
            })
    void severalFilesAreTakenAndNamed(String command) throws Exception {
        // a window of dates lies in one of the stretches only
        List<String> files = command.startsWith("carry") ? List.of(twoFiles.get(1), twoFiles.get(1)) : twoFiles;
        List<String> names = command.startsWith("carry")
                ? List.of("summer.csv", "summer.csv (2)")
                : List.of("winter.csv", "summer.csv");
        named(document(command, files), command, names);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "year --payback",
                "carry",
                "backup --sizes 500",
                "hold --from 01-10",
                "sizes --litres 900",
                "vary --set solar.area_m2=1,2",
                "spring --from 03-01",
                "holder --unmet 0.9",
                "spread --draws 8",
                "choose",
                "advise",
                "compare",
                "fit"
            })
    void aFileOfTwoYearsIsCutIntoThem(String command) throws Exception {
        named(document(command, twoYears), command, List.of("two.csv 2025", "two.csv 2026"));
    }

    /** Nothing enters its balance, and what it else loses comes in: what passed through is that, not nothing. */
    @Test
    void aTankThatOnlyItsAirWarmsHasABalance() {
        Path out = folder.resolve("cold");
        assertEquals(
                0,
                Warmvat.commandLine()
                        .execute(
                                "hold",
                                "../docs/examples/smallest.yaml",
                                "../weather-samples/cold-continental.csv",
                                "--month",
                                "7",
                                "--quiet",
                                "--out",
                                out.toString()));
    }

    /** The names stand in the figures as years, as worst and as middle one, and in the sentences. */
    private static void named(Document told, String command, List<String> names) {
        if (command.equals("compare")) {
            List<?> designs = (List<?>) ((Map<?, ?>) told.data().figures().get("compare")).get("designs");
            assertEquals(
                    names.stream().map(name -> name.replace(".csv", "")).toList(),
                    designs.stream().map(one -> ((Map<?, ?>) one).get("name")).toList());
            return;
        }
        String word = command.split(" ")[0];
        Object block = List.of("spread", "choose", "advise", "fit").contains(word)
                ? told.data().figures().get(word)
                : told.data().figures();
        Map<?, ?> figures = (Map<?, ?>) block;
        assertEquals(
                names,
                ((List<?>) figures.get("years"))
                        .stream()
                                .map(year -> year instanceof Map<?, ?> map ? map.get("name") : year)
                                .toList());
        String worst = (String) figures.get("worst_year");
        String middle = (String) figures.get("middle_year");
        assertEquals(
                List.of(),
                names.stream()
                        .filter(name -> !List.of(worst, middle).contains(name))
                        .toList());
        String all = told.verdict() + " " + told.body().paragraphs();
        IntStream.range(0, 2).forEach(i -> assertTrue(all.contains(names.get(i)), all));
    }
}
