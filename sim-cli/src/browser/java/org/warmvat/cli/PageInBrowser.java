package org.warmvat.cli;

import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.page.PageServer;

/** The page of the demonstration, served for each test, and one browser for all tests of a class. */
abstract class PageInBrowser {

    static final double PATIENCE_MS = 60_000;
    static final String DESIGN = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);

    static Optional<Chromium> chromium = Optional.empty();

    final List<String> faults = new ArrayList<>();
    PageServer server;

    @BeforeAll
    static void find() {
        chromium = Chromium.found();
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
    }

    @AfterAll
    static void leave() {
        chromium.ifPresent(Chromium::close);
    }

    @BeforeEach
    void start() throws IOException {
        Assumptions.assumeTrue(chromium.isPresent(), "no chromium and node on the PATH: the page was not looked at");
        server = PageServer.start(0, new PageServer.Start(DESIGN, Optional.empty(), false), new PageQuestions());
    }

    @AfterEach
    void stop() {
        if (server != null) {
            server.close();
        }
    }
}
