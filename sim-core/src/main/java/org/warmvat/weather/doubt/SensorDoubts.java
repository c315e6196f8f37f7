package org.warmvat.weather.doubt;

import java.util.List;
import org.warmvat.sun.SunHour;
import org.warmvat.weather.Quantity;

/** Sensors that stand still or leap. */
final class SensorDoubts {
    private static final int STUCK_H = 25;
    /** Calm spells and steady pressure are longer than that in true weather. */
    private static final int STUCK_SLOW_H = 73;

    private static final int STUCK_LIT_H = 6;
    private static final double MOST_JUMP_K = 12;
    private static final int DEAD_DAYLIGHT_H = 10;
    private static final double DAYLIGHT_DEG = 12;

    private SensorDoubts() {}

    static void look(Doubts.Span span, List<Doubt> found) {
        for (Quantity quantity : span.weather().table().columns().keySet()) {
            switch (quantity) {
                case AIR, LONGWAVE -> stuck(span, quantity, STUCK_H, found);
                case DEW_POINT, RELATIVE_HUMIDITY -> stuck(span, quantity, 2 * STUCK_H, found);
                case WIND, PRESSURE -> stuck(span, quantity, STUCK_SLOW_H, found);
                case GLOBAL -> sunlight(span, found);
                default -> {}
            }
        }
        jumps(span, found);
    }

    private static void stuck(Doubts.Span span, Quantity quantity, int allowedH, List<Doubt> found) {
        double[] values = span.weather().table().columns().get(quantity);
        int longest = 1;
        int at = span.from();
        int run = 1;
        for (int hour = span.from() + 1; hour < span.to(); hour++) {
            run = values[hour] == values[hour - 1] ? run + 1 : 1;
            if (run > longest) {
                longest = run;
                at = hour;
            }
        }
        if (longest >= allowedH && !(quantity == Quantity.RELATIVE_HUMIDITY && values[at] == 1)) {
            found.add(span.doubt(
                    Doubt.Kind.STUCK,
                    "%s stands at %s for %d hours, to %s; a stuck sensor or filled-in values? Take that stretch"
                            + " from a neighbouring station, or leave it empty for --fill-holes HOURS.",
                    quantity.key(),
                    Double.toString(values[at]),
                    longest,
                    span.weather().start().plusHours(at)));
        }
    }

    /** The same light for hours, or none while the sun stands well up. */
    private static void sunlight(Doubts.Span span, List<Doubt> found) {
        int run = 1;
        int longest = 1;
        int dead = 0;
        int longestDead = 0;
        for (int hour = span.from() + 1; hour < span.to(); hour++) {
            double now = span.weather().globalWPerM2(hour);
            SunHour sun = span.weather().sun(hour);
            run = now > 0 && now == span.weather().globalWPerM2(hour - 1) ? run + 1 : 1;
            longest = Math.max(longest, run);
            if (sun.sunlitFraction() == 1 && sun.elevationDeg() > DAYLIGHT_DEG) {
                dead = now == 0 ? dead + 1 : 0;
                longestDead = Math.max(longestDead, dead);
            }
        }
        String advice =
                "; a stuck sensor? Take that stretch from a neighbouring station, or leave it empty for --fill-holes HOURS.";
        if (longest >= STUCK_LIT_H) {
            found.add(span.doubt(
                    Doubt.Kind.STUCK, "global_w_m2 stands at the same value for %d hours" + advice, longest));
        }
        if (longestDead >= DEAD_DAYLIGHT_H) {
            found.add(span.doubt(
                    Doubt.Kind.STUCK, "global_w_m2 is 0 for %d hours of daylight in a row" + advice, longestDead));
        }
    }

    private static void jumps(Doubts.Span span, List<Doubt> found) {
        int count = 0;
        double most = 0;
        int at = 0;
        for (int hour = Math.max(1, span.from()); hour < span.to(); hour++) {
            double jump = Math.abs(
                    span.weather().airC().value(hour) - span.weather().airC().value(hour - 1));
            count += jump > MOST_JUMP_K ? 1 : 0;
            if (jump > most) {
                most = jump;
                at = hour;
            }
        }
        if (count > 0) {
            found.add(span.doubt(
                    Doubt.Kind.JUMPS,
                    "the air temperature leaps by more than %.0f K within an hour %d times, most by %.1f K at"
                            + " %s; check these rows and the missing-value codes.",
                    MOST_JUMP_K,
                    count,
                    most,
                    span.weather().start().plusHours(at)));
        }
    }
}
