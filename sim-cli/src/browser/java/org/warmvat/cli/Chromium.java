package org.warmvat.cli;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The system's Chromium, driven by the system's node. */
final class Chromium implements AutoCloseable {

    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Path program, Path node) {
        playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_NODEJS_PATH", node.toString(), "PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright.chromium().launch(new BrowserType.LaunchOptions().setExecutablePath(program));
    }

    /** The browser; empty where it or node is missing. */
    static Optional<Chromium> found() {
        return program("chromium", "chromium-browser", "google-chrome")
                .flatMap(browser -> program("node", "nodejs").map(node -> new Chromium(browser, node)));
    }

    private static Optional<Path> program(String... names) {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(names)
                .flatMap(name ->
                        Stream.of(path.split(Pattern.quote(File.pathSeparator))).map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    Page page(int widthPx) {
        return page(widthPx, new Browser.NewPageOptions());
    }

    Page page(int widthPx, Browser.NewPageOptions options) {
        return browser.newPage(options.setViewportSize(widthPx, 900));
    }

    /** Pages that share what a browser shares between its windows. */
    BrowserContext context() {
        return browser.newContext();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
