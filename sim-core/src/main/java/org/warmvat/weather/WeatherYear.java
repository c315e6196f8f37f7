package org.warmvat.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * One year of a weather file.
 *
 * @param name by which an answer tells it from others: the file's, and the year where the file holds several
 * @param weather its hours
 */
public record WeatherYear(String name, Weather weather) {
    private static final int FEW_DAYS = 2;

    /**
     * The whole years of a file, from its first hour on; what is left at its end is in none. A file of less than two years is one
     * entry as it is.
     *
     * @param file its name for answers
     */
    public static List<WeatherYear> of(String file, Weather weather) {
        List<WeatherYear> years = new ArrayList<>();
        LocalDateTime start = weather.start();
        for (int year = 0; !start.plusYears(year + 1L).isAfter(weather.end()); year++) {
            int from = (int) ChronoUnit.HOURS.between(start, start.plusYears(year));
            int to = (int) ChronoUnit.HOURS.between(start, start.plusYears(year + 1L));
            years.add(new WeatherYear(file + " " + span(start.plusYears(year).toLocalDate()), weather.part(from, to)));
        }
        return years.size() < 2 ? List.of(new WeatherYear(file, weather)) : List.copyOf(years);
    }

    /** The same, its name followed by the year where it is a whole one: among several files each year is told by file and year. */
    public WeatherYear withYear() {
        return weather.isWholeYear()
                ? new WeatherYear(name + " " + span(weather.start().toLocalDate()), weather)
                : this;
    }

    /** A year that begins on about 1 January by its number, any other by the day on which it begins. */
    private static String span(LocalDate from) {
        LocalDate near = from.plusDays(FEW_DAYS);
        return near.getDayOfYear() <= 2 * FEW_DAYS + 1 && near.getMonthValue() == 1
                ? Integer.toString(near.getYear())
                : "from " + from;
    }
}
