package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.weather.file.WeatherFiles;
import picocli.CommandLine;

/** The commands of the worked story run in their order, on the first hundred days of its weather. */
class StoryTest {

    private static final int HOURS = 100 * 24;

    @TempDir
    Path folder;

    @Test
    void everyCommandOfTheStoryIsDone() throws Exception {
        List<String> weather = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        int head = (int)
                weather.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        Files.write(folder.resolve("hills.csv"), weather.subList(0, head + HOURS));
        List<String> commands = Files.readAllLines(Path.of("../docs/story.md")).stream()
                .filter(line -> line.startsWith("warmvat "))
                .toList();
        assertTrue(commands.size() >= 10, "commands: " + commands.size());
        for (String command : commands) {
            StringWriter err = new StringWriter();
            CommandLine line = Warmvat.commandLine();
            line.setOut(new PrintWriter(new StringWriter()));
            line.setErr(new PrintWriter(err, true));
            assertEquals(0, line.execute(here(command)), command + "\n" + err);
        }
    }

    /** Files and folders of the story lie in the test's folder. */
    private String[] here(String command) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.remove(0);
        for (int i = 0; i < words.size(); i++) {
            boolean file = words.get(i).matches("(hollow\\.yaml|hills\\.csv)");
            if (file || (i > 0 && words.get(i - 1).equals("--out"))) {
                words.set(i, folder.resolve(words.get(i)).toString());
            }
        }
        return words.toArray(new String[0]);
    }
}
