package org.warmvat.weather.file;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.warmvat.sun.EquationOfTime;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunCourse;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.RowTime;

/**
 * Lays rows of another step, at instants or of another clock, onto the hours of local standard time.
 *
 * <ul>
 *   <li>Temperatures, humidity, wind, pressure and cloud run in straight lines between the rows. Of rows by the hour they are taken at
 *       the wanted stamp, of shorter steps as the mean over the hour, which belongs to its middle.
 *   <li>Irradiance that is a mean of the row's step keeps its energy: it is spread over the step as the light outside the air is.
 *   <li>Irradiance of instants: the hour has the same share of the light outside the air as the instants in it together; where the
 *       sun stands below 3 degrees at all of them, that of the hour beside.
 * </ul>
 */
final class OntoHours {
    private static final int HOUR_MIN = 60;
    private static final int DAY_MIN = 1440;
    /** Sine of the elevation below which an instant tells nothing of its hour. */
    private static final double LEAST_SINE = 0.05;

    /** True solar days are up to half a minute longer or shorter than ours, which opens a slit between two of their hours at midnight. */
    private static final double WHOLE_HOUR_MIN = 59;

    private final RawRows rows;
    private final Layout.Time time;
    private final Stamp wanted;
    private final Site site;
    private final Observer observer;
    /** Time of each row, minutes since 1970 of local standard time. */
    private final double[] minutes;

    OntoHours(RawRows rows, Layout.Time time, Site site, Stamp wanted) {
        this.rows = rows;
        this.time = time;
        this.site = site;
        this.wanted = wanted;
        this.observer = new Observer(
                site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.standardPressureHPa(), 10);
        this.minutes = new double[rows.size()];
        Arrays.setAll(minutes, this::localMinute);
    }

    private double localMinute(int row) {
        long minute = rows.stampMinute(row);
        return switch (time.clock()) {
            case LOCAL -> minute;
            case UTC -> minute + HOUR_MIN * site.utcOffsetH();
            case SOLAR ->
                minute
                        - EquationOfTime.minutes(RowTime.moment(minute).getDayOfYear())
                        + HOUR_MIN * (site.utcOffsetH() - site.longitudeDeg() / 15);
        };
    }

    /** The hours in which there is any value, run by run: a typical year jumps from one year to another where its months meet. */
    RawRows hours() {
        RawRows hours = new RawRows(rows.quantities());
        int from = 0;
        while (from < minutes.length) {
            int to = from + 1;
            while (to < minutes.length && minutes[to] > minutes[to - 1] && minutes[to] < minutes[to - 1] + DAY_MIN) {
                to++;
            }
            new Run(from, to).addTo(hours);
            from = to;
        }
        return hours;
    }

    /** Rows that follow each other in time. */
    private final class Run {
        private final int from;
        private final int to;
        private final double leadMin;
        private final long firstHour;
        private final int hours;
        private final SunCourse course;

        Run(int from, int to) {
            this.from = from;
            this.to = to;
            this.leadMin = time.stamp().minutesIntoHour() * time.stepMinutes() / (double) HOUR_MIN;
            double begin = minutes[from] + time.instantMinutes().orElse(-leadMin);
            double last = minutes[to - 1] + time.instantMinutes().orElse(-leadMin);
            this.firstHour = (long) Math.floor(begin / HOUR_MIN);
            // an instant lies in one hour, a step ends in the hour before the one that begins there
            double end = time.instantMinutes().isPresent()
                    ? Math.floor(last / HOUR_MIN) + 1
                    : Math.ceil((last + time.stepMinutes()) / HOUR_MIN);
            this.hours = (int) ((long) end - firstHour);
            this.course =
                    new SunCourse(observer, site.utcOffsetH(), HOUR_MIN * firstHour, HOUR_MIN * (firstHour + hours));
        }

        void addTo(RawRows result) {
            int[] lines = lines();
            Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
            for (Quantity quantity : rows.quantities()) {
                values.put(quantity, values(quantity));
            }
            for (int hour = 0; hour < hours; hour++) {
                int at = hour;
                if (values.values().stream().anyMatch(v -> !Double.isNaN(v[at]))) {
                    result.begin(lines[hour], HOUR_MIN * (firstHour + hour) + wanted.minutesIntoHour());
                    for (Quantity quantity : rows.quantities()) {
                        result.set(quantity, limited(quantity, values.get(quantity)[hour]));
                    }
                }
            }
        }

        private static double limited(Quantity quantity, double value) {
            return Double.isNaN(value) ? value : Math.max(quantity.least(), Math.min(quantity.most(), value));
        }

