package org.warmvat.weather;

import java.time.LocalDateTime;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.warmvat.sun.Horizon;
import org.warmvat.sun.Irradiance;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.SunTrack;

/**
 * Complete hourly weather with its sun (model section 4). Immutable and shared between threads; the sun's positions, the
 * split of the irradiance and the ground fit are computed once, when first asked for.
 *
 * <p>Hours are counted from 0; times are seconds since {@link #start()}.
 */
public final class Weather {
    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final int HOURS_PER_YEAR = 8760;

    private final HourlyTable table;
    private final Conventions conventions;
    private final Linear airC;
    private final Linear dewPointC;
    private final Linear windMPerS;
    private final SkySeries sky;
    private final double[] pressureHPa;
    private final List<String> assumptions;
    private final Once<Sunlight> sunlight;
    private final Once<Optional<KusudaAchenbach1965>> ground;
    private final Once<double[]> dayBeforeC;
    private final Once<Double> meanAirC;
    private final Once<Double> meanWindMPerS;
    private final Map<Class<?>, Object> kept = new ConcurrentHashMap<>();

    /** Takes complete columns; what is absent is assumed as equation 4.1 says and told in {@link #assumptions()}. */
    public Weather(HourlyTable table) {
        this(table, Conventions.USUAL);
    }

    /** The same with other conventions than the usual ones. */
    public Weather(HourlyTable table, Conventions conventions) {
        this(table, conventions, Optional.empty());
    }

    /** The sun's course may be that of other weather at the same place and time. */
    private Weather(HourlyTable table, Conventions conventions, Optional<Weather> sameSun) {
        this.table = table;
        this.conventions = conventions;
        List<String> told = new ArrayList<>(table.notes());
        Assumed assumed = new Assumed(table, conventions, told);
        this.airC = linear(assumed.airC());
        double[] dew = assumed.dewPointC();
        this.dewPointC = linear(dew);
        this.windMPerS = linear(assumed.windMPerS());
        this.pressureHPa = assumed.pressureHPa();
        this.sky = assumed.sky(dew, pressureHPa);
        assumed.tellOfSunlight();
        this.assumptions = List.copyOf(told);
        this.sunlight = new Once<>(() -> sameSun.map(other -> Sunlight.under(other.sunlight.get(), table))
                .orElseGet(() -> Sunlight.of(table, meanPressureHPa(), conventions)));
        this.ground = new Once<>(this::fitGround);
        this.dayBeforeC = new Once<>(this::meansOfDayBefore);
        this.meanAirC = new Once<>(() -> airC.mean(0, hours() * SECONDS_PER_HOUR));
        this.meanWindMPerS = new Once<>(() -> windMPerS.mean(0, hours() * SECONDS_PER_HOUR));
    }

    private Linear linear(double[] values) {
        return new Linear(table.stamp().secondsIntoHour(), values);
    }

    /** The same columns under some conventions: this very weather, its sun already computed, where they are its own. */
    public Weather under(Conventions wanted) {
        return wanted.numbers().equals(conventions.numbers()) ? this : new Weather(table, wanted);
    }

    /**
     * The same hours warmer and sunnier: air and dew point some kelvins higher, irradiances times a factor, within the physical limits
     * of their columns. The sun's course is computed once for all such weather.
     *
     * @param warmerK K, may be negative
     * @param sunFactor factor on global, beam and diffuse irradiance, 0 or more
     */
    public Weather changed(double warmerK, double sunFactor) {
        return warmerK == 0 && sunFactor == 1
                ? this
                : new Weather(table.changed(warmerK, sunFactor), conventions, Optional.of(this));
    }

    /** Some of its hours in a row. */
    public Weather part(int from, int to) {
        return new Weather(table.part(from, to), conventions);
    }

    /** Where. */
    public Site site() {
        return table.site();
    }

    /** Beginning of the first hour, local standard time. */
    public LocalDateTime start() {
        return table.start();
    }

    /** End of the last hour. */
    public LocalDateTime end() {
        return start().plusHours(hours());
    }

    /** How many hours. */
    public int hours() {
        return table.hours();
    }

    /** Which moment of its hour a temperature belongs to. */
    public Stamp stamp() {
        return table.stamp();
    }

    /** Air temperature. */
    public Linear airC() {
        return airC;
    }

    /** Dew point. */
    public Linear dewPointC() {
        return dewPointC;
    }

    /** Wind speed at 10 m, as in the file. */
    public Linear windMPerS() {
        return windMPerS;
    }

    /**
     * Sky temperature: constant over the hour where the file has long-wave irradiance, otherwise along straight lines
     * between the stamps (equation 4.6).
     *
     * @param hour the hour in which the time lies; decides on its edges
     * @param secondsSinceStart the time
     */
    public double skyC(int hour, double secondsSinceStart) {
        return sky.atC(hour, secondsSinceStart);
    }

