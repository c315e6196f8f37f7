package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertAll;

import org.junit.jupiter.api.Test;

/** A test class that holds the program against one source; {@link ChecksPageTest} gathers all of them into a page. */
public interface Published {

    /** Where the values come from. */
    Source source();

    /** Puts the published values and ours on a sheet. */
    void fill(Sheet sheet);

    /** Every row holds; all that do not are told together. */
    @Test
    default void published() {
        Sheet sheet = new Sheet();
        fill(sheet);
        assertAll(sheet.rows().stream().map(row -> row::hold));
    }
}
