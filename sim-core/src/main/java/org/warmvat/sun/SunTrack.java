package org.warmvat.sun;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.PegasusSolver;

/**
 * The sun over each of a row of hours (model equation 4.2): sunrise and sunset inside an hour are found as the roots of
 * the apparent elevation, and the position is taken at the middle of the sunlit part. Where a polar hour is sunlit at
 * both ends and dark between, the longer of the two parts gives the position and both count as sunlit.
 */
public final class SunTrack {
    private static final double HOUR_S = 3600;
    /** Half an hour moves the sun by 7.5 degrees at most, the air bends its light by less than one, and the rough elevation is good to 0.1. */
    private static final double PLAIN_DEG = 9;

    private static final double CROSSING_ACCURACY_S = 0.01;
    private static final int INSTANTS = 12;
    private static final double DEGREES_PER_S = 15.041 / HOUR_S;

    private final SunPosition exact;
    private final LocalDateTime start;
    private final double firstEpochS;
    private final double leastBeamElevationDeg;
    /** Universal time of the position last taken, s since 1970. */
    private double middleS;

    private SunTrack(Observer observer, LocalDateTime start, double utcOffsetH) {
        this.exact = new SunPosition(observer, start.toLocalDate());
        this.start = start;
        this.leastBeamElevationDeg = observer.leastBeamElevationDeg();
        this.firstEpochS = start.toEpochSecond(ZoneOffset.UTC) - utcOffsetH * HOUR_S;
    }

    /**
     * The sun over a row of hours.
     *
     * @param observer the place
     * @param start beginning of the first hour, local standard time
     * @param utcOffsetH local standard time less universal time
     * @param hours how many
     * @return one entry for each hour
     */
    public static SunHour[] over(Observer observer, LocalDateTime start, double utcOffsetH, int hours) {
        SunTrack track = new SunTrack(observer, start, utcOffsetH);
        SunHour[] result = new SunHour[hours];
        for (int hour = 0; hour < hours; hour++) {
            result[hour] = track.hour(hour);
        }
        return result;
    }

    /**
     * Share of each hour's sunlit part in which the sun stands above a horizon: of twelve equal stretches of it, those whose middles
     * see the sun (equation 13.1 with its share of instants).
     *
     * @param observer the place
     * @param start beginning of the first hour, local standard time
     * @param utcOffsetH local standard time less universal time
     * @param hours how many
     * @param horizon the line
     * @return one share for each hour, 0..1; 1 where the sun stays down anyway
     */
    public static double[] sharesAbove(
            Observer observer, LocalDateTime start, double utcOffsetH, int hours, Horizon horizon) {
        double[] shares = new double[hours];
        Arrays.fill(shares, 1);
        if (horizon.isOpen()) {
            return shares;
        }
        SunTrack track = new SunTrack(observer, start, utcOffsetH);
        for (int hour = 0; hour < hours; hour++) {
            SunHour sun = track.hour(hour);
            if (sun.sunlitFraction() > 0) {
                shares[hour] = track.shareAbove(horizon, track.middleS, sun.sunlitFraction());
            }
        }
        return shares;
    }

    private double shareAbove(Horizon horizon, double middleS, double sunlitFraction) {
        int above = 0;
        for (int i = 0; i < INSTANTS; i++) {
            SolarPosition at = exact.at(middleS + ((i + 0.5) / INSTANTS - 0.5) * sunlitFraction * HOUR_S);
            if (90 - at.zenithAngle() > horizon.elevationDeg(at.azimuth())) {
                above++;
            }
        }
        return (double) above / INSTANTS;
    }

    private SunHour hour(int hour) {
        double from = firstEpochS + HOUR_S * hour;
        double rough = exact.roughElevationDeg(from + HOUR_S / 2);
        if (rough < -PLAIN_DEG) {
            return SunHour.DARK;
        }
        return rough > PLAIN_DEG ? at(from, HOUR_S / 2, HOUR_S) : horizonHour(from);
    }

    /** Seconds to the next culmination, upper or lower, after which the sun turns from rising to setting or back. */
    private static double turningOffsetS(double hourAngleDeg) {
        return (hourAngleDeg < 0 ? -hourAngleDeg : 180 - hourAngleDeg) / DEGREES_PER_S;
    }

    /** An hour in which the sun may cross the horizon, once or (near the poles) twice. */
    private SunHour horizonHour(double from) {
        SunPosition.Sight begin = exact.sight(from);
        double turn = turningOffsetS(begin.hourAngleDeg());
        double[] edges = turn < HOUR_S ? new double[] {0, turn, HOUR_S} : new double[] {0, HOUR_S};
        double sunlit = 0;
        Span current = new Span(0, 0);
        Span longest = current;
        double before = begin.elevationDeg();
        for (int i = 1; i < edges.length; i++) {
            double after = exact.elevationDeg(from + edges[i]);
            Span lit = lit(from, new Span(edges[i - 1], edges[i]), before, after);
            sunlit += lit.length();
            current = lit.begin() == current.end() ? new Span(current.begin(), lit.end()) : lit;
            longest = current.length() > longest.length() ? current : longest;
            before = after;
        }
        return sunlit > 0 ? at(from, longest.middle(), sunlit) : SunHour.DARK;
    }

    /** The sunlit part of a span over which the sun only rises or only sets. */
    private Span lit(double from, Span span, double before, double after) {
        if (before > 0 == after > 0) {
            return before > 0 ? span : new Span(span.end(), span.end());
        }
        UnivariateFunction elevationDeg = offset -> {
            if (offset == span.begin()) {
                return before;
            }
            return offset == span.end() ? after : exact.elevationDeg(from + offset);
        };
        double crossing = new PegasusSolver(CROSSING_ACCURACY_S).solve(100, elevationDeg, span.begin(), span.end());
        return after > 0 ? new Span(crossing, span.end()) : new Span(span.begin(), crossing);
    }

    private SunHour at(double from, double middle, double sunlit) {
        middleS = from + middle;
        SolarPosition position = exact.at(from + middle);
        int day = start.plusSeconds((long) (from - firstEpochS + middle)).getDayOfYear();
        return new SunHour(
                Math.min(1, sunlit / HOUR_S),
                position.zenithAngle(),
                position.azimuth(),
                Extraterrestrial.normalWPerM2(day),
                leastBeamElevationDeg);
    }

    /** Part of an hour, in seconds from its beginning. */
    private record Span(double begin, double end) {
        double length() {
            return end - begin;
        }

        double middle() {
            return (begin + end) / 2;
        }
    }
}
