package org.warmvat.design;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * What stands in the title block of a report.
 *
 * @param client for whom the tank is
 * @param author who made the design
 * @param date when, in the author's own form
 * @param note anything else
 */
public record Project(
        @Key(name = "for", says = "For whom the tank is", pattern = "\\S", form = "text that is not blank")
        Optional<String> client,

        @Key(name = "by", says = "Who made the design", pattern = "\\S", form = "text that is not blank")
        Optional<String> author,

        @Key(name = "date", says = "When, in your own form", pattern = "\\S", form = "text that is not blank")
        Optional<String> date,

        @Key(
                name = "note",
                says = "Anything else for the title block",
                pattern = "\\S",
                form = "text that is not blank")
        Optional<String> note) {

    /** Refuses blank texts. */
    public Project {
        Ranges.check(Project.class, client, author, date, note);
    }
}
