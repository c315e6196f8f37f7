package org.warmvat.cli.plot;

import java.time.LocalDateTime;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.result.Hourly;
import org.warmvat.result.RunResult;

/**
 * A week to be drawn hour by hour.
 *
 * @param name file name without ending
 * @param title title of the picture
 * @param firstHour index of its first hour
 * @param hours its length
 */
record ChosenWeek(String name, String title, int firstHour, int hours) {

    private static final int WEEK_HOURS = 168;
    private static final int DAY_OF_MONTH = 12;

    /**
     * A week of deep winter and one of spring, from the 12th of January and April, in the south of July and October. A run that
     * lacks one of them shows its first and its middle week instead.
     */
    static List<ChosenWeek> of(RunResult run) {
        boolean south = run.location().latitudeDeg() < 0;
        Hourly hourly = run.hourly();
        Optional<Integer> winter = find(hourly, south ? Month.JULY : Month.JANUARY);
        Optional<Integer> spring = find(hourly, south ? Month.OCTOBER : Month.APRIL);
        if (winter.isPresent() && spring.isPresent()) {
            return List.of(
                    new ChosenWeek("winter_week", "A week of winter, hour by hour", winter.get(), WEEK_HOURS),
                    new ChosenWeek("spring_week", "A week of spring, hour by hour", spring.get(), WEEK_HOURS));
        }
        return firstAndMiddle(hourly.hours());
    }

    private static List<ChosenWeek> firstAndMiddle(int hours) {
        int length = Math.min(WEEK_HOURS, hours);
        List<ChosenWeek> weeks = new ArrayList<>();
        weeks.add(new ChosenWeek("first_week", "The first week, hour by hour", 0, length));
        if (hours >= 2 * WEEK_HOURS) {
            int middle = (hours - WEEK_HOURS) / 2 / 24 * 24;
            weeks.add(new ChosenWeek("middle_week", "A week in the middle, hour by hour", middle, length));
        }
        return weeks;
    }

    private static Optional<Integer> find(Hourly hourly, Month month) {
        LocalDateTime start = hourly.firstHourStart();
        for (int hour = 0; hour + WEEK_HOURS <= hourly.hours(); hour++) {
            LocalDateTime time = start.plusHours(hour);
            if (time.getMonth() == month && time.getDayOfMonth() == DAY_OF_MONTH && time.getHour() == 0) {
                return Optional.of(hour);
            }
        }
        return Optional.empty();
    }
}