        /** The file's line of each hour, of the row before where it has none. */
        private int[] lines() {
            int[] lines = new int[hours];
            int row = from;
            for (int hour = 0; hour < hours; hour++) {
                while (row + 1 < to && minutes[row + 1] < HOUR_MIN * (firstHour + hour + 1)) {
                    row++;
                }
                lines[hour] = rows.line(row);
            }
            return lines;
        }

        private double[] values(Quantity quantity) {
            if (quantity.isSunlight() || quantity == Quantity.LONGWAVE) {
                return time.instantMinutes().isPresent() ? ofInstants(quantity) : ofSteps(quantity);
            }
            return ofPoints(quantity);
        }

        private double weight(Quantity quantity, double fromMin, double toMin) {
            return switch (quantity) {
                case GLOBAL, DIFFUSE -> course.sines(fromMin, toMin);
                case BEAM -> course.beams(fromMin, toMin);
                default -> toMin - fromMin;
            };
        }

        /** Means of steps: each step's energy spread as the light outside the air; an hour not wholly covered has none. */
        private double[] ofSteps(Quantity quantity) {
            double[] energy = new double[hours];
            double[] covered = new double[hours];
            for (int row = from; row < to; row++) {
                double value = rows.value(quantity, row);
                double begin = minutes[row] - leadMin;
                double end = begin + time.stepMinutes();
                double whole = weight(quantity, begin, end);
                for (long h = (long) Math.floor(begin / HOUR_MIN); h * HOUR_MIN < end; h++) {
                    double left = Math.max(begin, (double) (h * HOUR_MIN));
                    double right = Math.min(end, (double) ((h + 1) * HOUR_MIN));
                    int hour = (int) (h - firstHour);
                    if (!Double.isNaN(value) && right > left && hour >= 0 && hour < hours) {
                        double share =
                                whole > 0 ? weight(quantity, left, right) / whole : (right - left) / time.stepMinutes();
                        energy[hour] += value * time.stepMinutes() * share;
                        covered[hour] += right - left;
                    }
                }
            }
            return each(hour -> covered[hour] >= WHOLE_HOUR_MIN ? energy[hour] / HOUR_MIN : Double.NaN);
        }

        private double[] ofInstants(Quantity quantity) {
            double[] sum = new double[hours];
            double[] outside = new double[hours];
            double[] sines = new double[hours];
            int[] count = new int[hours];
            for (int row = from; row < to; row++) {
                double value = rows.value(quantity, row);
                double instant = minutes[row] + time.instantMinutes().orElseThrow();
                if (!Double.isNaN(value)) {
                    int hour = (int) ((long) Math.floor(instant / HOUR_MIN) - firstHour);
                    double sine = course.sine(instant);
                    sum[hour] += value;
                    sines[hour] += sine;
                    outside[hour] += quantity == Quantity.BEAM ? SunCourse.beam(sine) : sine;
                    count[hour]++;
                }
            }
            double[] share = each(hour -> count[hour] > 0 && sines[hour] >= LEAST_SINE * count[hour]
                    ? sum[hour] / outside[hour]
                    : Double.NaN);
            return each(hour -> {
                double begin = (double) HOUR_MIN * (firstHour + hour);
                double mean = weight(quantity, begin, begin + HOUR_MIN) / HOUR_MIN;
                double known = nearest(share, hour);
                boolean lit = quantity != Quantity.LONGWAVE && mean > 0 && !Double.isNaN(known);
                return count[hour] == 0 ? Double.NaN : lit ? known * mean : sum[hour] / count[hour];
            });
        }

        /** The share of an hour, or of the one after or before it. */
        private double nearest(double[] share, int hour) {
            for (int at : new int[] {hour, hour + 1, hour - 1}) {
                if (at >= 0 && at < hours && !Double.isNaN(share[at])) {
                    return share[at];
                }
            }
            return Double.NaN;
        }

        private double[] ofPoints(Quantity quantity) {
            StraightLines lines = new StraightLines(rows, minutes, from, to);
            return each(hour -> {
                double begin = (double) HOUR_MIN * (firstHour + hour);
                return time.stepMinutes() == HOUR_MIN
                        ? lines.at(quantity, begin + wanted.minutesIntoHour())
                        : lines.mean(quantity, begin, begin + HOUR_MIN);
            });
        }

        private double[] each(IntToDoubleFunction value) {
            double[] result = new double[hours];
            Arrays.setAll(result, value);
            return result;
        }
    }
}
