package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.option.Answering;
import picocli.CommandLine;

/** Answers speak the trade's words, one word for one thing, and write numbers and units one way. */
class TradeWordsTest {

    private static final List<Pattern> NEVER = Stream.of(
                    "\\bfloor\\b",
                    "\\beats?\\b|\\beaten\\b",
                    "Relaxed alone|[Ss]tarted afresh|stands for|suspected aloud|not beaten",
                    "sun's share|slurry least|slurry most|K h short",
                    "[0-9]E-[0-9]",
                    "\\b[0-9]{2,}\\.0 h\\b",
                    "\\b0\\.0+ kWh",
                    "\\bW/m2\\b|[0-9] m2\\b|Nm3",
                    "UTC[+-][0-9]+\\.0")
            .map(Pattern::compile)
            .toList();

    @ParameterizedTest
    @ValueSource(strings = {"check", "year", "carry --from 03-01 --to 03-20", "sizes --litres 300,600"})
    void answersSpeakTheTradesWords(String command) throws Exception {
        List<String> words = List.of(command.split(" "));
        CommandLine line = Warmvat.commandLine();
        line.parseArgs(words.toArray(new String[0]));
        Answering answering = line.getSubcommands().get(words.get(0)).getCommand();
        Document document = answering.document();
        List<String> said = new ArrayList<>(TerminalText.lines(document));
        said.addAll(document.grounds().defaults());
        document.body().tables().forEach(table -> {
            said.add(table.caption() + " " + table.note());
            // keys of the design file are promises and stand as they are
            table.header().stream().filter(head -> !head.contains("_")).forEach(said::add);
        });
        List<String> wrong = said.stream()
                .map(sentence -> sentence.replaceAll("[a-z_]+(\\.[a-z_0-9\\[\\]]+)+", "KEY"))
                .filter(sentence ->
                        NEVER.stream().anyMatch(never -> never.matcher(sentence).find()))
                .toList();
        assertEquals(List.of(), wrong);
    }
}
