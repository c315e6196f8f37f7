package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.option.Inputs;
import org.warmvat.network.Warning;
import picocli.CommandLine;

/** Every command says the same of the same inputs: one odd design in one suspicious weather file. */
class EveryCommandTest {

    private static final int DAYS = 28;
    private static final String CHOICES = "src/test/resources/few-choices.yaml";

    @TempDir
    Path folder;

    /** A collector that faces away from the sun, and a wind that the weather does not have. */
    private Path design() throws IOException {
        String text = new String(DesignDocument.demonstrationBytes(), java.nio.charset.StandardCharsets.UTF_8)
                .replaceFirst("azimuth_deg: 180", "azimuth_deg: 0");
        return Files.writeString(folder.resolve("odd.yaml"), text + "\nassumed_weather: {wind_m_s: 9}\n");
    }

    /** Light that comes eight hours before the sun of the place. */
    private Path weather() throws IOException {
        StringBuilder text =
                new StringBuilder(YearCommandTest.weatherText(0).replace("longitude_deg: -2.4", "longitude_deg: -120"));
        for (int hour = 1; hour <= 24 * DAYS; hour++) {
            int light = hour % 24 > 9 && hour % 24 < 16 ? 120 : 0;
            text.append(String.format(
                    java.util.Locale.ROOT, "2025-01-%02dT%02d:00,4.0,%d\n", 1 + hour / 24, hour % 24, light));
        }
        return Files.writeString(folder.resolve("dark.csv"), text);
    }

    private Document document(String... words) throws Exception {
        CommandLine line = Warmvat.commandLine();
        line.parseArgs(words);
        return ((Answering) line.getSubcommands().get(words[0]).getCommand()).document();
    }

    @Test
    void theSameWarningsAndAssumptionsOfTheInputsStandInAll() throws Exception {
        List<String> inputs = List.of(design().toString(), weather().toString());
        List<List<String>> commands = List.of(
                List.of("year"),
                List.of("carry", "--from", "01-03", "--to", "01-20"),
                List.of("backup", "--sizes", "500"),
                List.of("hold", "--from", "01-10"),
                List.of("vary", "--set", "solar.area_m2=2"),
                List.of("sizes", "--litres", "900"),
                List.of("choose"),
                List.of("advise"),
                List.of("spread", "--draws", "8"),
                List.of("check"));
        List<String> expected = new ArrayList<>();
        for (List<String> command : commands) {
            boolean choose = command.get(0).equals("choose");
            List<String> files = choose ? List.of(inputs.get(0), CHOICES, inputs.get(1)) : inputs;
            String[] words = Stream.of(List.of(command.get(0)), files, command.subList(1, command.size()))
                    .flatMap(List::stream)
                    .toArray(String[]::new);
            Document told = document(words);
            List<String> now = new ArrayList<>();
            told.grounds().warnings().stream()
                    .filter(warning -> List.of("weather", "design").contains(warning.key()))
                    .map(Warning::sentence)
                    .forEach(now::add);
            now.addAll(told.grounds().defaults());
            told.grounds().assumed().stream()
                    .filter(sentence -> sentence.matches("(?s).*(9 m/s|azimuth|total solids|ground temperature).*"))
                    .forEach(now::add);
            if (expected.isEmpty()) {
                expected.addAll(now);
            }
            assertEquals(String.join("\n", expected), String.join("\n", now), command.toString());
            assertEquals(files.size(), told.grounds().inputs().size(), command.toString());
            assertTrue(told.grounds().cautions().size() > 8, command.toString());
            String but = String.join(" ", told.verdict().but());
            assertTrue(but.contains("sun"), command + ": " + but);
        }
        String all = String.join("\n", expected);
        assertTrue(all.contains("faces away from the equator"), all);
        assertTrue(all.contains("9 m/s"), all);
        assertTrue(all.contains("while the sun is down") || all.contains("before sunrise") || all.contains("sun"), all);
    }

