package org.warmvat.cli.answer;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Sets an answer as one page that needs nothing else. */
public final class Page {

    private Page() {}

    /** The page, UTF-8. */
    public static byte[] bytes(Document document) {
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("answer.jte", Map.of("document", document), html);
        return html.toString().getBytes(StandardCharsets.UTF_8);
    }
}
