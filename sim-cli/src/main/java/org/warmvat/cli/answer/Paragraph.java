package org.warmvat.cli.answer;

import java.util.List;

/**
 * A heading and the sentences under it.
 *
 * @param heading the question answered
 * @param sentences whole sentences
 */
public record Paragraph(String heading, List<String> sentences) {

    /** The sentences in a row, with units kept on the line of their numbers. */
    public String text() {
        return Words.unbroken(String.join(" ", sentences));
    }
}
