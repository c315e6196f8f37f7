package org.warmvat.cli.answer;

import java.util.List;

/**
 * A table ready to print.
 *
 * @param caption what it shows
 * @param header heads of its columns
 * @param rows its cells, the first of each row being its name
 * @param note how to read it, empty where that is plain
 * @param set how it is set
 */
public record Table(String caption, List<String> header, List<List<String>> rows, String note, Setting set) {

    /**
     * How a table is set.
     *
     * @param totalled whether its last row is the sum of the others
     * @param onPageOnly whether it is too long for a terminal
     */
    public record Setting(boolean totalled, boolean onPageOnly) {}

    /** A table for page and terminal. */
    public Table(String caption, List<String> header, List<List<String>> rows) {
        this(caption, header, rows, "", new Setting(false, false));
    }

    /** The same with a word on how to read it. */
    public Table noted(String explained) {
        return new Table(caption, header, rows, explained, set);
    }

    /** The same for the page only. */
    public Table onPageOnly(String explained) {
        return new Table(caption, header, rows, explained, new Setting(false, true));
    }

    /** The same with a total in its last row, for the page only. */
    public Table totalledOnPage(String explained) {
        return new Table(caption, header, rows, explained, new Setting(true, true));
    }
}
