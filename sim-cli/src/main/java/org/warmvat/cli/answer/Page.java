package org.warmvat.cli.answer;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import org.warmvat.cli.plot.Picture;

/** Sets an answer as one page that needs nothing else. */
public final class Page {

    private Page() {}

    static byte[] bytes(Document document) {
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("answer.jte", Map.of("document", document), html);
        return html.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** A picture as a data address, for the page's template. */
    public static String source(Picture picture) {
        return "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(picture.svg());
    }
}
