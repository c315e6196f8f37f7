package org.warmvat.checks;

/** How sure a published figure is. */
public enum Provenance {
    /** Read in a text: the original, or a public place that quotes it. */
    SEEN("seen"),
    /** Read in a public transcription of a book's worked examples, whose printed page was not seen. */
    TRANSCRIBED("seen in a transcription"),
    /** Remembered; to be held against the original before it is quoted. */
    MEMORY("from memory"),
    /** What the trade says, without any single source. */
    COMMON_PRACTICE("common practice, no source"),
    /** Worked out from a published equation, not itself published; never counted. */
    DERIVED("derived");

    private final String words;

    Provenance(String words) {
        this.words = words;
    }

    /** As the page says it. */
    public String words() {
        return words;
    }

    /** Whether such a figure counts as a published value. */
    public boolean counts() {
        return this == SEEN || this == TRANSCRIBED || this == MEMORY;
    }
}
