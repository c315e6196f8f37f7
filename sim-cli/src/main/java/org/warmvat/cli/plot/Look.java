package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/**
 * What is shown, and so how it is drawn, the same in all pictures. Looks differ in lightness and strokes as lines, in lightness
 * and hatching as areas, so that they stay apart in grey and for colour-blind eyes; every line stands out from white by 3 : 1.
 */
public enum Look {
    /** The slurry. */
    SLURRY(0x1B4965, 2.2f, 0xC9D6DF, Hatch.NONE),
    /** The slurry in another case. */
    OTHER_SLURRY(0x8E2A1E, 2f, 0xE3C4BF, Hatch.FALLING, 8, 4),
    /** The set-point. */
    SETPOINT(0x22262B, 1.4f, 0xDDDDDD, Hatch.NONE, 9, 5),
    /** The minimum temperature. */
    MINIMUM(0x8E2A1E, 2f, 0xE3C4BF, Hatch.NONE, 2, 4),
    /** Outdoor air. */
    AIR(0x3F6F3E, 1.3f, 0xD5E3D4, Hatch.NONE),
    /** Outdoor air in another case. */
    OTHER_AIR(0x7A4FA3, 1.8f, 0xE0D6EA, Hatch.NONE, 12, 3, 2, 3),
    /** The sun and its heat. */
    SUN(0xB26B00, 2.6f, 0xF6C667, Hatch.NONE),
    /** Heat from the backup heater, and what is bought for it. */
    BACKUP(0x8E2A1E, 1.8f, 0x8E2A1E, Hatch.RISING, 7, 3),
    /** Heat of the mixer's shaft. */
    SHAFT(0x3F6E8C, 1.8f, 0x8FB4C9, Hatch.LEVEL, 4, 2),
    /** Heat of the reaction. */
    REACTION(0x55702F, 1.8f, 0xDDE8D0, Hatch.FALLING, 10, 2, 2, 2),
    /** Gas and its energy. */
    GAS(0x3F6F3E, 2.2f, 0xBFD8A5, Hatch.NONE),
    /** Electricity of the machinery. */
    ELECTRICITY(0x3F6E8C, 1.8f, 0x5F86A6, Hatch.FALLING, 4, 2),
    /** The feed and the heat it takes. */
    FEED(0x6B4E2E, 1.8f, 0xD9C7AE, Hatch.UPRIGHT, 12, 3, 2, 3),
    /** Heat needed, and what is left in the end. */
    NEED(0x22262B, 1.8f, 0xDDDDDD, Hatch.NONE),
    /** A value marked. */
    MARK(0x22262B, 1.4f, 0xDDDDDD, Hatch.NONE, 2, 3),
    /** The first of several of a kind. */
    FIRST(0x1F3A52, 2.2f, 0x1F3A52, Hatch.NONE),
    /** The second of several. */
    SECOND(0xB5651D, 2.2f, 0xF2D08A, Hatch.FALLING, 9, 4),
    /** The third of several. */
    THIRD(0x3F6F3E, 2.2f, 0xB5651D, Hatch.NONE, 3, 4),
    /** The fourth of several. */
    FOURTH(0x8E2A1E, 2.2f, 0xFBEFD2, Hatch.NONE, 12, 4, 3, 4),
    /** The fifth of several. */
    FIFTH(0x7A4FA3, 2.2f, 0x8E2A1E, Hatch.RISING, 16, 5),
    /** The sixth of several. */
    SIXTH(0x5B6770, 1.6f, 0xD6E4EC, Hatch.CROSSED),
    /** The seventh of several. */
    SEVENTH(0x3F6E8C, 1.6f, 0x8FA3AD, Hatch.LEVEL, 2, 2),
    /** The eighth of several. */
    EIGHTH(0x6B4E2E, 1.6f, 0xD9C7AE, Hatch.UPRIGHT, 6, 2, 2, 2);

    static final Color INK = new Color(0x22262B);
    static final Color GRID = new Color(0xD9D6CF);
    static final Color SPELL = new Color(0xECE6D8);

    private static final int DARK = 128;
    private static final List<Look> SEVERAL = List.of(FIRST, SECOND, THIRD, FOURTH, FIFTH, SIXTH, SEVENTH, EIGHTH);

    private final Color line;
    private final float width;
    private final Color fill;
    private final Hatch hatch;

    @SuppressWarnings("ImmutableEnumChecker") // never handed out
    private final float[] dashes;

    Look(int line, float width, int fill, Hatch hatch, float... dashes) {
        this.line = new Color(line);
        this.width = width;
        this.fill = new Color(fill);
        this.hatch = hatch;
        this.dashes = dashes;
    }

    /** The look of one of several of a kind, counted from 0; from the eighth on they begin anew. */
    public static Look nth(int index) {
        return SEVERAL.get(index % SEVERAL.size());
    }

    Color line() {
        return line;
    }

    BasicStroke stroke(Form form) {
        return dashes.length == 0 ? form.solid(width) : form.dashed(width, dashes);
    }

    Color fill() {
        return fill;
    }

    Hatch hatch() {
        return hatch;
    }

    /** Hatching dark on light fills and light on dark ones. */
    Color hatchColour() {
        return lightness(fill) < DARK ? new Color(0xF4F1EA) : new Color(0x2B2B2B);
    }

    /** How light a colour is in grey, 0 to 255 (ITU-R BT.601, the luma of grey printing). */
    static double lightness(Color colour) {
        return 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue();
    }
}
