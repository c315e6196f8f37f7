package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.Mutations;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.option.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.ParameterException;

/** Command lines changed by chance, but from a fixed seed: each is answered or refused in words. No answer is written anywhere. */
class OptionsFuzzTest {

    private static final int KINDS = 9;
    private static final int HOURS = 96;
    private static final List<String> LINES = List.of(
            "year DESIGN WEATHER --engine fast --threads 2",
            "carry DESIGN WEATHER --from 01-02 --to 01-03 --short-hours 5 --most-area 8",
            "backup DESIGN WEATHER --warm-up-days 14 --fill 10 --sizes 100,200,500 --cold-spell 5 --reserve 10",
            "hold DESIGN WEATHER --from 01-02 --temperatures 30,20 --fill 10",
            "vary DESIGN WEATHER --set solar.area_m2=1:3:1 --show litres --pareto outlay,backup_bought_kwh",
            "sizes DESIGN WEATHER --litres 300,600 --scale mixer.electric_w=area",
            "spring DESIGN WEATHER --from 03-15,04-01",
            "check DESIGN WEATHER --cold -12",
            "compare DESIGN DESIGN --weather WEATHER",
            "weather look WEATHER --fill-holes 2");

    @TempDir
    Path folder;

    @Test
    void everyChangedCommandLineIsAnsweredOrRefusedInWords() throws IOException {
        Files.write(folder.resolve("d.yaml"), DesignDocument.demonstrationBytes());
        Files.writeString(folder.resolve("w.csv"), weather());
        Random random = new Random(Mutations.SEED);
        int refused = 0;
        int cases = Mutations.CASES / KINDS;
        for (int i = 0; i < cases; i++) {
            List<String> words =
                    new ArrayList<>(List.of(LINES.get(i % LINES.size()).split(" ")));
            int changed = 1 + random.nextInt(words.size() - 1);
            words.set(changed, Mutations.of(words.get(changed), random));
            refused += isRefused(words) ? 1 : 0;
        }
        assertTrue(refused > cases / 4 && refused < cases, refused + " of " + cases);
    }

    private boolean isRefused(List<String> words) {
        StringWriter err = new StringWriter();
        CommandLine line = Warmvat.commandLine()
                .setErr(new PrintWriter(err, true))
                .setOut(new PrintWriter(new StringWriter()))
                .setExecutionStrategy(OptionsFuzzTest::answeredOnly);
        int code = line.execute(words.stream()
                .map(word -> word.replace("DESIGN", folder.resolve("d.yaml").toString())
                        .replace("WEATHER", folder.resolve("w.csv").toString()))
                .toArray(String[]::new));
        assertNotEquals(ExitCode.OUR_FAULT.number(), code, words + "\n" + err);
        assertFalse(code != 0 && err.toString().isBlank(), words + " ends in silence");
        assertFalse(err.toString().matches("(?s).*(java\\.|org\\.warmvat|Exception).*"), words + "\n" + err);
        return code != 0;
    }

    /** Works the answer out and tells nobody. */
    private static int answeredOnly(CommandLine.ParseResult parsed) {
        CommandLine last =
                parsed.asCommandLineList().get(parsed.asCommandLineList().size() - 1);
        if (!last.isUsageHelpRequested() && last.getCommand() instanceof Answering answering) {
            try {
                answering.document();
            } catch (ParameterException wrong) {
                throw wrong;
            } catch (Exception fault) {
                throw new ExecutionException(last, "not answered", fault);
            }
        }
        return 0;
    }

    private static String weather() {
        StringBuilder text = new StringBuilder(YearCommandTest.weatherText(0));
        for (int hour = 1; hour <= HOURS; hour++) {
            int light = hour % 24 > 9 && hour % 24 < 16 ? 120 : 0;
            text.append(String.format(Locale.ROOT, "2025-01-%02dT%02d:00,4.0,%d\n", 1 + hour / 24, hour % 24, light));
        }
        return text.toString();
    }
}
