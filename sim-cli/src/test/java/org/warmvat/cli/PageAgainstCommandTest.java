package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.DesignText;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.page.PageServer;
import org.warmvat.weather.file.WeatherFiles;

/** What the page answers is what the command line answers, figure by figure, over the wire. */
class PageAgainstCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<List<String>> CHANGES = List.of(
            List.of("solar.area_m2", "4.5"),
            List.of("envelope.wall[1].thickness_mm", "45"),
            List.of("control.setpoint_c", "52"),
            List.of("feed.windows", "[{\"start\": \"20:00\", \"hours\": 1}]"),
            List.of("solar", ""),
            List.of("mixer.minutes_per_hour", "15"),
            List.of("gas", ""));

    @TempDir
    static Path folder;

    private static PageServer server;
    private static int number;

    @BeforeAll
    static void start() throws IOException {
        String demonstration = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
        Files.write(folder.resolve("weather.csv"), WeatherFiles.demonstrationBytes());
        server = PageServer.start(0, new PageServer.Start(demonstration, Optional.empty(), false), new PageQuestions());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    static Stream<String> dozenOfDesigns() throws IOException {
        List<String> designs = new ArrayList<>();
        String demonstration = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
        for (List<String> change : CHANGES) {
            designs.add(DesignText.of("design.yaml", demonstration)
                    .with(change.get(0), change.get(1))
                    .text());
        }
        try (Stream<Path> files = Files.list(Path.of("../docs/examples"))) {
            for (Path file : files.filter(file -> file.toString().matches(".*(?<!layout)[.]yaml"))
                    .sorted()
                    .toList()) {
                designs.add(Files.readString(file));
            }
        }
        return designs.stream()
                .filter(design -> design.matches("(?s)(.*\\n)?tank:.*"))
                .limit(12);
    }

    @Test
    void aDozenIsADozen() throws IOException {
        assertEquals(12, dozenOfDesigns().count());
    }

    private static HttpResponse<byte[]> asked(String path, Optional<String> body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.address() + path));
        body.ifPresent(text -> request.header("Origin", server.address().replaceAll("(//[^/]*)/.*", "$1"))
                .POST(HttpRequest.BodyPublishers.ofString(text)));
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static String json(Map<String, Object> asked) throws IOException {
        return JSON.writeValueAsString(asked);
    }

    private static Document ofCommand(String command, String design, String... options) throws Exception {
        Path file = Files.writeString(folder.resolve("design.yaml"), design);
        List<String> words = new ArrayList<>(
                List.of(command, file.toString(), folder.resolve("weather.csv").toString()));
        words.addAll(List.of(options));
        var line = Warmvat.commandLine();
        line.parseArgs(words.toArray(String[]::new));
        return ((Answering) line.getSubcommands().get(command).getCommand()).document();
    }

    private static JsonNode summary(Document document) throws IOException {
        return JSON.readTree(SummaryWriter.bytes(document));
    }

    @ParameterizedTest
    @MethodSource("dozenOfDesigns")
    void theYearOfThePageIsThatOfTheCommand(String design) throws Exception {
        HttpResponse<byte[]> answer = asked(
                "year",
                Optional.of(json(Map.of(
                        "page",
                        "test",
                        "number",
                        ++number,
                        "text",
                        design,
                        "set",
                        List.of(),
                        "weather",
                        "cool-maritime-hills"))));
        assertEquals(200, answer.statusCode(), () -> new String(answer.body(), StandardCharsets.UTF_8));
        ByteBuffer bytes = ByteBuffer.wrap(answer.body()).order(ByteOrder.LITTLE_ENDIAN);
        int length = bytes.getInt();
        JsonNode told = JSON.readTree(answer.body(), 4, length);
        Document document = ofCommand("year", design);
        compareCard(document, told.path("card"));
        compareColumns(document, told, bytes.position(4 + length));
        assertEquals(
                summary(document).toPrettyString(),
                summaryOfTheZip("year", Map.of(), design).toPrettyString());
    }

    private static void compareCard(Document document, JsonNode card) {
        assertEquals(document.heading().title(), card.path("title").asText());
        assertEquals(document.heading().subtitle(), card.path("subtitle").asText());
        assertEquals(document.verdict().sentence(), card.path("sentence").asText());
        assertEquals(document.verdict().but(), texts(card.path("but")));
        List<String> figures = new ArrayList<>();
        card.path("figures").forEach(figure -> figures.add(String.join(": ", texts(figure))));
        assertEquals(
                document.body().keyFigures().stream()
                        .map(figure -> figure.name() + ": " + figure.value())
                        .toList(),
                figures);
        assertEquals(document.grounds().warnings().size(), card.path("warnings").asInt());
        assertEquals(document.grounds().cautions(), texts(card.path("cautions")));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(text -> texts.add(text.asText()));
        return texts;
    }

    /** Compares the hours, days and months with the command's tables, which have six digits. */
    private static void compareColumns(Document document, JsonNode told, ByteBuffer bytes) {
        Map<String, String> files = Map.of("hours", "hourly.csv", "days", "daily.csv", "months", "monthly.csv");
        for (String part : List.of("hours", "days", "months")) {
            byte[] table = document.data().csv().get(files.get(part)).bytes();
            List<String> lines =
                    new String(table, StandardCharsets.UTF_8).lines().toList();
            List<String> names = List.of(lines.get(0).split(","));
            assertEquals(lines.size() - 1, told.path(part).path("count").asInt());
            for (JsonNode name : told.path(part).path("columns")) {
                int column = names.indexOf(name.asText());
                for (String line : lines.subList(1, lines.size())) {
                    double drawn = bytes.getFloat();
                    String cell = line.split(",", -1)[column];
                    double expected = cell.isEmpty() ? 0 : Double.parseDouble(cell);
                    boolean near = cell.isEmpty()
                            ? !Double.isFinite(drawn) || drawn == 0
                            : Math.abs(drawn - expected) <= 6e-6 * Math.abs(expected);
                    assertTrue(near, () -> part + " " + name + ": " + drawn + " for " + cell);
                }
            }
        }
        assertEquals(0, bytes.remaining());
    }

    @Test
    void aQuestionOfThePageIsThatOfTheCommand() throws Exception {
        String design = dozenOfDesigns().findFirst().orElseThrow();
        Document document = ofCommand("carry", design, "--from=04-01", "--most-area=5");
        JsonNode summary =
                summaryOfTheZip("carry", Map.of("--from", "04-01", "--most-area", "5", "--out", "/tmp/x"), design);
        assertEquals(summary(document).toPrettyString(), summary.toPrettyString());
    }

    /** Asks a question of the page and reads {@code summary.json} out of the folder that can be kept. */
    private static JsonNode summaryOfTheZip(String question, Map<String, String> options, String design)
            throws Exception {
        String asked = json(
                Map.of("question", question, "options", options, "text", design, "weather", "cool-maritime-hills"));
        int inquiry = JSON.readTree(asked("ask", Optional.of(asked)).body())
                .path("number")
                .asInt();
        String events =
                new String(asked("ask/" + inquiry + "/events", Optional.empty()).body(), StandardCharsets.UTF_8);
        assertTrue(events.strip().endsWith("\"ended\":true,\"sentences\":[]}"), events);
        byte[] zip = asked("ask/" + inquiry + "/report.zip", Optional.empty()).body();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            String entry = in.getNextEntry().getName();
            while (!entry.equals("warmvat-" + question + "/summary.json")) {
                entry = in.getNextEntry().getName();
            }
            return JSON.readTree(in.readAllBytes());
        }
    }

    @Test
    void faultsOfOptionsAreThoseOfTheCommandLine() throws Exception {
        String asked = json(Map.of(
                "question",
                "carry",
                "options",
                Map.of("--from", "13-01"),
                "text",
                "title: x",
                "weather",
                "cool-maritime-hills"));
        int inquiry = JSON.readTree(asked("ask", Optional.of(asked)).body())
                .path("number")
                .asInt();
        String events =
                new String(asked("ask/" + inquiry + "/events", Optional.empty()).body(), StandardCharsets.UTF_8);
        assertTrue(events.contains("Invalid value for option '--from'"), events);
    }

    @Test
    void everyCommandThatAnswersIsAQuestionInItsOwnWords() {
        List<String> names = new PageQuestions()
                .all().stream().map(question -> question.name()).toList();
        assertTrue(
                names.containsAll(List.of(
                        "check", "year", "carry", "fit", "backup", "hold", "spring", "holder", "vary", "sizes")),
                names.toString());
        new PageQuestions().all().forEach(question -> {
            assertTrue(question.says().length() > 40, question.name());
            question.fields().forEach(field -> {
                assertTrue(field.name().startsWith("--") && !field.says().contains("${"), field.toString());
                assertTrue(
                        !List.of("--out", "--replace", "--threads", "--layout").contains(field.name()),
                        field.toString());
            });
        });
    }
}
