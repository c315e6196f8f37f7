package org.warmvat.tank;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.weather.KusudaAchenbach1965;
import org.warmvat.weather.Linear;
import org.warmvat.weather.Weather;

/** Where the ground temperature of a run comes from: the file's column, the design's wave, or a fit to the air (equation 2.6). */
public final class GroundTemperature {

    private static final double DAY_S = 86_400;

    private GroundTemperature() {}

    /** Whether anything tells the ground temperature. */
    public static boolean isKnown(Design design, Weather weather) {
        return weather.groundColumnC().isPresent() || wave(design, weather).isPresent();
    }

    /**
     * Ground temperature in °C as a function of seconds since the weather's start; NaN where nothing tells it, which only a
     * design that does not use it may meet.
     */
    public static DoubleUnaryOperator of(Design design, Weather weather) {
        Optional<Linear> column = weather.groundColumnC();
        if (column.isPresent()) {
            return column.get()::at;
        }
        Optional<KusudaAchenbach1965> wave = wave(design, weather);
        if (wave.isEmpty()) {
            return timeS -> Double.NaN;
        }
        KusudaAchenbach1965 ground = wave.get();
        double depthM = design.site().ground().depthM();
        double startDay = weather.dayOfYear(0);
        return timeS -> ground.temperatureC(depthM, startDay + timeS / DAY_S);
    }

    private static Optional<KusudaAchenbach1965> wave(Design design, Weather weather) {
        double diffusivity = design.site().ground().diffusivityM2PerDay();
        Optional<GroundWave> given = design.site().ground().wave();
        if (given.isPresent()) {
            GroundWave wave = given.get();
            return Optional.of(
                    new KusudaAchenbach1965(wave.meanC(), wave.amplitudeK(), wave.coldestDay(), diffusivity));
        }
        return weather.ground()
                .map(fit -> new KusudaAchenbach1965(fit.meanC(), fit.amplitudeK(), fit.coldestDay(), diffusivity));
    }
}
