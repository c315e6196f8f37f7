package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.weather.file.WeatherFiles;

/** Commands on three weeks of the built-in weather, and odd designs for them. */
abstract class ThreeWeeks {

    private static final int HOURS = 21 * 24;

    @TempDir
    static Path folder;

    static Path weather;

    final Program program = new Program();

    @BeforeAll
    static void cutWeather() throws IOException {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long head = lines.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        weather = folder.resolve("three-weeks.csv");
        Files.write(weather, lines.subList(0, (int) head + HOURS));
    }

    static Path demonstration() throws IOException {
        Path file = folder.resolve("demonstration.yaml");
        return Files.write(file, DesignDocument.demonstrationBytes());
    }

    /** The demonstration with a holder and a stove that burns a fifth of what is made. */
    static Path withStove() throws IOException {
        String design = Files.readString(demonstration());
        assertTrue(design.contains("\ngas:\n"), design);
        return Files.writeString(
                folder.resolve("stove.yaml"),
                design.replace(
                        "\ngas:\n",
                        "\ngas:\n  holder: {useful_m3: 0.5}\n  uses:\n    - {name: stove, kind: burner, kw: 0.8, efficiency: 0.5,"
                                + " hours: [\"18:00-19:00\"]}\n"));
    }

    static Path withoutGas() throws IOException {
        return Files.writeString(folder.resolve("without-gas.yaml"), """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation: pir_foam, insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                """);
    }

    /** Sees what a sweep or a scaling of a design without heater and gas says, and which pictures it draws. */
    String odd(String command, Path results, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of(
                command, withoutGas().toString(), weather.toString(), "--replace", "--out", results.toString()));
        args.addAll(List.of(more));
        assertEquals(0, program.run(args.toArray(new String[0])), program.err());
        assertFalse(program.out().contains("NaN"), program::out);
        return program.out();
    }
}
