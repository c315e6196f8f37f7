package org.warmvat.weather.doubt;

import java.util.Locale;

/**
 * Something in a weather file that is possible but improbable.
 *
 * @param kind what sort
 * @param when the month or months, or "whole file"
 * @param sentence month, size and what to do, in words
 */
public record Doubt(Kind kind, String when, String sentence) {
    /** A doubt about a whole file: a sentence in the form of {@link String#format}. */
    static Doubt ofAll(Kind kind, String form, Object... values) {
        return new Doubt(kind, "whole file", "Whole file: " + String.format(Locale.ROOT, form, values));
    }

    /** The sorts of suspicion. */
    public enum Kind {
        /** Irradiance while the sun is down. */
        LIGHT_IN_THE_DARK,
        /** Global, beam and diffuse fit another hour's sun better. */
        HOUR_SHIFT,
        /** Global, beam and diffuse do not fit at any hour. */
        DOES_NOT_CLOSE,
        /** Mornings and afternoons are too unequal. */
        LOPSIDED_DAYS,
        /** As on a plane that leans towards the equator. */
        TILTED,
        /** More than a clear sky gives. */
        TOO_BRIGHT,
        /** The same value for too long. */
        STUCK,
        /** The temperature leaps from hour to hour. */
        JUMPS,
        /** Values of an improbable size. */
        UNIT,
        /** Site and weather contradict each other. */
        PLACE
    }
}
