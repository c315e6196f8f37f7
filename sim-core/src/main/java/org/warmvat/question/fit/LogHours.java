package org.warmvat.question.fit;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.warmvat.log.Log;

/**
 * The hours of the weather along a log. The log's first reading stands at the end of hour 24: hours 1 to 24 are the day before it;
 * hour 0 is dark and has the log's first air and wind, so that an envelope settled there is as steady as the log can tell.
 */
final class LogHours {

    static final double HOUR_S = 3600;

    /** Index of the hour that begins at the log's first reading. */
    static final int FIRST = 25;

    private static final int TWELFTHS = 12;

    private LogHours() {}

    /** How many hours there are, up to the one in which the last reading lies. */
    static int count(Log log) {
        return FIRST + (int) Math.ceil(log.spanS() / HOUR_S - 1e-9);
    }

    /** Seconds since the log's first reading at the end of an hour. */
    static double endS(int hour) {
        return (hour + 1 - FIRST) * HOUR_S;
    }

    /** A line's mean about a moment, weighted by nearness up to an hour away: hourly straight lines through such means keep its mean. */
    static double meanAbout(double momentS, DoubleUnaryOperator line) {
        return IntStream.range(1 - TWELFTHS, TWELFTHS)
                        .mapToDouble(
                                k -> (TWELFTHS - Math.abs(k)) * line.applyAsDouble(momentS + k * HOUR_S / TWELFTHS))
                        .sum()
                / (TWELFTHS * TWELFTHS);
    }
}