    /** Air pressure of an hour. */
    public double pressureHPa(int hour) {
        return pressureHPa[hour];
    }

    /** Global irradiance on the horizontal, mean of the hour. */
    public double globalWPerM2(int hour) {
        return light(hour).globalWPerM2();
    }

    /** Beam irradiance facing the sun, mean of the hour. */
    public double beamWPerM2(int hour) {
        return light(hour).beamWPerM2();
    }

    /** Diffuse irradiance on the horizontal, mean of the hour. */
    public double diffuseWPerM2(int hour) {
        return light(hour).diffuseWPerM2();
    }

    /** Global, beam and diffuse irradiance of an hour. */
    public Irradiance light(int hour) {
        return sunlight.get().light()[hour];
    }

    /** The sun over an hour. */
    public SunHour sun(int hour) {
        return sunlight.get().sun()[hour];
    }

    /** Share of each hour's sunlit part in which the sun stands above a horizon (equation 13.1). */
    public double[] sunSharesAbove(Horizon horizon) {
        return SunTrack.sharesAbove(observer(), start(), site().utcOffsetH(), hours(), horizon);
    }

    /** From where the sun is seen. */
    public Observer observer() {
        return Sunlight.observer(table, meanPressureHPa(), conventions);
    }

    /** Mean air temperature of the 24 hours before an hour begins; of the first 24 hours for those of the first day. */
    public double meanAirOfDayBeforeC(int hour) {
        return dayBeforeC.get()[hour];
    }

    private double[] meansOfDayBefore() {
        double[] means = new double[hours()];
        for (int hour = 0; hour < means.length; hour++) {
            double endS = Math.max(DAY_S, hour * HOUR_S);
            means[hour] = airC.mean(endS - DAY_S, endS);
        }
        return means;
    }

    private double meanPressureHPa() {
        return Arrays.stream(pressureHPa).average().orElseThrow();
    }

    /** Ground temperature of the file, where it has one. */
    public Optional<Linear> groundColumnC() {
        return Optional.ofNullable(table.columns().get(Quantity.GROUND)).map(this::linear);
    }

    /** Ground temperature from the annual swing of the air (equation 2.6); absent when shorter than a year. */
    public Optional<KusudaAchenbach1965> ground() {
        return ground.get();
    }

    /** Month in which an hour begins, 1 to 12. */
    public int month(int hour) {
        return start().plusHours(hour).getMonthValue();
    }

    /** Whether this is at least 8760 hours that end on the date on which they began. */
    public boolean isWholeYear() {
        return hours() >= HOURS_PER_YEAR && MonthDay.from(start()).equals(MonthDay.from(end()));
    }

    /** One sentence for each thing assumed, filled or changed. */
    public List<String> assumptions() {
        return assumptions;
    }

    /** The columns that were given. */
    public HourlyTable table() {
        return table;
    }

    /** Mean air temperature over the whole period. */
    public double meanAirC() {
        return meanAirC.get();
    }

    /**
     * What follows from the weather alone, worked out when it is first asked for and kept with it: sweeps and the page ask the same of one
     * file thousands of times.
     *
     * @param by who works it out, one thing each
     */
    @SuppressWarnings("unchecked") // each class keeps one kind of thing
    public <T> T kept(Class<?> by, Supplier<T> source) {
        return (T) kept.computeIfAbsent(by, unused -> source.get());
    }

    /** Mean air of the coldest 24 hours in a row, °C; of the whole file where it is shorter. */
    public double coldestDayC() {
        double day = 24 * SECONDS_PER_HOUR;
        double coldest = meanAirC();
        for (int hour = 0; hour + 24 <= hours(); hour++) {
            double from = hour * SECONDS_PER_HOUR;
            coldest = Math.min(coldest, airC.mean(from, from + day));
        }
        return coldest;
    }

    /** Mean wind at 10 m over the whole period. */
    public double meanWindMPerS() {
        return meanWindMPerS.get();
    }

    /** Days from 1 January 00:00 of the year in which a moment lies, fractions included. */
    public double dayOfYear(double secondsSinceStart) {
        LocalDateTime moment = start().plusSeconds((long) Math.floor(secondsSinceStart));
        double fraction = secondsSinceStart - Math.floor(secondsSinceStart);
        LocalDateTime newYear = moment.toLocalDate().withDayOfYear(1).atStartOfDay();
        return (ChronoUnit.SECONDS.between(newYear, moment) + fraction) / 86_400;
    }

    private Optional<KusudaAchenbach1965> fitGround() {
        if (hours() < HOURS_PER_YEAR) {
            return Optional.empty();
        }
        // counted on from the first 1 January, as the ground temperature itself is
        double firstDay = dayOfYear(airC.firstStampS());
        double[] days = new double[hours()];
        Arrays.setAll(days, i -> firstDay + i / 24.0);
        return Optional.of(AnnualHarmonic.fit(days, table.columns().get(Quantity.AIR)));
    }
}
