package org.warmvat.cli.plot;

import java.awt.Color;

/**
 * How an area is filled.
 *
 * @param fill its colour
 * @param hatch its hatching
 */
record Swatch(Color fill, Hatch hatch) {

    private static final int DARK = 128;

    /** Hatching dark on light fills and light on dark ones. */
    Color hatchColour() {
        double lightness = 0.30 * fill.getRed() + 0.59 * fill.getGreen() + 0.11 * fill.getBlue();
        return lightness < DARK ? new Color(0xF4F1EA) : new Color(0x2B2B2B);
    }
}
