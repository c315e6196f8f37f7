package org.warmvat.sun;

import java.time.LocalDate;

/**
 * How the light outside the air is spread over the minutes of a span, by which the irradiance of one stretch of time is laid onto
 * another. The sine of the sun's elevation is taken every hour, good to a tenth of a degree in our centuries, which is enough for shares;
 * between hours it runs on the cubic through four of them, which misses a sine of a day's period by a ten-thousandth at most.
 */
public final class SunCourse {
    private static final int CELL_MIN = 10;
    private static final int HOUR_MIN = 60;
    private static final long DAY_MIN = 1440;

    private final double firstMin;
    /** At full hours from one before the span to two after it, below 0 while the sun is down. */
    private final double[] hourly;

    private final double[] sines;
    private final double[] beams;

    /**
     * The course over a span.
     *
     * @param observer the place
     * @param utcOffsetH local standard time less universal time
     * @param fromMinute beginning, minutes since 1970 of local standard time
     * @param toMinute end
     */
    public SunCourse(Observer observer, double utcOffsetH, long fromMinute, long toMinute) {
        this.firstMin = fromMinute;
        this.hourly = hourly(observer, 60 * utcOffsetH, fromMinute, toMinute);
        int cells = (int) ((toMinute - fromMinute + CELL_MIN - 1) / CELL_MIN);
        this.sines = new double[cells + 1];
        this.beams = new double[cells + 1];
        for (int i = 0; i < cells; i++) {
            double sine = sine(firstMin + CELL_MIN * (i + 0.5));
            sines[i + 1] = sines[i] + CELL_MIN * sine;
            beams[i + 1] = beams[i] + CELL_MIN * beam(sine);
        }
    }

    private static double[] hourly(Observer observer, double offsetMin, long fromMinute, long toMinute) {
        SunPosition sun = new SunPosition(observer, LocalDate.ofEpochDay(Math.floorDiv(fromMinute, DAY_MIN)));
        double[] sines = new double[(int) ((toMinute - fromMinute) / HOUR_MIN) + 5];
        for (int i = 0; i < sines.length; i++) {
            double minute = fromMinute + HOUR_MIN * (i - 1.0) - offsetMin;
            sines[i] = Math.sin(Math.toRadians(sun.roughElevationDeg(60 * minute)));
        }
        return sines;
    }

    /** Sine of the sun's elevation at a minute of the span, 0 while it is down. */
    public double sine(double minute) {
        double place = Math.max(0, (minute - firstMin) / HOUR_MIN);
        int hour = Math.min(hourly.length - 4, (int) place);
        double x = place - hour;
        double cubic = -x * (x - 1) * (x - 2) / 6 * hourly[hour]
                + (x + 1) * (x - 1) * (x - 2) / 2 * hourly[hour + 1]
                - (x + 1) * x * (x - 2) / 2 * hourly[hour + 2]
                + (x + 1) * x * (x - 1) / 6 * hourly[hour + 3];
        return Math.max(0, cubic);
    }

    /** The sine of the elevation summed over a part of the span, minutes. */
    public double sines(double fromMinute, double toMinute) {
        return at(sines, toMinute) - at(sines, fromMinute);
    }

    /** The same for the beam that is left of a clear sky's. */
    public double beams(double fromMinute, double toMinute) {
        return at(beams, toMinute) - at(beams, fromMinute);
    }

    /**
     * What a clear sky leaves of the beam on its way through the air, by the sine of the elevation, 0 to 0.87: Beer and Lambert's law with
     * an optical depth of 0.15 over an air mass of 20 at the horizon. A convention, chosen so that the hours of a year of instants hold as much
     * beam as the instants do.
     */
    public static double beam(double sine) {
        return sine > 0 ? Math.exp(-0.15 / (sine + 0.05)) : 0;
    }

    private double at(double[] sums, double minute) {
        double place = Math.max(0, Math.min(sums.length - 1.0, (minute - firstMin) / CELL_MIN));
        int left = Math.min(sums.length - 2, (int) place);
        return left < 0 ? 0 : sums[left] + (place - left) * (sums[left + 1] - sums[left]);
    }
}
