package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;

/** Colours, strokes and fonts shared by all pictures, ordered by lightness so that they stay apart in grey. */
final class Palette {

    static final Color INK = new Color(0x22262B);
    static final Color GRID = new Color(0xD9D6CF);
    static final Color BAND = new Color(0xC9D6DF);
    static final Color SUN = new Color(0xE8A317);
    static final Color BACKUP = new Color(0x8E2A1E);
    static final Color SLURRY = new Color(0x1B4965);
    static final Color FEED = new Color(0x5B8C5A);

    static final Swatch SUN_AREA = new Swatch(new Color(0xF6C667), Hatch.NONE);
    static final Swatch BACKUP_AREA = new Swatch(BACKUP, Hatch.RISING);
    static final Swatch SHAFT_AREA = new Swatch(new Color(0x8FB4C9), Hatch.LEVEL);
    static final Swatch REACTION_AREA = new Swatch(new Color(0xDDE8D0), Hatch.FALLING);
    static final Swatch GAS_AREA = new Swatch(new Color(0xBFD8A5), Hatch.NONE);
    static final Swatch ELECTRICITY_AREA = new Swatch(new Color(0x5F86A6), Hatch.FALLING);

    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 19);
    static final Font LABEL = new Font(Font.SANS_SERIF, Font.PLAIN, 16);
    static final Font TICK = new Font(Font.SANS_SERIF, Font.PLAIN, 15);

    private Palette() {}

    static Stroke solid(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    static Stroke dashed(float width, float... dashes) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
    }
}
