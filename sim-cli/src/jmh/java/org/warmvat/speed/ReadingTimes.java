package org.warmvat.speed;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.WeatherFiles;

/**
 * How long a weather file of 1 or of 30 years is read, from bytes on the disk to whole columns: the first time in a process, and again.
 * The argument is the number of years, the file then being the sample year repeated, with the dates of 1991 and after; or it is a file of
 * any kind that is read. A process of its own for each shows the first reading.
 */
public final class ReadingTimes {
    private static final int READINGS = 6;

    private ReadingTimes() {}

    /** Prints a line for each reading. */
    public static void main(String[] arguments) throws IOException, WeatherRefused {
        if (!arguments[0].matches("[0-9]+")) {
            read(Path.of(arguments[0]));
            return;
        }
        Path file = Files.createTempFile("years", ".csv");
        try {
            Files.writeString(file, text(Integer.parseInt(arguments[0])));
            read(file);
        } finally {
            Files.delete(file);
        }
    }

    private static void read(Path file) throws IOException, WeatherRefused {
        for (int reading = 1; reading <= READINGS; reading++) {
            long wall = System.nanoTime();
            long processor = processorNs();
            Weather weather = WeatherFiles.read(file);
            System.out.printf(
                    Locale.ROOT,
                    "reading %d: %d hours, wall %d ms, processor %d ms%n",
                    reading,
                    weather.hours(),
                    (System.nanoTime() - wall) / 1_000_000,
                    (processorNs() - processor) / 1_000_000);
        }
    }

    private static String text(int years) {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        StringBuilder text = new StringBuilder();
        int first = 0;
        while (!Character.isDigit(lines.get(first).charAt(0))) {
            text.append(lines.get(first++)).append('\n');
        }
        LocalDateTime start = LocalDateTime.of(1991, 1, 1, 1, 0);
        LocalDateTime end = start.plusYears(years);
        int row = 0;
        for (LocalDateTime time = start; time.isBefore(end); time = time.plusHours(1)) {
            String line = lines.get(first + row++ % (lines.size() - first));
            text.append(time).append(line, line.indexOf(','), line.length()).append('\n');
        }
        return text.toString();
    }

    private static long processorNs() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }
}
