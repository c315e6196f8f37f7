package org.warmvat.question.fit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.design.Design;
import org.warmvat.engine.Hours;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.log.Log;
import org.warmvat.log.LogFiles;
import org.warmvat.network.KnownRate;
import org.warmvat.tank.Guest;
import org.warmvat.tank.Runner;
import org.warmvat.tank.Supplied;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** Logs of tanks whose truth is known: the reference engine's run, hour by hour, with errors that remember. */
final class LogMaker {

    static final double RHO = 0.95;
    static final double NOISE_K = 0.1;

    private final Weather weather;
    private final List<double[]> hours = new ArrayList<>();
    private final String columns;

    private LogMaker(Weather weather, String columns) {
        this.weather = weather;
        this.columns = columns;
    }

    /** A tank that cools from 36 °C, fed with nothing, heated by a known power for some hours. */
    static LogMaker cooling(Design truth, Weather weather, double pulseW, int fromHour, int toHour) {
        LogMaker log = new LogMaker(weather, "backup_electric_w,feed_kg");
        KnownRate pulse = new KnownRate() {
            @Override
            public double at(double timeS) {
                return timeS > fromHour * Hours.HOUR_S && timeS < toHour * Hours.HOUR_S ? pulseW : 0;
            }

            @Override
            public double nextJumpS(double timeS) {
                return timeS < fromHour * Hours.HOUR_S
                        ? fromHour * Hours.HOUR_S
                        : timeS < toHour * Hours.HOUR_S ? toHour * Hours.HOUR_S : Double.POSITIVE_INFINITY;
            }
        };
        Supplied supplied = new Supplied(
                Optional.of(KnownRate.NONE),
                Optional.of(pulse),
                Optional.empty(),
                Optional.of(KnownRate.NONE),
                Optional.empty(),
                false);
        TankRun run = new Runner(weather, new ReferenceEngine()).start(truth, 0, 36, supplied, Guest.NONE);
        run.over(
                new Hours(0, weather.hours()),
                hour -> log.take(hour.state().nodeC(0), pulse.at((hour.hour() + 0.5) * Hours.HOUR_S), 0));
        return log;
    }

    /** A tank in use, with its heats measured. */
    static LogMaker inUse(Design truth, Weather weather) {
        LogMaker log = new LogMaker(weather, "backup_heat_w,solar_heat_w");
        TankRun run = new Runner(weather, new ReferenceEngine()).start(truth, 0);
        int backup = run.meter(BackupPart.BACKUP_HEAT);
        int solar = run.meter(SolarPart.SOLAR_HEAT);
        run.over(
                new Hours(0, weather.hours()),
                hour -> log.take(
                        hour.state().nodeC(0), hour.meter(backup) / Hours.HOUR_S, hour.meter(solar) / Hours.HOUR_S));
        return log;
    }

    private boolean take(double... values) {
        return hours.add(values);
    }

    /** The log with errors of a seed, as a file would hold it. */
    Log noisy(long seed) throws WeatherRefused {
        return noisy(seed, 0, t -> t);
    }

    /**
     * The log with errors of a seed, some rows missing, its clock running as it does.
     *
     * @param missing share of rows that are missing
     * @param clock what the logger's clock shows at a time, both in hours since the start
     */
    Log noisy(long seed, double missing, DoubleUnaryOperator clock) throws WeatherRefused {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("time,slurry_c,air_c,wind_m_s,global_w_m2," + columns + "\n");
        double error = NOISE_K * random.nextGaussian();
        for (int hour = 0; hour < hours.size(); hour++) {
            error = RHO * error + NOISE_K * Math.sqrt(1 - RHO * RHO) * random.nextGaussian();
            double endS = (hour + 1) * Hours.HOUR_S;
            if (random.nextDouble() >= missing) {
                double[] values = hours.get(hour);
                LocalDateTime time =
                        weather.start().plusSeconds(Math.round(Hours.HOUR_S * clock.applyAsDouble(hour + 1)));
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f%n",
                        time.toString().length() == 16 ? time + ":00" : time,
                        values[0] + error,
                        weather.airC().at(endS),
                        weather.windMPerS().at(endS),
                        weather.globalWPerM2(hour),
                        values[1],
                        values[2]));
            }
        }
        return LogFiles.read(
                List.of(new LogFiles.Source("made.csv", text.toString())), Optional.empty(), Optional.empty());
    }
}
