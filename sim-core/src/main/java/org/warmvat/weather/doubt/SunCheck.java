package org.warmvat.weather.doubt;

import java.util.Locale;
import java.util.Optional;
import org.warmvat.weather.Weather;

/** Whether the sun confirms the times of a file: what global, beam and diffuse irradiance, or the middle of the day's light, say of them. */
public final class SunCheck {
    private static final double CONFIRMED_RMS_W_PER_M2 = 9;
    private static final double CONFIRMED_MIN = 20;

    private SunCheck() {}

    /** One sentence where the sun confirms the times; where it does not, {@link Doubts} may have something to say. */
    public static Optional<String> sentence(Weather weather) {
        return weather.kept(SunCheck.class, () -> looked(weather));
    }

    private static Optional<String> looked(Weather weather) {
        Doubts.Span whole = new Doubts.Span(weather, 0, weather.hours());
        return StampDoubts.hasAllThree(weather) ? closed(whole) : middle(whole);
    }

    private static Optional<String> closed(Doubts.Span whole) {
        double asRead = StampDoubts.rms(whole, 0);
        double earlier = StampDoubts.rms(whole, -1);
        double later = StampDoubts.rms(whole, 1);
        if (!(asRead < CONFIRMED_RMS_W_PER_M2 && asRead < Math.min(earlier, later))) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "The sun confirms the times (%s, UTC%s): beam and diffuse irradiance make up the global within %.0f W/m² (rms) as read,"
                        + " within %.0f half an hour earlier or later.",
                stamp(whole.weather()),
                utc(whole.weather().site().utcOffsetH()),
                asRead,
                Math.min(earlier, later)));
    }

    private static Optional<String> middle(Doubts.Span whole) {
        double minutes = StampDoubts.minutesAfterTheSun(whole);
        if (Math.abs(minutes) > CONFIRMED_MIN || whole.hours() < 240) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "The sun confirms the times (%s, UTC%s): the middle of the days' light lies %.0f min %s the sun's.",
                stamp(whole.weather()),
                utc(whole.weather().site().utcOffsetH()),
                Math.abs(minutes),
                minutes > 0 ? "after" : "before"));
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
