package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Page;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.option.Answering;
import picocli.CommandLine;

/** All that the program says speaks the trade's words, one word for one thing, and writes numbers and units one way. */
class TradeWordsTest {

    private static final Path DOCS = Path.of("../docs");
    private static final Path PAGE = Path.of("src/main/resources/org/warmvat/cli/page");

    private static final List<Pattern> NEVER = Stream.of(
                    "\\bfloors?\\b(?! of the room| must bear|,? (cover|and furniture))",
                    "\\beats?\\b|\\beaten\\b",
                    "(?<!PIR |PUR |phenolic |EPS |XPS |foil-faced |aged |rigid )\\b[Ff]oam\\b(?! board|, aged)",
                    "Relaxed alone|[Ss]tarted afresh|stands for [0-9]|suspected aloud|not beaten|without a word",
                    "Which command\\?|ask what it carries|break down, show|handbook say something|harmless",
                    "sun's share|solar share|slurry least|slurry most|K h short|cold bridge|\\bcaking\\b",
                    "[0-9]E-[0-9]",
                    "\\b[0-9]{2,}\\.0 h\\b",
                    "\\b0\\.0+ kWh",
                    "\\bW/m2\\b|[0-9] m2\\b|Nm3",
                    "UTC[+-][0-9]+\\.0")
            .map(Pattern::compile)
            .toList();

    /** What of the pages is quoted, or is the history of the words themselves. */
    private static final Set<String> QUOTED = Set.of("checks.md", "changelog.md");

    @TempDir
    Path folder;

    /** What is wrong with some lines; keys of files are promises and stand as they are. */
    private static List<String> wrong(Stream<String> lines) {
        return lines.map(line ->
                        line.replaceAll("[a-z_]+(\\[[^\\]]*\\])?(\\.[a-z_0-9\\[\\]]+)+|[a-z0-9]+(_[a-z0-9]+)+", "KEY"))
                .flatMap(line -> NEVER.stream()
                        .map(never -> never.matcher(line))
                        .filter(Matcher::find)
                        .map(found -> found.group() + ": " + line))
                .toList();
    }

    private Path log() throws IOException {
        StringBuilder log = new StringBuilder("time,slurry_c\n");
        for (int hour = 1; hour < 72; hour++) {
            log.append(String.format(
                    java.util.Locale.ROOT, "2025-01-%02dT%02d:00,%.2f%n", 5 + hour / 24, hour % 24, 36 - 0.1 * hour));
        }
        return Files.writeString(folder.resolve("log.csv"), log);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "year",
                "year TUNNEL HILLS",
                "carry --from 03-01 --to 03-20",
                "backup --sizes 100,500",
                "hold --from 01-10",
                "vary --set solar.area_m2=1,3 --pareto outlay,backup_bought_kwh",
                "sizes --litres 300,600",
                "spring --from 03-15,04-15",
                "holder TUNNEL HILLS",
                "choose DESIGN src/test/resources/few-choices.yaml HILLS",
                "advise DESIGN HILLS",
                "compare DESIGN TUNNEL --weather HILLS",
                "spread DESIGN HILLS --draws 8",
                "fit DESIGN LOG --weather HILLS",
                "weather look HILLS"
            })
    void answersSpeakTheTradesWords(String command) throws Exception {
        Map<String, Path> files = Map.of(
                "DESIGN", DOCS.resolve("examples/steppe-as-advised.yaml"),
                "TUNNEL", DOCS.resolve("examples/polytunnel-winter-rest.yaml"),
                "HILLS", Path.of("../weather-samples/cool-maritime-hills.csv"),
                "LOG", log());
        String[] words = Stream.of(command.split(" "))
                .map(word -> files.containsKey(word) ? files.get(word).toString() : word)
                .toArray(String[]::new);
        CommandLine line = Warmvat.commandLine();
        List<CommandLine> called = line.parseArgs(words).asCommandLineList();
        Document document = ((Answering) called.get(called.size() - 1).getCommand()).document();
        List<String> said = new ArrayList<>(TerminalText.lines(document));
        said.addAll(document.grounds().defaults());
        document.body().pictures().forEach(picture -> said.add(picture.drawing().alternative()));
        String html = new String(Page.bytes(document), StandardCharsets.UTF_8);
        said.addAll(List.of(html.replaceAll("(?s)<style>.*?</style>", "").split("<[^>]*>")));
        assertEquals(List.of(), wrong(said.stream()));
    }

    @Test
    void helpSpeaksTheTradesWords() {
        Set<String> commands = new TreeSet<>();
        assertEquals(List.of(), helps(Warmvat.commandLine(), commands));
        assertTrue(commands.size() > 20, commands.toString());
    }

    private static List<String> helps(CommandLine line, Set<String> commands) {
        commands.add(line.getCommandSpec().qualifiedName());
        List<String> wrong = new ArrayList<>(
                wrong(line.getUsageMessage().replaceAll("\\s+", " ").lines()));
        line.getSubcommands().values().forEach(sub -> wrong.addAll(helps(sub, commands)));
        return wrong;
    }

    @Test
    void pagesSpeakTheTradesWords() throws IOException {
        List<String> wrong = new ArrayList<>();
        try (Stream<Path> docs = Files.list(DOCS)) {
            List<Path> pages = Stream.concat(docs, Stream.of(DOCS.resolve("../README.md")))
                    .filter(page -> page.toString().endsWith(".md")
                            && !QUOTED.contains(page.getFileName().toString()))
                    .sorted()
                    .toList();
            for (Path page : pages) {
                String prose = Files.readString(page)
                        .replaceAll("(?s)```.*?```", "")
                        .replaceAll("`[^`\n]*`", "KEY")
                        .replaceAll("\\]\\([^)]*\\)", "]");
                wrong(prose.lines()).forEach(found -> wrong.add(page.getFileName() + " " + found));
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** What stands between quotes and tags of the page in the browser. */
    @Test
    void thePageInTheBrowserSpeaksTheTradesWords() throws IOException {
        Pattern text = Pattern.compile("'([^'\n]{12,})'|\"([^\"\n]{12,})\"|`([^`]{12,})`|>([^<>{}]{12,})<");
        List<String> wrong = new ArrayList<>();
        for (String file :
                List.of("page.html", "page.js", "form.js", "questions.js", "weather.js", "tank.js", "charts.js")) {
            Stream<String> texts = text.matcher(Files.readString(PAGE.resolve(file)))
                    .results()
                    .map(found -> found.group().replace("Math.floor", ""));
            wrong(texts).forEach(found -> wrong.add(file + " " + found));
        }
        assertEquals(List.of(), wrong);
    }
}
