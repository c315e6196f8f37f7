package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.cli.words.Words;

/**
 * A heading and the sentences under it.
 *
 * @param heading the question answered
 * @param sentences whole sentences
 * @param apart whether each stands by itself, as the items of a list do
 */
public record Paragraph(String heading, List<String> sentences, boolean apart) {

    /** The sentences, in a row or each by itself, with units kept on the line of their numbers. */
    public List<String> blocks() {
        return (apart ? sentences : List.of(String.join(" ", sentences)))
                .stream().map(Words::unbroken).toList();
    }
}
