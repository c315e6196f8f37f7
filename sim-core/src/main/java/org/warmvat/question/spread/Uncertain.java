package org.warmvat.question.spread;

import org.warmvat.sampling.Spread;

/**
 * An input that is not known well.
 *
 * @param key path of a number of the design, in which {@code []} stands for every entry of a list, or {@link #AIR_OFFSET} or {@link
 *     #SUN_FACTOR}
 * @param spread its values, in the file's unit
 * @param times whether these are factors on the design's value; all entries of a list then have the same factor
 */
public record Uncertain(String key, Spread spread, boolean times) {

    /** Kelvins by which the air is warmer than in the weather file. */
    public static final String AIR_OFFSET = "weather.air_offset_k";

    /** Factor on all irradiances of the weather file. */
    public static final String SUN_FACTOR = "weather.sun_factor";

    /** Whether it belongs to the weather rather than the design. */
    public boolean isOfWeather() {
        return key.equals(AIR_OFFSET) || key.equals(SUN_FACTOR);
    }
}
