package org.warmvat.weather.doubt;

import java.util.List;
import java.util.Locale;
import org.warmvat.sun.SunHour;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;

/**
 * Wrong stamps and clocks. With three irradiances, the shift in time that best closes {@code global = beam cos z + diffuse}: at
 * the right label the mean error is a few W/m², an hour off it is tens. With global irradiance alone, how unequal mornings and
 * afternoons are.
 */
final class StampDoubts {
    private static final int MOST_HALF_HOURS = 28;
    /** Mean closure error of a well labelled month stays below this. */
    private static final double CLEAN_RMS_W_PER_M2 = 9;

    private static final double BETTER_SHARE = 0.6;
    private static final double BROKEN_RMS_W_PER_M2 = 30;
    private static final int LEAST_HOURS = 40;
    private static final double LEAST_BEAM_W_PER_M2 = 50;
    /** Afternoon cloud moves the middle of a month's light by up to half an hour. */
    private static final double MOST_LOPSIDED_MIN = 40;

    private StampDoubts() {}

    static void look(Doubts.Span span, List<Doubt> found) {
        if (hasAllThree(span.weather())) {
            closure(span, found);
        } else {
            lopsided(span, found);
        }
    }

    /** Whether global, beam and diffuse irradiance were all given. */
    static boolean hasAllThree(Weather weather) {
        return weather.table()
                .columns()
                .keySet()
                .containsAll(List.of(Quantity.GLOBAL, Quantity.BEAM, Quantity.DIFFUSE));
    }

    private static void closure(Doubts.Span span, List<Doubt> found) {
        double asLabelled = rms(span, 0);
        if (!(asLabelled > CLEAN_RMS_W_PER_M2)) {
            return;
        }
        int best = 0;
        double least = asLabelled;
        for (int halfHours = -MOST_HALF_HOURS; halfHours <= MOST_HALF_HOURS; halfHours++) {
            double rms = rms(span, halfHours);
            if (rms < least) {
                least = rms;
                best = halfHours;
            }
        }
        if (least < BETTER_SHARE * asLabelled && least < BROKEN_RMS_W_PER_M2) {
            found.add(span.doubt(
                    Doubt.Kind.HOUR_SHIFT,
                    "global = beam cos z + diffuse closes to %.0f W/m² with the times moved by %+.1f h, to %.0f"
                            + " W/m² as labelled; %s.",
                    least,
                    best / 2.0,
                    asLabelled,
                    cure(span.weather(), best)));
        } else if (asLabelled > BROKEN_RMS_W_PER_M2) {
            found.add(broken(span, asLabelled));
        }
    }

    private static Doubt broken(Doubts.Span span, double asLabelled) {
        double flat = flatRms(span);
        String cause = flat < BETTER_SHARE * asLabelled
                ? "beam seems to be given on the horizontal, where it should face the sun"
                : "check which column is which and their units";
        return span.doubt(
                Doubt.Kind.DOES_NOT_CLOSE,
                "global = beam cos z + diffuse misses by %.0f W/m² at any shift of the clock; %s.",
                asLabelled,
                cause);
    }

    /** Closure error with the sun of some half hours later, over hours with both light and beam. */
    static double rms(Doubts.Span span, int halfHours) {
        double sum = 0;
        int count = 0;
        for (int hour = span.from(); hour < span.to(); hour++) {
            double beam = span.weather().beamWPerM2(hour);
            if (beam >= LEAST_BEAM_W_PER_M2) {
                double closed = beam * cosZenith(span.weather(), hour, halfHours)
                        + span.weather().diffuseWPerM2(hour);
                double error = span.weather().globalWPerM2(hour) - closed;
                sum += error * error;
                count++;
            }
        }
        return count < LEAST_HOURS ? Double.NaN : Math.sqrt(sum / count);
    }

