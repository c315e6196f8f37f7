package org.warmvat.weather.doubt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.warmvat.sun.Plane;
import org.warmvat.sun.SunHour;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/**
 * Radiation on a tilted plane where that on the horizontal is wanted. On the horizontal the clearest hours of every month reach nearly the
 * same share of the light outside the air; on a plane that leans towards the equator they reach far more of it in winter, and dividing by
 * the plane's own view of the sun makes the months alike again. Thresholds are conventions, without alarm on real typical years.
 */
final class TiltDoubts {
    private static final double LEAST_ELEVATION_DEG = 12;
    private static final double NOON_H = 2;
    private static final double CLEAREST = 0.95;
    private static final int LEAST_HOURS = 40;
    private static final int LEAST_MONTHS = 6;
    private static final double MOST_CLEARNESS = 0.88;
    private static final double BETTER_SHARE = 0.6;
    private static final int LEAST_TILT_DEG = 15;
    private static final int MOST_TILT_DEG = 75;

    private TiltDoubts() {}

    static void look(Weather weather, List<Doubt> found) {
        if (weather.table().slopeDeg() != 0) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.TILTED,
                    "it says itself that its irradiance is that on a plane of %.0f°, expected that on the horizontal."
                            + " Cure: ask the service for slope 0.",
                    weather.table().slopeDeg()));
            return;
        }
        if (!weather.table().columns().containsKey(Quantity.GLOBAL)) {
            return;
        }
        double[] level = clearest(weather, 0);
        if (level.length < LEAST_MONTHS || Arrays.stream(level).max().orElse(0) < MOST_CLEARNESS) {
            return;
        }
        double least = IntStream.rangeClosed(LEAST_TILT_DEG / 5, MOST_TILT_DEG / 5)
                .mapToDouble(tilt -> spread(clearest(weather, 5 * tilt)))
                .min()
                .orElseThrow();
        if (least < BETTER_SHARE * spread(level)) {
            found.add(Doubt.ofAll(
                    Doubt.Kind.TILTED,
                    "the clearest hours of the months reach %.2f to %.2f of the light outside the air, as on a plane that leans"
                            + " towards the equator; expected is irradiance on the horizontal. Likely cure: ask the service for"
                            + " slope 0.",
                    Arrays.stream(level).min().orElseThrow(),
                    Arrays.stream(level).max().orElseThrow()));
        }
    }

    private static double spread(double[] months) {
        double mean = Arrays.stream(months).average().orElse(1);
        return Math.sqrt(Arrays.stream(months)
                .map(m -> (m / mean - 1) * (m / mean - 1))
                .average()
                .orElse(0));
    }

    /** Clearness of the clearest hours about noon, month by month, against the light outside the air on a plane of a tilt. */
    private static double[] clearest(Weather weather, int tiltDeg) {
        Plane plane = new Plane(tiltDeg, weather.site().latitudeDeg() >= 0 ? 180 : 0);
        List<Double> months = new ArrayList<>();
        List<List<Double>> hours = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            hours.add(new ArrayList<>());
        }
        for (int hour = 0; hour < weather.hours(); hour++) {
            SunHour sun = weather.sun(hour);
            double turn = Math.IEEEremainder(sun.azimuthDeg() - plane.azimuthDeg(), 360);
            if (sun.sunlitFraction() == 1 && sun.elevationDeg() > LEAST_ELEVATION_DEG && Math.abs(turn) < 15 * NOON_H) {
                double outside = sun.extraterrestrialNormalWPerM2() * plane.cosIncidence(sun);
                hours.get(weather.start().plusHours(hour).getMonthValue() - 1)
                        .add(weather.globalWPerM2(hour) / outside);
            }
        }
        for (List<Double> month : hours) {
            if (month.size() >= LEAST_HOURS) {
                month.sort(null);
                months.add(month.get((int) (CLEAREST * (month.size() - 1))));
            }
        }
        return months.stream().mapToDouble(m -> m).toArray();
    }
}
