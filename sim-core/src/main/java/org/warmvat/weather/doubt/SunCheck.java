package org.warmvat.weather.doubt;

import java.util.Locale;
import org.warmvat.weather.Weather;

/** Whether the sun confirms the times of a file: what global, beam and diffuse irradiance, or the middle of the day's light, say of them. */
public final class SunCheck {
    private static final double CONFIRMED_RMS_W_PER_M2 = 15;
    /** Times that are right to some ten minutes close better than half an hour off by more than this. */
    private static final double CONFIRMED_SHARE = 0.8;

    private static final double CONFIRMED_MIN = 20;
    private static final int LEAST_HOURS = 240;
    private static final String NO_WORD = "The sun can say nothing of the times: ";

    private SunCheck() {}

    /** One sentence; where the sun does not confirm the times, {@link Doubts} may have more to say. */
    public static String sentence(Weather weather) {
        return weather.kept(SunCheck.class, () -> looked(weather));
    }

    private static String looked(Weather weather) {
        Doubts.Span whole = new Doubts.Span(weather, 0, weather.hours());
        return StampDoubts.hasAllThree(weather) ? closed(whole) : middle(whole);
    }

    private static String closed(Doubts.Span whole) {
        double asRead = StampDoubts.rms(whole, 0);
        double earlier = StampDoubts.rms(whole, -1);
        double later = StampDoubts.rms(whole, 1);
        if (Double.isNaN(asRead)) {
            return NO_WORD + "there are too few hours with beam irradiance.";
        }
        boolean confirms = asRead < CONFIRMED_RMS_W_PER_M2 && asRead < CONFIRMED_SHARE * Math.min(earlier, later);
        return word(confirms, whole.weather())
                + String.format(
                        Locale.ROOT,
                        "beam and diffuse irradiance make up the global within %.0f W/m² (rms) as read, within %.0f half an hour earlier"
                                + " or later.",
                        asRead,
                        Math.min(earlier, later));
    }

    private static String middle(Doubts.Span whole) {
        double minutes = StampDoubts.minutesAfterTheSun(whole);
        if (Double.isNaN(minutes) || whole.hours() < LEAST_HOURS) {
            return NO_WORD + "there are too few hours with light.";
        }
        return word(Math.abs(minutes) <= CONFIRMED_MIN, whole.weather())
                + String.format(
                        Locale.ROOT,
                        "the middle of the days' light lies %.0f min %s the sun's.",
                        Math.abs(minutes),
                        minutes > 0 ? "after" : "before");
    }

    private static String word(boolean confirms, Weather weather) {
        return String.format(
                Locale.ROOT,
                "The sun %s the times (%s, UTC%s): ",
                confirms ? "confirms" : "does not confirm",
                stamp(weather),
                utc(weather.site().utcOffsetH()));
    }

    /** An offset without a needless decimal: +1, -3.5. */
    private static String utc(double hours) {
        return String.format(Locale.ROOT, hours == Math.rint(hours) ? "%+.0f" : "%+.2f", hours);
    }

    private static String stamp(Weather weather) {
        return switch (weather.stamp()) {
            case HOUR_START -> "a stamp at the hour's start";
            case HOUR_MIDDLE -> "a stamp in the middle of the hour";
            case HOUR_END -> "a stamp at the hour's end";
        };
    }
}
