package org.warmvat.checks;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A test class that holds the program against one source; {@link ChecksPageTest} gathers all of them into a page. */
public interface Published {

    /** Where the values come from. */
    Source source();

    /** Puts the published values and ours on a sheet. */
    void fill(Sheet sheet);

    /** Each row is a test of its own. */
    @TestFactory
    default Stream<DynamicTest> published() {
        Sheet sheet = new Sheet();
        fill(sheet);
        return sheet.rows().stream().map(Row::asTest);
    }
}
