package org.warmvat.network;

import java.time.temporal.ChronoUnit;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.weather.Weather;

/**
 * What a part sees outside at an instant: weather, ground and the clock. Times are seconds since the start of the weather
 * file.
 */
public final class Surroundings {

    private static final double DAY_S = 86_400;

    private final Weather weather;
    private final DoubleUnaryOperator groundC;
    private final double startSecondOfDay;
    private double airAtS = Double.NaN;
    private double airC;

    /**
     * Surroundings of a run.
     *
     * @param weather the hourly weather
     * @param groundC ground temperature in °C as a function of seconds since the start
     */
    public Surroundings(Weather weather, DoubleUnaryOperator groundC) {
        this.weather = weather;
        this.groundC = groundC;
        startSecondOfDay =
                ChronoUnit.SECONDS.between(weather.start().toLocalDate().atStartOfDay(), weather.start());
    }

    /** The hourly weather. */
    public Weather weather() {
        return weather;
    }

    /** Outdoor air, °C. */
    public double airC(double timeS) {
        if (timeS != airAtS) {
            airC = weather.airC().at(timeS);
            airAtS = timeS;
        }
        return airC;
    }

    /** Wind at 10 m, m/s. */
    public double windMPerS(double timeS) {
        return weather.windMPerS().at(timeS);
    }

    /** Ground at the depth that counts, °C. */
    public double groundC(double timeS) {
        return groundC.applyAsDouble(timeS);
    }

    /** Second of the local day, 0 up to but not including 86 400. */
    public double secondOfDay(double timeS) {
        return (startSecondOfDay + timeS) % DAY_S;
    }
}
