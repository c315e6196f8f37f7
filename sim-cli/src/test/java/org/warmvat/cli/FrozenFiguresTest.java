package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.cli.option.Answering;
import picocli.CommandLine;

/**
 * Frozen: every figure of the built-in demonstration, as version 0.1.0 gave it and as the changelog's <em>Results change</em> has
 * moved it since. It proves nothing but that nothing moved unsaid. Figures stand with nine significant digits, and not beyond
 * 1e-9, below which lies the rest of sums that cancel.
 */
class FrozenFiguresTest {

    private static final Path FILES = Path.of("src/test/resources/frozen");
    private static final boolean WRITE = Boolean.getBoolean("frozen.write");
    private static final int DIGITS = 9;
    private static final int PLACES = 9;

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "year, year",
        "year-reference, year --engine reference",
        "carry, carry",
        "backup, backup",
        "hold, hold --month 1",
        "sizes, 'sizes --litres 300,600'",
        "vary, 'vary --set solar.area_m2=1,3 --set control.setpoint_c=32,38'",
        "check, check"
    })
    void noFigureMovesUnsaid(String name, String command) throws Exception {
        Map<String, BigDecimal> now = new LinkedHashMap<>();
        collect("", tree(command), now);
        Path file = FILES.resolve(name + ".txt");
        if (WRITE) {
            List<String> lines = new ArrayList<>();
            now.forEach((key, value) -> lines.add(key + " " + value.toPlainString()));
            Files.createDirectories(FILES);
            Files.writeString(file, String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
        }
        assertEquals(
                "",
                String.join("\n", moved(read(file), now)),
                () -> "figures moved against " + file
                        + ": if they should, renew the frozen files (-Dtest=FrozenFiguresTest -Dfrozen.write=true) and tell it"
                        + " in docs/changelog.md under Results change, in the same commit");
    }

    /** What the command answers, every figure with all its digits. */
    private JsonNode tree(String command) throws Exception {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        CommandLine line = Warmvat.commandLine();
        line.parseArgs(words.toArray(new String[0]));
        if (line.getSubcommands().get(words.get(0)).getCommand() instanceof Answering answering) {
            return new ObjectMapper().valueToTree(SummaryWriter.tree(answering.document()));
        }
        words.add("--json");
        if (!command.startsWith("check")) {
            words.addAll(List.of("--out", folder.resolve("out").toString()));
        }
        Program program = new Program();
        assertEquals(0, program.run(words.toArray(new String[0])), program::err);
        return new ObjectMapper().readTree(program.out());
    }

    private static void collect(String path, JsonNode node, Map<String, BigDecimal> figures) {
        if (node.isNumber()) {
            figures.put(path, rounded(node.doubleValue()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                collect(path + "/" + i, node.get(i), figures);
            }
        } else {
            node.properties().forEach(field -> collect(path + "/" + field.getKey(), field.getValue(), figures));
        }
    }

    private static BigDecimal rounded(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS, RoundingMode.HALF_UP));
        return rounded.scale() > PLACES ? rounded.setScale(PLACES, RoundingMode.HALF_UP) : rounded;
    }

    private static Map<String, BigDecimal> read(Path file) throws IOException {
        Map<String, BigDecimal> figures = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file)) {
            int blank = line.lastIndexOf(' ');
            figures.put(line.substring(0, blank), new BigDecimal(line.substring(blank + 1)));
        }
        return figures;
    }

    /** Figures that are new, gone, or away by more than one unit of the last digit kept, which rounding itself can do. */
    private static List<String> moved(Map<String, BigDecimal> frozen, Map<String, BigDecimal> now) {
        TreeSet<String> keys = new TreeSet<>(frozen.keySet());
        keys.addAll(now.keySet());
        List<String> moved = new ArrayList<>();
        for (String key : keys) {
            BigDecimal before = frozen.get(key);
            BigDecimal after = now.get(key);
            if (before == null || after == null || before.subtract(after).abs().compareTo(unit(before)) > 0) {
                moved.add(key + ": " + before + " -> " + after);
            }
        }
        return moved;
    }

    /** The last digit kept. */
    private static BigDecimal unit(BigDecimal value) {
        int places = DIGITS - value.precision() + value.scale(); // a whole number keeps places that it does not show
        return BigDecimal.ONE.scaleByPowerOfTen(-Math.min(PLACES, places));
    }
}
