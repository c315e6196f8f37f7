package org.warmvat.weather.doubt;

import java.util.Arrays;
import java.util.List;
import org.warmvat.weather.KusudaAchenbach1965;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;

/** Values whose size over the whole file points to another unit or another place. */
final class UnitDoubts {
    private static final double MOST_MEAN_WIND_M_PER_S = 9;
    private static final double MOST_MEAN_WHOLE_WIND_M_PER_S = 6;
    private static final double MOST_PRESSURE_OFF_HPA = 35;
    private static final double MOST_CLOCK_OFF_H = 3.3;

    private UnitDoubts() {}

    static void look(Weather weather, List<Doubt> found) {
        air(weather, found);
        wind(weather, found);
        pressure(weather, found);
        dewPoint(weather, found);
        place(weather, found);
    }

    /** The warmest mean that a latitude allows is near 31 C in the tropics and falls by 0.45 K a degree beyond 15. */
    private static void air(Weather weather, List<Doubt> found) {
        double most =
                36 - 0.45 * Math.max(0, Math.abs(weather.site().latitudeDeg()) - 15) + (weather.isWholeYear() ? 0 : 12);
        double mean = weather.meanAirC();
        if (mean > most) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.UNIT,
                    "the mean air temperature is %.1f C, expected at most %.0f at latitude %.0f; is the column in"
                            + " Fahrenheit?",
                    mean,
                    most,
                    weather.site().latitudeDeg()));
        }
    }

    private static void wind(Weather weather, List<Doubt> found) {
        double[] wind = weather.table().columns().get(Quantity.WIND);
        if (wind == null) {
            return;
        }
        double mean = weather.meanWindMPerS();
        boolean whole = Arrays.stream(wind).allMatch(v -> v == Math.rint(v));
        if (mean > MOST_MEAN_WIND_M_PER_S || (whole && mean > MOST_MEAN_WHOLE_WIND_M_PER_S)) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.UNIT,
                    "the mean wind is %.1f m/s, expected 1 to 8; km/h are to be divided by 3.6, knots to be multiplied by"
                            + " 0.5144.",
                    mean));
        }
    }

    private static void pressure(Weather weather, List<Doubt> found) {
        double[] pressure = weather.table().columns().get(Quantity.PRESSURE);
        if (pressure == null) {
            return;
        }
        double mean = Arrays.stream(pressure).average().orElseThrow();
        double standard = weather.site().standardPressureHPa();
        if (Math.abs(mean - standard) > MOST_PRESSURE_OFF_HPA) {
            String cause = Math.abs(mean - 1013) < MOST_PRESSURE_OFF_HPA
                    ? "is it reduced to sea level?"
                    : "check its unit (mmHg are to be multiplied by 1.333) and elevation_m.";
            found.add(Doubt.ofAll(
                    Doubt.Kind.UNIT,
                    "the mean air pressure is %.0f hPa, expected about %.0f at %.0f m; %s",
                    mean,
                    standard,
                    weather.site().elevationM(),
                    cause));
        }
    }

    private static void dewPoint(Weather weather, List<Doubt> found) {
        double[] dew = weather.table().columns().get(Quantity.DEW_POINT);
        if (dew == null) {
            return;
        }
        int above = 0;
        double most = 0;
        for (int hour = 0; hour < dew.length; hour++) {
            double excess = dew[hour] - weather.airC().value(hour);
            above += excess > 1 ? 1 : 0;
            most = Math.max(most, excess);
        }
        if (above > 0.01 * dew.length) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.UNIT,
                    "the dew point lies above the air temperature in %d hours, by up to %.1f K; check unit and column.",
                    above,
                    most));
        }
    }

    private static void place(Weather weather, List<Doubt> found) {
        Site site = weather.site();
        clock(site, found);
        weather.ground()
                .filter(wave -> wave.amplitudeK() > 3 && Math.abs(site.latitudeDeg()) > 20)
                .ifPresent(wave -> season(wave, site, found));
    }

    private static void clock(Site site, List<Doubt> found) {
        double clock = Math.IEEEremainder(site.longitudeDeg() / 15 - site.utcOffsetH(), 24);
        if (Math.abs(clock) > MOST_CLOCK_OFF_H) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.PLACE,
                    "longitude %.1f and UTC offset %.1f h lie %.1f h apart; check the sign of longitude_deg (east"
                            + " positive) and utc_offset_h.",
                    site.longitudeDeg(),
                    site.utcOffsetH(),
                    Math.abs(clock)));
        }
    }

    private static void season(KusudaAchenbach1965 wave, Site site, List<Doubt> found) {
        double midwinter = site.latitudeDeg() > 0 ? 20 : 20 + 182.5;
        double off = Math.abs(Math.IEEEremainder(wave.coldestDay() - midwinter, 365));
        if (off > 100) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.PLACE,
                    "the coldest time is near day %.0f of the year, which is summer at latitude %.1f; check the sign of"
                            + " latitude_deg (north positive).",
                    wave.coldestDay(),
                    site.latitudeDeg()));
        }
    }
}