    /** A paddle that turns far too fast cooks the slurry: warm is not the word for it. */
    @Test
    void aVerdictOfABoilingTankSaysSo() throws Exception {
        String design = Files.readString(design());
        Path boiling = Files.writeString(
                folder.resolve("boiling.yaml"),
                design.replaceFirst("revolutions_per_hour: [0-9.]+", "revolutions_per_hour: 10000"));
        for (String[] words : List.of(
                new String[] {"year"},
                new String[] {"carry", "--from", "01-03", "--to", "01-20"},
                new String[] {"sizes", "--litres", "900"})) {
            Document told = document(Stream.of(
                            Stream.of(words[0], boiling.toString(), weather().toString()),
                            Stream.of(words).skip(1))
                    .flatMap(part -> part)
                    .toArray(String[]::new));
            String but = String.join(" ", told.verdict().but());
            assertTrue(but.contains("boiling is not modelled"), words[0] + ": " + but);
        }
    }

    /** Far too much air is dosed: no command is silent about it. */
    @Test
    void aDangerousShareOfAirIsToldByEveryCommandThatRuns() throws Exception {
        String design = Files.readString(design());
        String airy = Files.writeString(
                        folder.resolve("airy.yaml"), design.replaceFirst("litres_per_hour: 1.0", "litres_per_hour: 20"))
                .toString();
        String weather = weather().toString();
        for (String[] words : List.of(
                new String[] {"year", airy, weather},
                new String[] {"carry", airy, weather, "--from", "01-03", "--to", "01-20"},
                new String[] {"backup", airy, weather, "--sizes", "500"},
                new String[] {"hold", airy, weather, "--from", "01-10"},
                new String[] {"vary", airy, weather, "--set", "solar.area_m2=2,3"},
                new String[] {"sizes", airy, weather, "--litres", "900"},
                new String[] {"advise", airy, weather},
                new String[] {"compare", airy, airy, "--weather", weather})) {
            Document told = document(words);
            assertTrue(
                    told.grounds().warnings().stream()
                            .anyMatch(warning -> warning.key().equals("air_share") && warning.count() > 0),
                    words[0]);
            String but = String.join(" ", told.verdict().but());
            assertTrue(but.contains(" air"), words[0] + ": " + but);
        }
    }

    /** A title may hold anything; a terminal gets none of its commands. */
    @Test
    void aTitleMovesNoTerminal() throws Exception {
        String design = Files.readString(design());
        Path red = Files.writeString(
                folder.resolve("red.yaml"), design.replaceFirst("title: .*", "title: \"\\\\e[31mred\\\\a\""));
        String lines = String.join("\n", TerminalText.lines(document("check", red.toString())));
        assertTrue(lines.startsWith("\ufffd[31mred\ufffd"), lines.substring(0, 20));
        assertTrue(lines.chars().noneMatch(c -> c < ' ' && c != '\n'), lines);
    }

    /** Where nothing is fed the slurry stays for ever, not for infinitely many days. */
    @Test
    void nothingFedStaysForEver() throws Exception {
        String design = Files.readString(design()).replaceAll("kg_per_day: [0-9.]+", "kg_per_day: 0");
        Path unfed = Files.writeString(folder.resolve("unfed.yaml"), design);
        String lines = String.join("\n", TerminalText.lines(document("check", unfed.toString())));
        assertTrue(lines.contains("for ever: nothing is fed"), lines);
        assertFalse(lines.contains("Infinity"), lines);
    }

    /** A separator on the outlet draws its electricity for every kilogram that leaves, water included, and it counts. */
    @Test
    void aSeparatorOnTheOutletIsCounted() throws Exception {
        Path pressed = Files.writeString(
                folder.resolve("pressed.yaml"), Files.readString(design()) + "effluent: {separator_wh_per_kg: 50}\n");
        String weather = weather().toString();
        Map<?, ?> with = (Map<?, ?>)
                document("year", pressed.toString(), weather).data().figures().get("year");
        Map<?, ?> without = (Map<?, ?>)
                document("year", design().toString(), weather).data().figures().get("year");
        double separator = (Double) ((Map<?, ?>) with.get("electricity_kwh")).get("separator");
        double kgPerDay = DesignDocument.read(pressed.toString(), Inputs.bytes(pressed))
                .design()
                .feed()
                .totalKgPerDay();
        assertEquals(DAYS * kgPerDay * 0.050, separator, 1e-6 * separator);
        assertEquals((Double) without.get("net_energy_kwh") - separator, (Double) with.get("net_energy_kwh"), 1e-6);
    }
}
