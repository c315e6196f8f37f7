package org.warmvat.question.fit;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;
import org.warmvat.log.Readings;
import org.warmvat.log.Steps;
import org.warmvat.regression.AutoregressiveFit;
import org.warmvat.regression.FitFailure;
import org.warmvat.regression.Fitted;
import org.warmvat.regression.Observations;
import org.warmvat.regression.Parameter;
import org.warmvat.weather.Weather;

/**
 * A log whose clock does not go with that of the weather file, seen by the sun or the air that both have: the log's course is that of
 * the file, shifted by so much at its beginning and so much at its end.
 *
 * @param bySun whether the sun shows it, else the air
 * @param aheadAtStartS what the log's clock is ahead at its beginning, s
 * @param aheadAtEndS what it is ahead at its end, s
 * @param drifts whether it runs apart rather than being set wrong
 */
public record ClockDoubt(boolean bySun, double aheadAtStartS, double aheadAtEndS, boolean drifts) {

    private static final double HOUR_S = LogHours.HOUR_S;
    private static final int LEAST_HOURS = 48;
    private static final double MOST_S = 6 * HOUR_S;

    private static final double LEAST_S = 1200;

    /** The air of two places is warmest at times that differ by so much without any clock being wrong. */
    private static final double LEAST_BY_AIR_S = 3000;

    /** Below this share of the file's swing the log does not follow it at all. */
    private static final double LEAST_SHARE = 0.3;

    static Optional<ClockDoubt> of(Log log, FileAlong file) {
        Optional<Steps> sun = log.steps(LogColumn.GLOBAL);
        Optional<Readings> air = log.readings(LogColumn.AIR).filter(readings -> file.isOfTheSameDates());
        if (LogHours.count(log) - LogHours.FIRST < LEAST_HOURS) {
            return Optional.empty();
        }
        if (sun.isPresent()) {
            double[] logged = hours(log, hour -> sun.get().mean(LogHours.endS(hour) - HOUR_S, LogHours.endS(hour)));
            return judged(true, logged, hours(log, sunOf(log, file)));
        }
        return air.flatMap(readings -> judged(
                false,
                hours(log, hour -> LogHours.meanAbout(LogHours.endS(hour), readings::at)),
                hours(log, hour -> file.file().airC().at(file.fileS(hour)))));
    }

    /** The file's sun of the same dates, else that of a cloudless sky. */
    private static HourValue sunOf(Log log, FileAlong file) {
        if (file.isOfTheSameDates()) {
            double[] global = LogWeather.global(file);
            return hour -> global[hour];
        }
        Weather along = LogWeather.of(log, Optional.of(file), Optional.empty());
        return hour ->
                Math.max(0, along.sun(hour).cosZenith()) * along.sun(hour).sunlitFraction();
    }

    /** Something that has a value for an hour. */
    @FunctionalInterface
    private interface HourValue {
        double of(int hour);
    }

    private static double[] hours(Log log, HourValue value) {
        return IntStream.range(LogHours.FIRST, LogHours.count(log))
                .mapToDouble(value::of)
                .toArray();
    }

    private static Optional<ClockDoubt> judged(boolean bySun, double[] logged, double[] ofTheFile) {
        double[] timeS =
                IntStream.range(0, logged.length).mapToDouble(i -> i * HOUR_S).toArray();
        Readings line = new Readings(timeS, ofTheFile);
        double spanS = timeS[timeS.length - 1];
        double size = IntStream.range(0, logged.length)
                        .mapToDouble(i -> Math.abs(logged[i]))
                        .average()
                        .orElse(0)
                + 1;
        List<Parameter> parameters = List.of(
                new Parameter("level", 0, -100 * size, 100 * size, 0.01 * size),
                new Parameter("share", 1, -2000, 2000, 0.01),
                new Parameter("ahead at the start", 0, -MOST_S, MOST_S, 300),
                new Parameter("ahead at the end", 0, -MOST_S, MOST_S, 300));
        try {
            Fitted fitted = AutoregressiveFit.of(
                    new Observations(timeS, logged),
                    point -> IntStream.range(0, timeS.length)
                            .mapToDouble(i -> {
                                double along = timeS[i] / spanS;
                                double ahead = (1 - along) * point[2] + along * point[3];
                                return point[0] + point[1] * line.at(timeS[i] - ahead);
                            })
                            .toArray(),
                    parameters);
            return judged(bySun, fitted);
        } catch (FitFailure unlike) {
            // the log's course has nothing of the file's: another place's weather, and no clock to be seen by it
            return Optional.empty();
        }
    }

    private static Optional<ClockDoubt> judged(boolean bySun, Fitted fitted) {
        boolean follows = !fitted.isSingular() && fitted.values()[1] > LEAST_SHARE;
        double leastS = bySun ? LEAST_S : LEAST_BY_AIR_S;
        boolean wrong =
                follows && (isSure(fitted, point -> point[2], leastS) || isSure(fitted, point -> point[3], leastS));
        return wrong
                ? Optional.of(new ClockDoubt(
                        bySun,
                        fitted.values()[2],
                        fitted.values()[3],
                        isSure(fitted, point -> point[3] - point[2], leastS)))
                : Optional.empty();
    }

    private static boolean isSure(Fitted fitted, ToDoubleFunction<double[]> seconds, double leastS) {
        return Math.abs(seconds.applyAsDouble(fitted.values())) > leastS
                && !fitted.range(seconds).holds(0);
    }
}
