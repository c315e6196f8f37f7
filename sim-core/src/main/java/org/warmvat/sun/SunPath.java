package org.warmvat.sun;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import net.e175.klaus.solarpositioning.SolarPosition;

/** The sun's way across the sky of a day, as a solar chart shows it. */
public final class SunPath {

    private static final int MINUTES_PER_DAY = 1440;

    private SunPath() {}

    /**
     * A place of the sun.
     *
     * @param hourOfDay local standard time, h
     * @param azimuthDeg clockwise from north
     * @param elevationDeg apparent, above the level horizon
     */
    public record Point(double hourOfDay, double azimuthDeg, double elevationDeg) {}

    /**
     * Where the sun stands above the level horizon on a day.
     *
     * @param observer the place
     * @param date the day
     * @param utcOffsetH local standard time less universal time
     * @param stepMinutes between the points, at least 1
     * @return points in order of time; none in a polar night
     */
    public static List<Point> on(Observer observer, LocalDate date, double utcOffsetH, int stepMinutes) {
        SunPosition sun = new SunPosition(observer, date);
        double midnight = date.atStartOfDay().toEpochSecond(ZoneOffset.UTC) - 3600 * utcOffsetH;
        List<Point> points = new ArrayList<>();
        for (int minute = 0; minute < MINUTES_PER_DAY; minute += stepMinutes) {
            SolarPosition position = sun.at(midnight + 60.0 * minute);
            if (position.zenithAngle() < 90) {
                points.add(new Point(minute / 60.0, position.azimuth(), 90 - position.zenithAngle()));
            }
        }
        return points;
    }
}
