package org.warmvat.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The page itself, its style and its scripts, as they ship with the program: these names and no others. */
final class Shipped {

    private static final String STYLE = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String UPLOT = "/META-INF/resources/webjars/uplot/1.6.30/dist/";

    private final Map<String, Reply> files = new LinkedHashMap<>();

    Shipped() {
        add("", Reply.HTML, "page.html");
        add("page.css", STYLE, "page.css");
        for (String module :
                new String[] {"page", "server", "design", "charts", "tank", "form", "weather", "questions", "elements"
                }) {
            add(module + ".js", SCRIPT, module + ".js");
        }
        add("uplot.js", SCRIPT, UPLOT + "uPlot.iife.min.js");
        add("uplot.css", STYLE, UPLOT + "uPlot.min.css");
    }

    private void add(String path, String type, String resource) {
        try (InputStream in = Shipped.class.getResourceAsStream(resource)) {
            files.put(path, Reply.of(type, in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Optional<Reply> of(String path) {
        return Optional.ofNullable(files.get(path));
    }
}