    private static double flatRms(Doubts.Span span) {
        double sum = 0;
        int count = 0;
        for (int hour = span.from(); hour < span.to(); hour++) {
            double beam = span.weather().beamWPerM2(hour);
            if (beam >= LEAST_BEAM_W_PER_M2) {
                double error = span.weather().globalWPerM2(hour)
                        - beam
                        - span.weather().diffuseWPerM2(hour);
                sum += error * error;
                count++;
            }
        }
        return Math.sqrt(sum / Math.max(1, count));
    }

    /** Cosine of the zenith angle some half hours after an hour's middle; between hours by a cubic through four of them. */
    private static double cosZenith(Weather weather, int hour, int halfHours) {
        int whole = hour + Math.floorDiv(halfHours, 2);
        if (halfHours % 2 == 0) {
            return cosZenith(weather, whole);
        }
        double cubic = (9 * (cosZenith(weather, whole) + cosZenith(weather, whole + 1))
                        - cosZenith(weather, whole - 1)
                        - cosZenith(weather, whole + 2))
                / 16;
        return Math.max(0, cubic);
    }

    private static double cosZenith(Weather weather, int hour) {
        int inFile = Math.max(0, Math.min(weather.hours() - 1, hour));
        SunHour sun = weather.sun(inFile);
        return sun.sunlitFraction() > 0 ? Math.max(0, sun.cosZenith()) : 0;
    }

    private static void lopsided(Doubts.Span span, List<Doubt> found) {
        double minutes = minutesAfterTheSun(span);
        if (Math.abs(minutes) > MOST_LOPSIDED_MIN && span.hours() >= 10 * 24) {
            found.add(span.doubt(
                    Doubt.Kind.LOPSIDED_DAYS,
                    "the light of the days lies %.0f min %s the sun's; %s.",
                    Math.abs(minutes),
                    minutes > 0 ? "after" : "before",
                    cure(span.weather(), (int) -Math.round(minutes / 30))));
        }
    }

    /** By how much the middle of the light lies after the middle of the light outside the air; NaN where there is none. */
    static double minutesAfterTheSun(Doubts.Span span) {
        double light = 0;
        double lightTimes = 0;
        double open = 0;
        double openTimes = 0;
        for (int hour = span.from(); hour < span.to(); hour++) {
            SunHour sun = span.weather().sun(hour);
            int clock = span.weather().start().plusHours(hour).getHour();
            double global = span.weather().globalWPerM2(hour);
            double above = sun.hourMeanNormalWPerM2() * Math.max(0, sun.cosZenith());
            double time = fromNoon(span.weather().site(), clock);
            light += global;
            lightTimes += global * time;
            open += above;
            openTimes += above * time;
        }
        return light > 0 && open > 0 ? 60 * (lightTimes / light - openTimes / open) : Double.NaN;
    }

    /** What would move the hours by so many half hours: another stamp where there is one, else another clock. */
    private static String cure(Weather weather, int halfHours) {
        int minutesIntoHour = weather.stamp().minutesIntoHour() - 30 * halfHours;
        for (Stamp stamp : Stamp.values()) {
            if (stamp.minutesIntoHour() == minutesIntoHour) {
                return "likely cure: the times name another moment of their hour, \"weather convert FILE --stamp "
                        + stamp.key() + "\"; else check utc_offset_h";
            }
        }
        double offset = weather.site().utcOffsetH() - halfHours / 2.0;
        return offset < -12 || offset > 14
                ? "check the sign of longitude_deg, and utc_offset_h"
                : String.format(
                        Locale.ROOT,
                        "likely cure: another clock, \"weather convert FILE --utc-offset %s\"; else check longitude_deg",
                        Double.toString(offset).replaceAll("\\.0$", ""));
    }

    /** Hours from solar noon, -12 to 12, at the middle of an hour of the clock. */
    private static double fromNoon(Site site, int clock) {
        double solar = clock + 0.5 + site.longitudeDeg() / 15 - site.utcOffsetH();
        return Math.IEEEremainder(solar - 12, 24);
    }
}
