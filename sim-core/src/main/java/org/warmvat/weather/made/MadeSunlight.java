package org.warmvat.weather.made;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Locale;
import org.warmvat.sun.Irradiance;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.SunTrack;
import org.warmvat.weather.Site;
import org.warmvat.weather.WeatherRefused;

/**
 * Made irradiance: a persistent order of clear and dull days with the published distribution, hours within each day by the
 * published autoregressive model, each day's hours summing to its day and each month's days to its normal.
 */
final class MadeSunlight {
    static final int DAYS = 365;
    /** No day is clearer than this at sea level. */
    private static final double CLEAREST_DAY = 0.80;
    /** No month is clearer than this. */
    private static final double CLEAREST_MONTH = 0.78;

    private final Normals normals;
    private final SunHour[] sun;
    private final double[] dayOrder;
    private final double[] dayClearness = new double[DAYS];
    private final double[] monthClearness = new double[12];
    private final double[] clearestDay = new double[12];
    private final double[] dayExtraterrestrialWh = new double[DAYS];
    private final double[] horizontalWPerM2;
    private final double[] globalWPerM2 = new double[MonthCurve.HOURS];

    private MadeSunlight(Normals normals, LocalDateTime start, double[] dayOrder) {
        this.normals = normals;
        Site site = normals.site();
        Observer observer = new Observer(
                site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.standardPressureHPa(), 10);
        this.sun = SunTrack.over(observer, start, site.utcOffsetH(), MonthCurve.HOURS);
        this.horizontalWPerM2 = Arrays.stream(sun)
                .mapToDouble(hour -> hour.hourMeanNormalWPerM2() * Math.max(0, hour.cosZenith()))
                .toArray();
        this.dayOrder = dayOrder;
    }

    /**
     * Makes the irradiance.
     *
     * @param dayOrder how clear each day is against the others of its month
     */
    static MadeSunlight make(Normals normals, LocalDateTime start, double[] dayOrder) throws WeatherRefused {
        MadeSunlight made = new MadeSunlight(normals, start, dayOrder);
        for (int month = 0; month < 12; month++) {
            made.chooseDays(month);
        }
        made.fillDays();
        return made;
    }

    /** The highest daily irradiation that each month's normal may have at a place, kWh/m2. */
    static double[] mostKWhPerM2Day(Normals normals, LocalDateTime start) {
        double[] means = MonthCurve.means(new MadeSunlight(normals, start, new double[DAYS]).horizontalWPerM2);
        return Arrays.stream(means)
                .map(mean -> CLEAREST_MONTH * mean * 24 / 1000)
                .toArray();
    }

    /** Clearness index of a day. */
    double dayClearness(int day) {
        return dayClearness[day];
    }

    /** Clearness index of a month, 0 for January. */
    double monthClearness(int month) {
        return monthClearness[month];
    }

    /** Share of cloud on a day from its clearness, by the cloud formula of Kasten and Czeplak (1980), from memory. */
    double dayCloudFraction(int day) {
        double clear = clearestDay[MonthCurve.monthOf(24 * day)];
        double dimming = clear > 0 ? 1 - dayClearness[day] / clear : 0;
        return Math.min(1, Math.pow(Math.max(0, dimming) / 0.75, 1 / 3.4));
    }

    /** Irradiance of an hour in whole W/m2. */
    Irradiance light(int hour) {
        Irradiance split = Irradiance.ofGlobal(Math.rint(globalWPerM2[hour]), sun[hour]);
        return new Irradiance(split.globalWPerM2(), Math.rint(split.beamWPerM2()), Math.rint(split.diffuseWPerM2()));
    }

    private void chooseDays(int month) throws WeatherRefused {
        int first = MonthCurve.FIRST_HOUR[month] / 24;
        int end = MonthCurve.FIRST_HOUR[month + 1] / 24;
        double wantedWh = 1000 * normals.months().get(month).globalKWhPerM2Day() * (end - first);
        double availableWh = 0;
        for (int day = first; day < end; day++) {
            double sum = 0;
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                sum += horizontalWPerM2[hour];
            }
            dayExtraterrestrialWh[day] = sum;
            availableWh += sum;
        }
        if (wantedWh > CLEAREST_MONTH * availableWh) {
            throw new WeatherRefused(String.format(
                    Locale.ROOT,
                    "month %d: global_kwh_m2_day %.2f, expected at most %.2f at latitude %.1f (0.78 of what arrives above the"
                            + " air)",
                    month + 1,
                    wantedWh / 1000 / (end - first),
                    CLEAREST_MONTH * availableWh / 1000 / (end - first),
                    normals.site().latitudeDeg()));
        }
        if (wantedWh == 0) {
            return;
        }
        monthClearness[month] = wantedWh / availableWh;
        DailyClearness spread = DailyClearness.ofOneMonth(monthClearness[month]);
        clearestDay[month] = spread.most();
        System.arraycopy(dayOrder, first, dayClearness, first, end - first);
        Draws.shape(dayClearness, first, end, spread::quantile);
        scaleMonth(first, end, wantedWh);
    }

    private void scaleMonth(int first, int end, double wantedWh) {
        for (int pass = 0; pass < 50; pass++) {
            double sum = 0;
            for (int day = first; day < end; day++) {
                sum += dayClearness[day] * dayExtraterrestrialWh[day];
            }
            for (int day = first; day < end; day++) {
                dayClearness[day] = Math.min(CLEAREST_DAY, dayClearness[day] * wantedWh / sum);
            }
        }
    }

    private void fillDays() {
        double[] deviations =
                new Draws(normals.seed(), "hours").persistent(MonthCurve.HOURS, HourlyClearness.PERSISTENCE);
        for (int day = 0; day < DAYS; day++) {
            double k = dayClearness[day];
            double[] clearness = new double[24];
            double[] limit = new double[24];
            for (int h = 0; h < 24; h++) {
                SunHour hour = sun[24 * day + h];
                if (hour.sunlitFraction() > 0 && hour.cosZenith() > 0 && k > 0) {
                    double raw = HourlyClearness.mean(k, hour.cosZenith())
                            + deviations[24 * day + h] * HourlyClearness.deviation(k);
                    limit[h] = Math.min(
                            HourlyClearness.clearLimit(h + 0.5 + solarShiftH()),
                            HourlyClearness.clearSky(hour.zenithDeg()));
                    clearness[h] = Math.max(0.2 * k, Math.min(limit[h], raw));
                }
            }
            fitDay(day, clearness, limit);
        }
    }

    /** Solar clock less the clock of the file, without the equation of time. */
    private double solarShiftH() {
        return normals.site().longitudeDeg() / 15 - normals.site().utcOffsetH();
    }

    /** Scales the hours of a day to its sum, under the clear limit, which is lifted where it is too low. */
    private void fitDay(int day, double[] clearness, double[] limit) {
        double wanted = dayClearness[day] * dayExtraterrestrialWh[day];
        for (int pass = 0; pass < 60 && wanted > 0; pass++) {
            double sum = 0;
            for (int h = 0; h < 24; h++) {
                sum += clearness[h] * horizontalWPerM2[24 * day + h];
            }
            for (int h = 0; h < 24; h++) {
                double ceiling = limit[h] * (1 + 0.02 * Math.max(0, pass - 20));
                clearness[h] = Math.min(ceiling, clearness[h] * wanted / sum);
            }
        }
        for (int h = 0; h < 24; h++) {
            globalWPerM2[24 * day + h] = clearness[h] * horizontalWPerM2[24 * day + h];
        }
    }
}
