package org.warmvat.question;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Locale;
import org.warmvat.engine.Hours;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/**
 * A stretch of the calendar in a weather file, first and last day included.
 *
 * @param weather the file, prolonged with its own beginning where the stretch runs past its end
 * @param hours the hours of the stretch
 */
public record Window(Weather weather, Hours hours) {

    /**
     * Finds the first occurrence of a stretch; one that runs across New Year is laid over the end and the beginning of a whole
     * year.
     *
     * @param file the weather
     * @param from first day
     * @param to last day; before the first in the calendar for a stretch across New Year
     * @throws StudyRefused when the file does not hold it
     */
    public static Window of(Weather file, MonthDay from, MonthDay to) throws StudyRefused {
        for (int year = file.start().getYear() - 1; year <= file.end().getYear(); year++) {
            LocalDateTime first = from.atYear(year).atStartOfDay();
            LocalDateTime end = end(from, to, year);
            boolean begins = !first.isBefore(file.start()) && first.isBefore(file.end());
            long beyond = Duration.between(file.end(), end).toHours();
            if (begins && (beyond <= 0 || (file.isWholeYear() && beyond < file.hours()))) {
                int hour = (int) Duration.between(file.start(), first).toHours();
                int hours = (int) Duration.between(first, end).toHours();
                Weather weather = CyclicWeather.weather(file, (int) Math.max(0, beyond));
                return new Window(weather, new Hours(hour, hour + hours));
            }
        }
        throw new StudyRefused("weather: goes from " + file.start() + " to " + file.end()
                + ", which does not hold " + text(from) + " to " + text(to)
                + "; expected a file that holds all of it, or a whole year");
    }

    private static LocalDateTime end(MonthDay from, MonthDay to, int year) {
        int endYear = to.isBefore(from) ? year + 1 : year;
        return to.atYear(endYear).plusDays(1).atStartOfDay();
    }

    private static String text(MonthDay day) {
        return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** The moment at which it begins. */
    public LocalDateTime start() {
        return at(hours.first());
    }

    /** The moment at which it ends. */
    public LocalDateTime end() {
        return at(hours.end());
    }

    /** The date of one of its days, from 0. */
    public LocalDate date(int day) {
        return start().toLocalDate().plusDays(day);
    }

    /** Whole days. */
    public int days() {
        return (hours.end() - hours.first()) / 24;
    }

    private LocalDateTime at(int hour) {
        return weather.start().plusHours(hour);
    }
}
