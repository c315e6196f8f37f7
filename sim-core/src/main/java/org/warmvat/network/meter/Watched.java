package org.warmvat.network.meter;

import java.util.Locale;
import java.util.Optional;

/**
 * What a watch is called and what is told of it.
 *
 * @param key short stable name, also that of its warning
 * @param told the line of the hours for which it held; empty where they stand in none
 * @param warning what is said when it held at all
 */
public record Watched(String key, Optional<Line> told, Optional<Caution> warning) {

    /**
     * A warning in words.
     *
     * @param mark the mark from which the watch holds
     * @param sign 1 where it holds above the mark, -1 where below
     * @param sentence the sentence, with {@code %s} for the duration and {@code %.1f} for the worst value
     */
    public record Caution(double mark, int sign, String sentence) {}

    /** A watch of which nothing is told yet. */
    public static Watched of(String key) {
        return new Watched(key, Optional.empty(), Optional.empty());
    }

    /** A mark as it stands in a sentence: 4 °C, 4.5 °C. */
    public static String degrees(double celsius) {
        return number(celsius) + " °C";
    }

    /** A number as it stands in a sentence: 4, 4.5. */
    public static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    /** Its hours stand in a line. */
    public Watched told(Line line) {
        return new Watched(key, Optional.of(line), warning);
    }

    /** It warns. */
    public Watched warns(double mark, int sign, String sentence) {
        return new Watched(key, told, Optional.of(new Caution(mark, sign, sentence)));
    }
}
