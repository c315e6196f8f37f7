package org.warmvat.weather.made;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;

/**
 * A year of hours made from twelve monthly means: invented weather with the right means, spread and persistence, the same for
 * the same normals on every machine. Sources of the parts stand with {@link TypicalDays}, {@link DailyClearness}, {@link
 * HourlyClearness}, {@link DiurnalShape} and {@link org.warmvat.sun.Erbs1982}; what is convention stands there and with {@link
 * MadeTemperature}.
 */
public final class MadeYear {
    private static final LocalDateTime START = LocalDateTime.of(HourlyTable.TYPICAL_YEAR, 1, 1, 0, 0);
    /** Hourly wind speeds: correlation of successive hours, commonly 0.80 to 0.95 (from memory). */
    private static final double WIND_PERSISTENCE = 0.88;
    /** Wind by day above its mean by this share at 14 h, below it at 2 h (convention). */
    private static final double WIND_BY_DAY = 0.2;

    private static final double PRESSURE_DEVIATION_HPA = 8;

    private MadeYear() {}

    /**
     * Makes the year 2025.
     *
     * @throws WeatherRefused when a month has more sun than can arrive
     */
    public static HourlyTable of(Normals normals) throws WeatherRefused {
        TypicalDays days = TypicalDays.draw(normals.seed(), normals.site().latitudeDeg());
        MadeSunlight sunlight = MadeSunlight.make(normals, START, days.clearness());
        MadeTemperature temperature = new MadeTemperature(normals, sunlight, days.warmth());
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.AIR, rounded(temperature.airC(), 10));
        columns.put(Quantity.DEW_POINT, rounded(temperature.dewPointC(), 10));
        columns.put(Quantity.WIND, rounded(wind(normals), 10));
        columns.put(Quantity.PRESSURE, rounded(pressure(normals), 10));
        columns.put(Quantity.CLOUD, rounded(cloud(sunlight), 100));
        double[] global = new double[MonthCurve.HOURS];
        double[] beam = new double[MonthCurve.HOURS];
        double[] diffuse = new double[MonthCurve.HOURS];
        for (int hour = 0; hour < MonthCurve.HOURS; hour++) {
            global[hour] = sunlight.light(hour).globalWPerM2();
            beam[hour] = sunlight.light(hour).beamWPerM2();
            diffuse[hour] = sunlight.light(hour).diffuseWPerM2();
        }
        columns.put(Quantity.GLOBAL, global);
        columns.put(Quantity.BEAM, beam);
        columns.put(Quantity.DIFFUSE, diffuse);
        return new HourlyTable(normals.site(), START, Stamp.HOUR_END, columns);
    }

    /** One line for the head of a file on where such a year comes from. */
    public static String origin(Normals normals) {
        return "synthetic, made from monthly normals with seed " + normals.seed() + "; nothing here was measured";
    }

    /**
     * Weibull wind with shape 2 (C. G. Justus and others, 1978: near 2 at most places), persistent, stronger by day, each
     * month with its mean.
     */
    private static double[] wind(Normals normals) {
        double[] wind = new Draws(normals.seed(), "wind").persistent(MonthCurve.HOURS, WIND_PERSISTENCE);
        for (int month = 0; month < 12; month++) {
            int from = MonthCurve.FIRST_HOUR[month];
            int to = MonthCurve.FIRST_HOUR[month + 1];
            Draws.shape(wind, from, to, share -> Math.sqrt(-Math.log1p(-share)));
            double sum = 0;
            for (int hour = from; hour < to; hour++) {
                wind[hour] *= 1 + WIND_BY_DAY * Math.cos(2 * Math.PI * (hour % 24 + 1 - 14) / 24);
                sum += wind[hour];
            }
            double mean = normals.months().get(month).windMPerS();
            for (int hour = from; hour < to; hour++) {
                wind[hour] *= mean * (to - from) / sum;
            }
        }
        return wind;
    }

    private static double[] pressure(Normals normals) {
        double[] pressure = new Draws(normals.seed(), "pressure").persistent(MonthCurve.HOURS, 0.99);
        for (int hour = 0; hour < pressure.length; hour++) {
            pressure[hour] = normals.site().standardPressureHPa() + PRESSURE_DEVIATION_HPA * pressure[hour];
        }
        return pressure;
    }

    private static double[] cloud(MadeSunlight sunlight) {
        double[] cloud = new double[MonthCurve.HOURS];
        for (int hour = 0; hour < cloud.length; hour++) {
            double position = (hour + 1) / 24.0 - 0.5;
            int left = (int) Math.floor(position);
            double a = sunlight.dayCloudFraction(Math.floorMod(left, MadeSunlight.DAYS));
            double b = sunlight.dayCloudFraction(Math.floorMod(left + 1, MadeSunlight.DAYS));
            cloud[hour] = a + (position - left) * (b - a);
        }
        return cloud;
    }

    private static double[] rounded(double[] values, double perUnit) {
        double[] result = new double[values.length];
        Arrays.setAll(result, i -> Math.rint(values[i] * perUnit) / perUnit);
        return result;
    }
}
