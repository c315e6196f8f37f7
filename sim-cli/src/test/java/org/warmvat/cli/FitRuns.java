package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Runs of {@code fit} on made logs. */
abstract class FitRuns {

    static final LocalDateTime START = LocalDateTime.of(2025, 1, 3, 18, 0);
    static final Path EXAMPLES = Path.of("..", "docs", "examples");

    @TempDir
    Path folder;

    final Program program = new Program();
    Path design;

    @BeforeEach
    void write() throws IOException {
        design = Files.copy(EXAMPLES.resolve("smallest.yaml"), folder.resolve("tank.yaml"));
    }

    /** Rows every half hour: 3.4 W/K, 3.8 MJ/K, 300 W from hour 24 to 44 where it is heated, errors that remember. */
    static List<String> rows(int hours, boolean heated, LocalDateTime start) {
        List<String> rows = new ArrayList<>();
        Random random = new Random(5);
        double slurryC = 36;
        double error = 0;
        for (int row = 0; row <= 2 * hours; row++) {
            double airC = airC(start.plusMinutes(30L * row));
            error = 0.9 * error + 0.01 * random.nextGaussian();
            double watts = heated && row > 48 && row <= 88 ? 300 : 0;
            rows.add(String.format(
                    Locale.ROOT, "%s,%.3f,%.2f,%.0f,0", start.plusMinutes(30L * row), slurryC + error, airC, watts));
            double next = heated && row >= 48 && row < 88 ? 300 : 0;
            slurryC += 1800 * (next - 3.4 * (slurryC - airC)) / 3.8e6;
        }
        return rows;
    }

    static double airC(LocalDateTime time) {
        return 3 + 3 * Math.sin(2 * Math.PI * (time.getHour() * 60 + time.getMinute() - 540) / 1440.0);
    }

    Path log(String name, List<String> rows) throws IOException {
        return log(name, "time,slurry_c,air_c,backup_electric_w,feed_kg", rows);
    }

    Path log(String name, String heading, List<String> rows) throws IOException {
        return Files.writeString(folder.resolve(name), heading + "\n" + String.join("\n", rows) + "\n");
    }

    JsonNode fit(Object... words) throws IOException {
        assertEquals(0, run(words), program.err());
        return new ObjectMapper().readTree(program.out());
    }

    int run(Object... words) {
        List<String> args = new ArrayList<>(List.of("fit"));
        for (Object word : words) {
            args.add(word.toString());
        }
        args.addAll(List.of("--out", folder.resolve("out").toString(), "--replace", "--json", "--quiet"));
        return program.run(args.toArray(String[]::new));
    }

    /** What is said of inputs that are refused; nothing is written. */
    List<String> refused(Object... words) {
        assertEquals(3, run(words), program.err());
        assertFalse(Files.exists(folder.resolve("out")));
        return program.err().lines().toList();
    }

    static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    static String but(JsonNode answer) {
        return answer.path("verdict").path("but").toString();
    }

    static double uaWPerK(JsonNode answer) {
        return answer.path("fit").path("ua_w_k").path("value").asDouble();
    }
}
