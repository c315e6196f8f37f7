package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.cli.option.Answering;
import picocli.CommandLine;

/** Holds the page on outputs against what the commands give: every file and every key of the demonstration stands there. */
class OutputsPageTest {

    private static final Path PAGE = Path.of("../docs/outputs.md");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "carry",
                "backup",
                "hold --month 1",
                "vary --set solar.area_m2=1,3",
                "sizes --litres 300,600",
                "choose ../docs/examples/warm-south.yaml src/test/resources/few-choices.yaml",
                "advise ../docs/examples/smallest.yaml",
                "compare --weather ../weather-samples/cool-southern.csv --weather ../weather-samples/cold-continental.csv",
                "spread --draws 8",
                "check",
                "spring --from 03-01 ../docs/examples/polytunnel-winter-rest.yaml",
                "holder ../docs/examples/polytunnel-winter-rest.yaml",
                "fit ../docs/examples/smallest.yaml ../docs/examples/log.txt --log-layout ../docs/examples/log-layout.yaml",
                "weather look"
            })
    void everyFileAndKeyStandsOnThePage(String command) throws Exception {
        List<String> words = List.of(command.split(" "));
        CommandLine line = Warmvat.commandLine();
        line.parseArgs(words.toArray(new String[0]));
        CommandLine named = line.getSubcommands().get(words.get(0));
        if (words.get(0).equals("weather")) {
            named = named.getSubcommands().get(words.get(1));
        }
        Document document = ((Answering) named.getCommand()).document();
        String page = Files.readString(PAGE);
        TreeSet<String> missing = new TreeSet<>();
        SummaryWriter.tree(document).keySet().forEach(key -> missingFrom(page, key, missing));
        document.data().csv().keySet().forEach(file -> missingFrom(page, file, missing));
        assertEquals("", String.join(" ", missing));
    }

    private static void missingFrom(String page, String word, Set<String> missing) {
        if (!Pattern.compile("`" + Pattern.quote(word) + "[`:]").matcher(page).find()) {
            missing.add(word);
        }
    }
}
