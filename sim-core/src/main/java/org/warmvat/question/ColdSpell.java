package org.warmvat.question;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/** The coldest day and week of a weather file, and weather in which that week is colder still. */
public final class ColdSpell {

    private static final double HOUR_S = 3600;
    private static final int DAY_H = 24;
    private static final int WEEK_H = 168;

    private ColdSpell() {}

    /** Mean air of the coldest 24 hours in a row, °C; of the whole file where it is shorter. */
    public static double coldestDayC(Weather weather) {
        return weather.kept(ColdSpell.class, () -> coldestDay(weather));
    }

    private static double coldestDay(Weather weather) {
        int first = coldest(weather, DAY_H, 1, weather.hours());
        return mean(weather, first, Math.min(weather.hours(), first + DAY_H));
    }

    /**
     * First hour of the coldest seven days in a row that begin at the file's time of day.
     *
     * @param weather the file
     * @param endHour the days end before this hour
     */
    public static int coldestWeekFrom(Weather weather, int endHour) {
        return coldest(weather, WEEK_H, DAY_H, endHour);
    }

    /**
     * The same of those in which a tank is warmed up: from which on, for some days, its calendar asks for the design's own set-point and
     * bars no backup heater. Of all where there are none such: in a winter rest no heater warms anything.
     *
     * @param weather the file
     * @param endHour the seven days end before this hour
     * @param design whose calendar it is
     * @param days for how many days
     */
    public static int coldestWeekFrom(Weather weather, int endHour, Design design, int days) {
        if (design.spells().isEmpty()) {
            return coldestWeekFrom(weather, endHour);
        }
        SeasonTable season = design.season();
        double setpointC = design.control().setpointC();
        int found =
                coldest(weather, WEEK_H, DAY_H, endHour, first -> isAskedFor(weather, first, season, setpointC, days));
        return found >= 0 ? found : coldestWeekFrom(weather, endHour);
    }

    private static boolean isAskedFor(Weather weather, int firstHour, SeasonTable season, double setpointC, int days) {
        LocalDate from = weather.start().plusHours(firstHour).toLocalDate();
        return IntStream.range(0, days)
                .mapToObj(day -> season.on(SeasonTable.dayOf(from.plusDays(day))))
                .allMatch(day -> day.setpointC() >= setpointC && day.isBackupOn());
    }

    private static int coldest(Weather weather, int length, int step, int endHour) {
        return Math.max(0, coldest(weather, length, step, endHour, first -> true));
    }

    /** The first hour of the coldest of those allowed; -1 where there is none. */
    private static int coldest(Weather weather, int length, int step, int endHour, IntPredicate allowed) {
        int coldest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int first = 0; first + length <= endHour; first += step) {
            double mean = allowed.test(first) ? mean(weather, first, first + length) : Double.POSITIVE_INFINITY;
            if (mean < least) {
                least = mean;
                coldest = first;
            }
        }
        return coldest;
    }

    private static double mean(Weather weather, int from, int to) {
        return weather.airC().mean(from * HOUR_S, to * HOUR_S);
    }

    /** The weather with the air of its coldest week lowered by some kelvins, its dew point with it. */
    public static Weather colder(Weather file, double byK) {
        if (byK == 0) {
            return file;
        }
        HourlyTable table = file.table();
        int from = coldestWeekFrom(file, file.hours());
        Map<Quantity, double[]> columns = new EnumMap<>(table.columns());
        columns.computeIfPresent(Quantity.AIR, (q, values) -> lowered(q, values, from, byK));
        columns.computeIfPresent(Quantity.DEW_POINT, (q, values) -> lowered(q, values, from, byK));
        return new Weather(new HourlyTable(table.site(), table.start(), table.stamp(), columns));
    }

    private static double[] lowered(Quantity quantity, double[] values, int from, double byK) {
        double[] lower = values.clone();
        for (int i = from; i < Math.min(values.length, from + WEEK_H); i++) {
            lower[i] = Math.max(quantity.least(), values[i] - byK);
        }
        return lower;
    }
}
