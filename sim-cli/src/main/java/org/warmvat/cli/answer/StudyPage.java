package org.warmvat.cli.answer;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import org.warmvat.cli.plot.Picture;

/**
 * The page of a study; its template only sets it.
 *
 * @param results what the study found
 * @param pictures its pictures, none where they could not be drawn
 * @param cautions the usual cautions
 * @param origin program and inputs
 */
public record StudyPage(StudyResults results, List<Picture> pictures, List<String> cautions, Origin origin) {

    static StudyPage of(StudyResults results, List<Picture> pictures, Origin origin) {
        return new StudyPage(results, pictures, Cautions.ALL, origin);
    }

    /** Sets the page. */
    String html() {
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("study.jte", Map.of("page", this), html);
        return html.toString();
    }
}
