package org.warmvat.question.fit;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.log.Log;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Linear;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/** A weather file laid along a log: of the same dates where the file has them all, else of the same days of the year. */
final class FileAlong {

    private static final int SECONDS_PER_HOUR = 3600;

    private final Weather file;
    private final double[] fileS;
    private final boolean sameDates;

    private FileAlong(Weather file, double[] fileS, boolean sameDates) {
        this.file = file;
        this.fileS = fileS;
        this.sameDates = sameDates;
    }

    /**
     * Lays a file along a log.
     *
     * @throws StudyRefused when the file has not all days of the log
     */
    static FileAlong of(Weather file, Log log) throws StudyRefused {
        int hours = LogHours.count(log);
        LocalDateTime first = log.start().plusSeconds(aheadS(file, log));
        boolean sameDates = hasDates(file, log);
        double[] fileS = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            LocalDateTime moment = first.plusSeconds((long) LogHours.endS(hour));
            boolean dayBefore = hour < LogHours.FIRST;
            Optional<Double> found = sameDates
                    ? Optional.of(Math.max(0, secondsInto(file, moment)))
                    : ofTheYear(file, moment).or(() -> dayBefore ? ofTheYear(file, first) : Optional.empty());
            fileS[hour] = found.orElseThrow(() -> new StudyRefused("the weather file has no "
                    + moment.toLocalDate().toString().substring(5)
                    + " (month and day), which the log has; expected weather of the log's dates or of a whole year"));
        }
        return new FileAlong(file, fileS, sameDates);
    }

    /** Whether a file has all the log's dates. */
    static boolean hasDates(Weather file, Log log) {
        LocalDateTime first = log.start().plusSeconds(aheadS(file, log));
        return !first.isBefore(file.start())
                && !first.plusSeconds((long) log.spanS()).isAfter(file.end().plusHours(1));
    }

    /** What the file's clock is ahead of the log's, s; 0 where the log does not state its own. */
    private static long aheadS(Weather file, Log log) {
        double logOffsetH = log.utcOffsetH().orElse(file.site().utcOffsetH());
        return Math.round((file.site().utcOffsetH() - logOffsetH) * SECONDS_PER_HOUR);
    }

    private static double secondsInto(Weather file, LocalDateTime moment) {
        return Duration.between(file.start(), moment).toSeconds();
    }

    /** The same day of the year in the file; 28 February for the 29th where it has none. */
    private static Optional<Double> ofTheYear(Weather file, LocalDateTime moment) {
        for (int year = file.start().getYear(); year <= file.end().getYear(); year++) {
            double seconds = secondsInto(file, moment.withYear(year));
            if (seconds > 0 && seconds <= (double) file.hours() * SECONDS_PER_HOUR) {
                return Optional.of(seconds);
            }
        }
        return Optional.empty();
    }

    /** What was done, in a sentence. */
    String words() {
        return sameDates
                ? "What the log lacks comes from the weather file, of the same dates."
                : "What the log lacks comes from the weather file, of the same days of the year: its dates are not the log's.";
    }

    boolean isOfTheSameDates() {
        return sameDates;
    }

    Weather file() {
        return file;
    }

    /** Seconds of the file at the end of each hour along the log. */
    double fileS(int hour) {
        return fileS[hour];
    }

    /** The file's columns along the log. */
    Map<Quantity, double[]> columns() {
        Map<Quantity, double[]> along = new EnumMap<>(Quantity.class);
        file.table()
                .columns()
                .forEach((quantity, values) -> along.put(
                        quantity, isHourMean(quantity) ? means(values) : line(new Linear(stampS(), values)::at)));
        return along;
    }

    private double stampS() {
        return file.stamp().secondsIntoHour();
    }

    private static boolean isHourMean(Quantity quantity) {
        return quantity.isSunlight() || quantity == Quantity.LONGWAVE || quantity == Quantity.PRESSURE;
    }

    /** Straight lines at the hours' ends. */
    double[] line(DoubleUnaryOperator line) {
        return Arrays.stream(fileS).map(line).toArray();
    }

    /** Means over the hours, which may lie across two of the file's. */
    double[] means(double[] values) {
        double[] means = new double[fileS.length];
        for (int hour = 0; hour < means.length; hour++) {
            double end = fileS[hour] / SECONDS_PER_HOUR;
            int later = Math.min(values.length - 1, (int) Math.ceil(end - 1e-9) - 1);
            double ofLater = Math.min(1, end - later);
            means[hour] = ofLater * values[Math.max(0, later)] + (1 - ofLater) * values[Math.max(0, later - 1)];
        }
        return means;
    }
}
