package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Font;

/** The two forms of a picture: one for a page and for print, one for a telephone, with letters of the same size in it. */
enum Form {
    WIDE(1000, 19, 15, 1),
    NARROW(350, 15, 12, 0.8f);

    private final int widthPx;
    private final int titlePx;
    private final int textPx;
    private final float strokes;

    Form(int widthPx, int titlePx, int textPx, float strokes) {
        this.widthPx = widthPx;
        this.titlePx = titlePx;
        this.textPx = textPx;
        this.strokes = strokes;
    }

    int widthPx() {
        return widthPx;
    }

    Font title() {
        return new Font(Font.SANS_SERIF, Font.BOLD, titlePx);
    }

    Font text() {
        return new Font(Font.SANS_SERIF, Font.PLAIN, textPx);
    }

    Font strong() {
        return new Font(Font.SANS_SERIF, Font.BOLD, textPx);
    }

    int textPx() {
        return textPx;
    }

    /** A height that is so many lines of text and so many pixels of picture. */
    int heightPx(double lines, double picturePx) {
        return (int) Math.round(lines * 1.5 * textPx + picturePx);
    }

    BasicStroke solid(float width) {
        return new BasicStroke(width * strokes, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    BasicStroke dashed(float width, float... dashes) {
        float[] scaled = new float[dashes.length];
        for (int i = 0; i < dashes.length; i++) {
            scaled[i] = dashes[i] * strokes;
        }
        return new BasicStroke(width * strokes, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, scaled, 0);
    }
}
