package org.warmvat.cli.answer;

import java.util.Base64;
import org.warmvat.cli.plot.Picture;

/**
 * A picture as it stands in the page.
 *
 * @param title title
 * @param caption how to read it
 * @param source the drawing itself, as a data address, so that the page needs nothing else
 */
public record Plate(String title, String caption, String source) {

    static Plate of(Picture picture) {
        String source = "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(picture.svg());
        return new Plate(picture.title(), picture.caption(), source);
    }
}
