package org.warmvat.cli.answer;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/**
 * The page of a study; its template only sets it.
 *
 * @param results what the study found
 * @param plates its pictures
 * @param cautions the usual cautions
 * @param origin program and inputs
 */
public record StudyPage(StudyResults results, List<Plate> plates, List<String> cautions, Origin origin) {

    static StudyPage of(StudyResults results, Origin origin) {
        List<Plate> plates = results.pictures().stream().map(Plate::of).toList();
        return new StudyPage(results, plates, Cautions.ALL, origin);
    }

    /** Sets the page. */
    String html() {
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("study.jte", Map.of("page", this), html);
        return html.toString();
    }
}
