package org.warmvat.cli.plot;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A drawn picture. The arrays are shared, not copied: read only.
 *
 * @param drawing name, title, caption and words in place of it
 * @param svg as SVG, UTF-8, for a page
 * @param narrowSvg as SVG, UTF-8, for a telephone
 * @param png as PNG
 */
@SuppressWarnings("ArrayRecordComponent") // handed through once from drawing to writing
public record Picture(Drawing drawing, byte[] svg, byte[] narrowSvg, byte[] png) {

    /** File name without ending. */
    public String name() {
        return drawing.name();
    }

    /** The picture as a data address, so that a page needs nothing else. */
    public String source() {
        return address(svg);
    }

    /** The same in the form for a telephone. */
    public String narrowSource() {
        return address(narrowSvg);
    }

    private static String address(byte[] svg) {
        return new String(Base64.getEncoder().encode(svg), StandardCharsets.ISO_8859_1)
                .transform(text -> "data:image/svg+xml;base64," + text);
    }
}
