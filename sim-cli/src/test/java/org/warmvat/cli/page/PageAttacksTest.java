package org.warmvat.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.year.YearAnswer;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.DesignText;
import org.warmvat.engine.HourSink;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;

/** What somebody on the same machine, or a page that the same browser shows, might try. */
class PageAttacksTest {

    private static final String DESIGN = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);

    private PageServer server;
    private PageWire wire;

    @BeforeEach
    void start() throws IOException {
        Questions none = new Questions() {
            @Override
            public List<Question> all() {
                return List.of();
            }

            @Override
            public Document answer(
                    String question, Map<String, String> options, Given given, Parallel.Progress progress) {
                throw new IllegalStateException();
            }

            @Override
            public String starter(String litres, String setpointC, WeatherGiven weather) {
                throw new IllegalStateException();
            }
        };
        server = PageServer.start(0, new PageServer.Start(DESIGN, Optional.empty(), false), none);
        wire = new PageWire(URI.create(server.address()));
    }

    @AfterEach
    void stop() {
        server.close();
    }

    /** A form of another page may send these without asking first. */
    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x"})
    void anotherPagesFormChangesNothing(String type) throws IOException {
        for (String path : List.of("stop", "year", "weather", "ask", "until-closed")) {
            PageWire.Answer answer = wire.sent(
                    "POST",
                    wire.address().getPath() + path,
                    "a=b".getBytes(StandardCharsets.UTF_8),
                    "Origin: http://evil.example",
                    "Content-Type: " + type);
            assertEquals(403, answer.code(), path);
        }
        assertEquals(200, wire.got("start").code());
    }

    /** The right secret under a name that was turned to this machine. */
    @Test
    void theSecretAloneIsNotEnough() throws IOException {
        assertEquals(
                421,
                wire.got("start", "Host: rebound.example:" + wire.address().getPort())
                        .code());
        assertEquals(421, wire.got("start", "Host: 127.0.0.1").code());
    }

    /** The body never comes: who has no business here is answered all the same. */
    @Test
    void theBodyOfAStrangerIsNotWaitedFor() throws IOException {
        String own = wire.own();
        assertEquals(
                404,
                wire.raw(wire.head("POST", "/nothing/year", 1_000_000, own)).code());
        String path = wire.address().getPath() + "year";
        assertEquals(403, wire.raw(wire.head("POST", path, 1_000_000_000_000L)).code());
    }

    /** More than is allowed is not read to its end. */
    @Test
    void aBodyWithoutEndIsCutOff() throws IOException {
        byte[] head = wire.head("POST", wire.address().getPath() + "year", 1_000_000_000_000L, wire.own());
        byte[] all = new byte[head.length + 2_000_001];
        System.arraycopy(head, 0, all, 0, head.length);
        assertEquals(413, wire.raw(all).code());
    }

    /** More at once than it has threads and places: some are turned away, and it goes on. */
    @Test
    void aCrowdIsOutlived() throws Exception {
        ExecutorService crowd = Executors.newFixedThreadPool(100);
        try {
            List<Callable<Integer>> requests = new ArrayList<>();
            for (int i = 0; i < 300; i++) {
                requests.add(() -> codeOrClosed());
            }
            int answered = 0;
            for (Future<Integer> one : crowd.invokeAll(requests)) {
                assertTrue(List.of(0, 200, 429).contains(one.get()), "code " + one.get());
                answered += one.get() == 200 ? 1 : 0;
            }
            assertTrue(answered > 0);
        } finally {
            crowd.shutdown();
        }
        PageWire.Answer after = wire.got("page.css");
        while (after.code() == 429) {
            after = wire.got("page.css");
        }
        assertEquals(200, after.code());
    }

    private int codeOrClosed() {
        try {
            PageWire.Answer answer = wire.got("page.css");
            return answer.head().isEmpty() ? 0 : answer.code();
        } catch (IOException turnedAway) {
            return 0;
        }
    }

    /** Names of the design go into reports and tables, never into the names of files; the address of the page goes nowhere. */
    @Test
    void theFolderToKeepHasPlainNamesAndNoSecret() throws Exception {
        DesignText text = DesignText.of(
                "design.yaml",
                DESIGN.replaceFirst("title: .*", "title: ../../../evil").replace("gas neck", "../../evil"));
        DesignDocument design = text.document();
        Weathers.Kept weather = new Weathers().of("cool-maritime-hills").orElseThrow();
        YearResult run = YearStudy.run(design.design(), weather.runner(), HourSink.IGNORE);
        Document document = YearAnswer.of(run, YearAnswer.Beside.NOTHING, LiveYear.asked(design, text, weather, run));
        String secret = wire.address().getPath().replace("/", "");
        try (ZipInputStream zip = new ZipInputStream(
                new ByteArrayInputStream(ReportFiles.zip(document).bytes()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertTrue(entry.getName().matches("warmvat-year/[a-z0-9_-]+[.][a-z]+"), entry.getName());
                assertEquals(2, Path.of(entry.getName()).normalize().getNameCount());
                assertFalse(new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1).contains(secret));
            }
        }
        PageWire.Answer start = wire.got("start");
        assertFalse(start.text().contains(secret), "the secret stands in an answer");
        assertTrue(start.head().contains("Referrer-policy: no-referrer"), start.head());
    }
}
