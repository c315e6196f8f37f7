package org.warmvat.weather.made;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Year;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.WeatherRefused;

/**
 * Several made years in a row, with seeds 1, 2, 3 and so on: the months' means of the air and their sums of sun are drawn anew for each
 * year, normal about the normals and independent of each other, no further than two standard deviations. A leap year has its 28
 * February twice.
 */
public final class MadeYears {
    /** Most years made at once. */
    public static final int MOST_YEARS = 100;

    private static final LocalDateTime START = LocalDateTime.of(HourlyTable.TYPICAL_YEAR, 1, 1, 0, 0);
    /** Standard deviation of a month's mean air temperature where the normals do not say: common practice, no source. */
    private static final double WINTER_SPREAD_K = 1.5;

    private static final double OTHER_SPREAD_K = 1.0;
    /** Standard deviation of a month's sum of sun as a share of it: common practice, no source. */
    private static final double SUN_SPREAD = 0.08;

    private static final double MOST_DEVIATIONS = 2;
    private static final int LEAP_HOUR = 24 * 59;

    private MadeYears() {}

    /**
     * Makes the years from 2025 on.
     *
     * @param years how many, 1 to {@link #MOST_YEARS}
     * @throws WeatherRefused when a month of the normals has more sun than can arrive
     */
    public static HourlyTable of(Normals normals, int years) throws WeatherRefused {
        if (years < 1 || years > MOST_YEARS) {
            throw new IllegalArgumentException("years: " + years);
        }
        double[] mostSun = MadeSunlight.mostKWhPerM2Day(normals, START);
        List<HourlyTable> made = new ArrayList<>();
        for (int year = 0; year < years; year++) {
            Normals drawn = drawn(normals, year + 1L, mostSun);
            made.add(MadeYear.of(year == 0 ? checked(normals, drawn) : drawn));
        }
        HourlyTable first = made.get(0);
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        first.columns().keySet().forEach(quantity -> columns.put(quantity, inARow(made, quantity)));
        return new HourlyTable(first.site(), START, first.stamp(), columns);
    }

    /** The normals themselves are refused where they have too much sun, which the drawn ones never have. */
    private static Normals checked(Normals normals, Normals drawn) throws WeatherRefused {
        MadeSunlight.make(normals, START, new double[MadeSunlight.DAYS]);
        return drawn;
    }

    private static Normals drawn(Normals normals, long seed, double[] mostSun) {
        Draws draws = new Draws(seed, "months");
        List<MonthNormals> months = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            MonthNormals usual = normals.months().get(month);
            double warmerK = spreadK(normals, month) * deviation(draws);
            double sun = usual.globalKWhPerM2Day() * (1 + SUN_SPREAD * deviation(draws));
            months.add(new MonthNormals(
                    usual.airC() + warmerK,
                    usual.dailyRangeK(),
                    Math.min(sun, mostSun[month]),
                    usual.humidity() + (normals.humidity() == Quantity.DEW_POINT ? warmerK : 0),
                    usual.windMPerS()));
        }
        return new Normals(normals.site(), seed, normals.humidity(), months);
    }

    private static double deviation(Draws draws) {
        return Math.max(-MOST_DEVIATIONS, Math.min(MOST_DEVIATIONS, draws.normal()));
    }

    private static double spreadK(Normals normals, int month) {
        boolean south = normals.site().latitudeDeg() < 0;
        boolean winter = south ? month >= 5 && month <= 7 : month == 11 || month <= 1;
        return normals.months().get(month).airSpreadK().orElse(winter ? WINTER_SPREAD_K : OTHER_SPREAD_K);
    }

    private static double[] inARow(List<HourlyTable> made, Quantity quantity) {
        DoubleStream all = DoubleStream.empty();
        for (int i = 0; i < made.size(); i++) {
            double[] year = made.get(i).columns().get(quantity);
            boolean leap = Year.isLeap(LocalDate.from(START).getYear() + i);
            all = DoubleStream.concat(all, leap ? withLeapDay(year) : Arrays.stream(year));
        }
        return all.toArray();
    }

    private static DoubleStream withLeapDay(double[] year) {
        DoubleStream upToMarch = Arrays.stream(year, 0, LEAP_HOUR);
        return DoubleStream.concat(upToMarch, Arrays.stream(year, LEAP_HOUR - 24, year.length));
    }

    /** One line for the head of a file on where such years come from. */
    public static String origin(Normals normals, int years) {
        boolean given =
                normals.months().stream().allMatch(month -> month.airSpreadK().isPresent());
        return String.format(
                Locale.ROOT,
                "%d synthetic years, made from monthly normals with seeds 1 to %d; from year to year the months' mean air spreads by %s, their"
                        + " sum of sun by 8 %% (standard deviations; the sun's: common practice, no source); 29 February repeats the day"
                        + " before; nothing here was measured",
                years,
                years,
                given ? "month_sd_k" : "1.5 K in winter and 1.0 K else (common practice, no source)");
    }
}
