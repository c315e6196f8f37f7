package org.warmvat.network;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.weather.Weather;

/**
 * What the parts meet outside: weather, ground and the clock. Air and ground are known nodes of the network. Times are seconds since
 * the start of the weather file.
 */
public final class Surroundings implements Part {

    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;

    private final Weather weather;
    private final DoubleUnaryOperator groundC;
    private final LocalDate firstDate;
    private final double startSecondOfDay;
    private final Network.Assembly assembly;
    private final int air;
    private int ground = Network.NOWHERE;

    /**
     * Surroundings of a run, added to its network.
     *
     * @param weather the hourly weather
     * @param groundC ground temperature in °C as a function of seconds since the start
     * @param assembly the network being gathered
     */
    public Surroundings(Weather weather, DoubleUnaryOperator groundC, Network.Assembly assembly) {
        this.weather = weather;
        this.groundC = groundC;
        firstDate = weather.start().toLocalDate();
        startSecondOfDay =
                ChronoUnit.SECONDS.between(weather.start().toLocalDate().atStartOfDay(), weather.start());
        this.assembly = assembly;
        air = assembly.known("air", airC(0));
        assembly.part(this);
    }

    @Override
    public void look(double timeS, State state) {
        state.setNodeC(air, airC(timeS));
        if (ground >= 0) {
            state.setNodeC(ground, groundC.applyAsDouble(timeS));
        }
    }

    /** Node of the outdoor air. */
    public int air() {
        return air;
    }

    /** Node of the ground at the depth that counts; nobody works it out until a part wants it. */
    public int ground() {
        if (ground < 0) {
            ground = assembly.known("ground", groundC.applyAsDouble(0));
        }
        return ground;
    }

    /** The hourly weather. */
    public Weather weather() {
        return weather;
    }

    /** Outdoor air, °C. */
    public double airC(double timeS) {
        return weather.airC().at(timeS);
    }

    /** Wind at 10 m, m/s. */
    public double windMPerS(double timeS) {
        return weather.windMPerS().at(timeS);
    }

    /** The next midnight strictly after a time, s. */
    public double nextMidnightS(double timeS) {
        return timeS + DAY_S - secondOfDay(timeS);
    }

    /** The date at a time. */
    public LocalDate date(double timeS) {
        return firstDate.plusDays((long) Math.floor((startSecondOfDay + timeS) / DAY_S));
    }

    /** Second of the local day, 0 up to but not including 86 400. */
    public double secondOfDay(double timeS) {
        return rest(startSecondOfDay + timeS, DAY_S);
    }

    /** Second of the local clock hour, 0 up to but not including 3600. */
    public double secondOfHour(double timeS) {
        return rest(startSecondOfDay + timeS, HOUR_S);
    }

    /** What {@code %} gives, exactly; Java's operator leaves compiled code, and every hour asks several times. */
    private static double rest(double seconds, double of) {
        double whole = Math.floor(seconds / of);
        double rest = seconds - whole * of;
        return rest < 0 ? seconds - (whole - 1) * of : rest;
    }
}
