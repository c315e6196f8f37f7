package org.warmvat.weather.file;

import java.util.List;
import java.util.Optional;
import org.warmvat.weather.service.Recognised;
import org.warmvat.weather.service.TableGuess;

/** What can be said of a file that is of no known kind, all at once, and what to do with it. */
final class Unrecognised {
    private static final String PROPOSE =
            "\"warmvat weather layout FILE\" proposes a layout for it, to be confirmed and then given by --layout";
    private static final int MOST_MONTHS = 13;

    private Unrecognised() {}

    /** A whole sentence on a text. */
    static String sentence(String text) {
        Optional<TableGuess> table = TableGuess.of(text);
        String fact = "is neither a Warmvat weather file (first line \"# warmvat weather 1\") nor recognised as one of "
                + String.join(", ", Recognised.known());
        if (table.isPresent()
                && table.get().rows().size() <= MOST_MONTHS
                && text.lines().count() < 40) {
            return fact + "; it holds " + table.get().rows().size()
                    + " rows: weather by the month is made into hours by \"warmvat weather make\"";
        }
        return fact + saved(table) + ". Any other hourly text is read by a layout: " + PROPOSE;
    }

    /** What a spreadsheet has done to a text, and what to do. */
    static String saved(String text) {
        return "Save it as CSV in UTF-8, or say text.encoding: latin-1 in a layout" + saved(TableGuess.of(text)) + ": "
                + PROPOSE;
    }

    private static String saved(Optional<TableGuess> table) {
        List<String> traces = table.map(TableGuess::traces).orElse(List.of());
        return traces.isEmpty() ? "" : " (it was saved by a spreadsheet, it seems: " + String.join(", ", traces) + ")";
    }
}
