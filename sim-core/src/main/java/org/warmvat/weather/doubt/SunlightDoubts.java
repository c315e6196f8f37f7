package org.warmvat.weather.doubt;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.warmvat.sun.Irradiance;
import org.warmvat.sun.SunHour;
import org.warmvat.weather.Weather;

/**
 * Light where there is no sun, and more light than a clear sky gives: the limits of rare values by C. N. Long and E. G. Dutton
 * (2002), "BSRN global network recommended QC tests", quoted from memory.
 */
final class SunlightDoubts {
    private static final double TWILIGHT_W_PER_M2 = 5;
    private static final int DARK_HOURS_ALLOWED = 2;
    private static final int BRIGHT_HOURS_ALLOWED = 3;
    /** Daily clearness of a month that no place on earth reaches. */
    private static final double MOST_MONTHLY_CLEARNESS = 0.83;

    private static final double LEAST_MONTHLY_CLEARNESS = 0.03;
    private static final double LEAST_MONTHLY_KWH_PER_M2 = 5;

    private SunlightDoubts() {}

    static void look(Doubts.Span span, List<Doubt> found) {
        dark(span, found);
        if (!sum(span, found)) {
            bright(span, found);
        }
    }

    private static void dark(Doubts.Span span, List<Doubt> found) {
        Weather weather = span.weather();
        DoubleSummaryStatistics lit = span.above(
                TWILIGHT_W_PER_M2, hour -> weather.sun(hour).sunlitFraction() == 0 ? weather.globalWPerM2(hour) : 0);
        if (lit.getCount() > DARK_HOURS_ALLOWED) {
            found.add(span.doubt(
                    Doubt.Kind.LIGHT_IN_THE_DARK,
                    "%d hours have light while the sun is down, up to %.0f W/m²; check stamp, utc_offset_h and"
                            + " longitude_deg.",
                    lit.getCount(),
                    lit.getMax()));
        }
    }

    /** Whether the month's sum is out of all reason, which makes single hours uninteresting. */
    private static boolean sum(Doubts.Span span, List<Doubt> found) {
        double global = 0;
        double available = 0;
        for (int hour = span.from(); hour < span.to(); hour++) {
            SunHour sun = span.weather().sun(hour);
            global += span.weather().globalWPerM2(hour) / 1000;
            available += sun.hourMeanNormalWPerM2() * Math.max(0, sun.cosZenith()) / 1000;
        }
        double clearness = available > 0 ? global / available : 0;
        boolean much = clearness > MOST_MONTHLY_CLEARNESS;
        boolean little = clearness < LEAST_MONTHLY_CLEARNESS;
        if (available < LEAST_MONTHLY_KWH_PER_M2 || (!much && !little)) {
            return false;
        }
        String unit = much ? "kJ/m² are to be divided by 3.6" : "MJ/m² are to be multiplied by 277.8, kW/m² by 1000";
        found.add(span.doubt(
                Doubt.Kind.UNIT,
                "global irradiation is %.2f of what arrives above the air, expected 0.1 to 0.8; check the unit"
                        + " (%s), the site, and that it is irradiance on the horizontal.",
                clearness,
                unit));
        return true;
    }

    private static void bright(Doubts.Span span, List<Doubt> found) {
        Weather weather = span.weather();
        DoubleSummaryStatistics excess = span.above(0, hour -> excessWPerM2(weather.light(hour), weather.sun(hour)));
        if (excess.getCount() > BRIGHT_HOURS_ALLOWED) {
            found.add(span.doubt(
                    Doubt.Kind.TOO_BRIGHT,
                    "%d hours are brighter than a clear sky, by up to %.0f W/m²; check unit, stamp and"
                            + " utc_offset_h, and that it is irradiance on the horizontal.",
                    excess.getCount(),
                    excess.getMax()));
        }
    }

    /** The largest excess of global, beam and diffuse over their rare limits in a sunlit hour. */
    private static double excessWPerM2(Irradiance light, SunHour sun) {
        if (sun.sunlitFraction() < 1) {
            return 0;
        }
        double normal = sun.extraterrestrialNormalWPerM2();
        double cosine = Math.max(0, sun.cosZenith());
        double power = Math.pow(cosine, 1.2);
        double global = light.globalWPerM2() - (1.2 * normal * power + 50);
        double beam = light.beamWPerM2() - (0.95 * normal * Math.pow(cosine, 0.2) + 10);
        double diffuse = light.diffuseWPerM2() - (0.75 * normal * power + 30);
        return Math.max(global, Math.max(beam, diffuse));
    }
}
