package org.warmvat.sun;

import java.time.LocalDate;

/**
 * How the light outside the air is spread over the minutes of a span, by which the irradiance of one stretch of time is laid onto
 * another. The sun's elevation is good to a tenth of a degree in our centuries, which is enough for shares; it is taken every ten minutes.
 */
public final class SunCourse {
    private static final int CELL_MIN = 10;
    private static final double MINUTES_PER_DAY = 1440;

    private final SunPosition sun;
    private final double offsetMin;
    private final double firstMin;
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
        this.sun = new SunPosition(observer, LocalDate.ofEpochDay(Math.floorDiv(fromMinute, (long) MINUTES_PER_DAY)));
        this.offsetMin = 60 * utcOffsetH;
        this.firstMin = fromMinute;
        int cells = (int) ((toMinute - fromMinute + CELL_MIN - 1) / CELL_MIN);
        this.sines = new double[cells + 1];
        this.beams = new double[cells + 1];
        for (int i = 0; i < cells; i++) {
            double sine = sine(firstMin + CELL_MIN * (i + 0.5));
            sines[i + 1] = sines[i] + CELL_MIN * sine;
            beams[i + 1] = beams[i] + CELL_MIN * beam(sine);
        }
    }

    /** Sine of the sun's elevation at a minute, 0 while it is down. */
    public double sine(double minute) {
        return Math.max(0, Math.sin(Math.toRadians(sun.roughElevationDeg(60 * (minute - offsetMin)))));
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
