package org.warmvat.cli.answer;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import org.warmvat.result.BoughtEnergy;
import org.warmvat.result.Circuits;
import org.warmvat.result.Counts;
import org.warmvat.result.Electricity;
import org.warmvat.result.GasFigures;
import org.warmvat.result.Heats;
import org.warmvat.result.Hourly;
import org.warmvat.result.Location;
import org.warmvat.result.Losses;
import org.warmvat.result.Marks;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;
import org.warmvat.result.SlurryTemperature;
import org.warmvat.result.Stored;
import org.warmvat.result.Tariff;
import org.warmvat.result.Warning;

/**
 * A run worked out by a few lines of arithmetic an hour, so that reports can be tested apart from the engines. It is no model
 * of anything, but its heat balances close.
 */
public final class SyntheticRun {

    private static final double CAPACITY_J_PER_K = 3.8e6;
    private static final double UA_W_PER_K = 7;
    private static final double SETPOINT_C = 36;
    private static final double FLOOR_C = 34;
    private static final double METHANE_NM3_PER_H = 0.045;
    private static final double KWH_PER_NM3 = 35.8 / 3.6;
    private static final double HOUR_KWH_PER_W = 1e-3;
    private static final Tariff TARIFF = new Tariff("EUR", 0.30, 0.09, 0.09, 0.25, 0.20);

    /**
     * What the run is like.
     *
     * @param title title of its design
     * @param start start of its first hour
     * @param hours its length
     * @param latitudeDeg latitude
     * @param solar whether the sun heats
     * @param backup what the backup is fed with
     */
    public record Case(
            String title,
            LocalDateTime start,
            int hours,
            double latitudeDeg,
            boolean solar,
            Optional<BoughtEnergy> backup) {

        /** The usual case: a year in the north with sun and an electric backup. */
        public static Case usual() {
            return new Case("Invented tank", at(2025, 1), 8760, 53, true, Optional.of(BoughtEnergy.ELECTRICITY));
        }
    }

    private final Case with;
    private double backupW = 600;
    private double gasScale = 1;
    private double startC = SETPOINT_C;
    private double coldK;

    private double[] slurryC;
    private double[] collectorC;
    private double[] backupC;
    private double[] airC;
    private double[] solarW;
    private double[] heaterW;
    private double[] lossW;
    private double[] feedW;
    private double[] mixerW;
    private double[] augerW;
    private double[] otherW;
    private double[] methane;
    private double[] irradiance;

    private SyntheticRun(Case with) {
        this.with = with;
    }

    /** The usual run. */
    public static RunResult usual() {
        return of(Case.usual());
    }

    /** A run of some case, warm all along when it has a backup. */
    public static RunResult of(Case with) {
        return new SyntheticRun(with).run();
    }

    /** A run that is short in the cold months: a backup too small. */
    public static RunResult shortAtTimes() {
        SyntheticRun run = new SyntheticRun(Case.usual());
        run.backupW = 180;
        return run.run();
    }

    /** A run that is never warm: started cold, with a heater of a few watts, in the cold. */
    public static RunResult neverWarm() {
        SyntheticRun run = new SyntheticRun(Case.usual());
        run.backupW = 5;
        run.startC = 8;
        run.coldK = 12;
        return run.run();
    }

    /** A run that eats more than it returns: little gas. */
    public static RunResult negative() {
        SyntheticRun run = new SyntheticRun(Case.usual());
        run.gasScale = 0.2;
        return run.run();
    }

    /** A run of a design without a gas block. */
    public static RunResult withoutGas() {
        SyntheticRun run = new SyntheticRun(Case.usual());
        run.gasScale = 0;
        return run.run();
    }

    /** A run without a solar circuit. */
    public static RunResult withoutSun() {
        Case usual = Case.usual();
        return of(new Case(usual.title(), usual.start(), usual.hours(), 53, false, Optional.of(BoughtEnergy.FUEL)));
    }

    /** A run without a backup heater. */
    public static RunResult withoutBackup() {
        Case usual = Case.usual();
        return of(new Case(usual.title(), usual.start(), usual.hours(), 53, true, Optional.empty()));
    }

    /** Start of a month. */
    public static LocalDateTime at(int year, int month) {
        return LocalDateTime.of(year, month, 1, 0, 0);
    }

    private RunResult run() {
        allocate();
        double temperature = startC;
        boolean calling = false;
        for (int hour = 0; hour < with.hours(); hour++) {
            calling = temperature <= SETPOINT_C - 0.5 || (calling && temperature < SETPOINT_C + 0.5);
            temperature = step(hour, temperature, calling && with.backup().isPresent());
        }
        List<Period> months = split(hour -> YearMonth.from(time(hour)).toString());
        List<Period> days = split(hour -> time(hour).toLocalDate().toString());
        return new RunResult(
                with.title(),
                new Location("Nowhere (invented)", with.latitudeDeg()),
                "reference",
                10,
                marks(),
                period("year", 0, with.hours()),
                months,
                days,
                hourly(),
                List.of(new Warning(
                        "slurry_moves",
                        "The slurry moved more than 1 K in a day on 12 days, at worst 1.7 K.",
                        12,
                        1.7)),
                List.of("Wind is 3 m/s throughout: the weather file has none.", "outer_emissivity is 0.9."));
    }

    private void allocate() {
        int hours = with.hours();
        slurryC = new double[hours];
        collectorC = new double[hours];
        backupC = new double[hours];
        airC = new double[hours];
        solarW = new double[hours];
        heaterW = new double[hours];
        lossW = new double[hours];
        feedW = new double[hours];
        mixerW = new double[hours];
        augerW = new double[hours];
        otherW = new double[hours];
        methane = new double[hours];
        irradiance = new double[hours];
    }

    private double step(int hour, double temperature, boolean heating) {
        LocalDateTime time = time(hour);
        double season = -Math.cos(2 * Math.PI * (time.getDayOfYear() - 15) / 365) * Math.signum(with.latitudeDeg());
        double day = Math.sin(2 * Math.PI * (time.getHour() - 8) / 24.0);
        double cloud = 0.55 + 0.45 * Math.sin(time.getDayOfYear() * 1.7);
        airC[hour] = 9 + 8 * season + 3.5 * day + 2 * Math.sin(time.getDayOfYear() * 0.61) - coldK;
        irradiance[hour] = Math.max(0, day * (450 + 350 * season)) * cloud;
        boolean pumping = with.solar() && irradiance[hour] > 180 && temperature < SETPOINT_C + 3.5;
        solarW[hour] = pumping ? 0.9 * (irradiance[hour] - 150) : 0;
        collectorC[hour] = airC[hour] + irradiance[hour] / (pumping ? 14 : 9);
        heaterW[hour] = heating ? backupW : 0;
        backupC[hour] = heating ? 48 : temperature + 1;
        boolean feeding = time.getHour() >= 8 && time.getHour() < 11;
        feedW[hour] = feeding ? 8 * 20 * 4186 / 3600.0 / 24 * (temperature - Math.max(airC[hour], 0)) : 0;
        methane[hour] = gasScale * METHANE_NM3_PER_H;
        lossW[hour] = UA_W_PER_K * (temperature - airC[hour]) + gasW(hour);
        mixerW[hour] = 41;
        augerW[hour] = feeding ? 13 : 0;
        otherW[hour] = 3 + (feeding ? 33 : 0) + (pumping ? 12 : 0) + (heating ? 15 : 0) + (gasScale > 0 ? 2 : 0);
        double next =
                temperature + 3600 * (solarW[hour] + heaterW[hour] + 7 - lossW[hour] - feedW[hour]) / CAPACITY_J_PER_K;
        slurryC[hour] = next;
        return next;
    }

    private double gasW(int hour) {
        return methane[hour] * 120;
    }

    private LocalDateTime time(int hour) {
        return with.start().plusHours(hour);
    }

    private Marks marks() {
        return new Marks(SETPOINT_C, FLOOR_C, 0.9, with.solar(), with.backup(), gasScale > 0, 2.5, TARIFF);
    }

    private Hourly hourly() {
        boolean backup = with.backup().isPresent();
        return new Hourly(
                with.start(),
                slurryC,
                with.solar() ? Optional.of(collectorC) : Optional.empty(),
                backup ? Optional.of(backupC) : Optional.empty(),
                airC,
                with.solar() ? Optional.of(solarW) : Optional.empty(),
                backup ? Optional.of(heaterW) : Optional.empty(),
                lossW,
                feedW,
                mixerW,
                augerW,
                otherW,
                methane,
                with.solar() ? Optional.of(irradiance) : Optional.empty());
    }

    private List<Period> split(IntFunction<String> label) {
        List<Period> periods = new ArrayList<>();
        int from = 0;
        for (int hour = 1; hour <= with.hours(); hour++) {
            if (hour == with.hours() || !label.apply(hour).equals(label.apply(from))) {
                periods.add(period(label.apply(from), from, hour));
                from = hour;
            }
        }
        return periods;
    }

    private Period period(String label, int from, int to) {
        double hours = to - from;
        double solar = kWh(solarW, from, to);
        double backup = kWh(heaterW, from, to);
        double gasHeat = sum(methane, from, to) * 120 * HOUR_KWH_PER_W;
        double loss = kWh(lossW, from, to) - gasHeat;
        double before = from == 0 ? startC : slurryC[from - 1];
        double stored = CAPACITY_J_PER_K * (slurryC[to - 1] - before) / 3.6e6;
        Electricity electricity = electricity(from, to);
        return new Period(
                label,
                hours,
                new Heats(solar, backup, 0.007 * hours, 0, kWh(feedW, from, to), gasHeat),
                new Losses(0.55 * loss, 0.1 * loss, 0.15 * loss, 0.12 * loss, 0.08 * loss),
                new Circuits(1.4 * solar, 0.4 * solar, 1.1 * backup, 0.1 * backup, 1.1 * backup),
                new Stored(stored, 0, 0, 0),
                electricity,
                gas(sum(methane, from, to), 1.1 * backup, electricity.totalKWh()),
                slurry(from, to),
                counts(from, to));
    }

    private Electricity electricity(int from, int to) {
        double mixer = kWh(mixerW, from, to);
        double auger = kWh(augerW, from, to);
        double solarPump = 0.012 * running(solarW, from, to);
        double backupPump = 0.015 * running(heaterW, from, to);
        double air = gasScale > 0 ? 0.002 * (to - from) : 0;
        double shredder = auger / 13 * 33;
        return new Electricity(mixer, auger, shredder, solarPump, backupPump, air, 0.003 * (to - from));
    }

    private GasFigures gas(double methaneNm3, double bought, double electricity) {
        double energy = methaneNm3 * KWH_PER_NM3;
        boolean electric = with.backup().equals(Optional.of(BoughtEnergy.ELECTRICITY));
        double weighted = energy - 2.5 * electricity - (electric ? 2.5 : 1) * bought;
        return new GasFigures(
                methaneNm3,
                methaneNm3 / 0.58,
                energy,
                energy - bought - electricity,
                weighted,
                gasScale > 0 ? OptionalDouble.of(0.013) : OptionalDouble.empty());
    }

    private SlurryTemperature slurry(int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int hour = from; hour < to; hour++) {
            least = Math.min(least, slurryC[hour]);
            most = Math.max(most, slurryC[hour]);
        }
        return new SlurryTemperature(least, sum(slurryC, from, to) / (to - from), most);
    }

    private Counts counts(int from, int to) {
        int below = 0;
        for (int hour = from; hour < to; hour++) {
            below += slurryC[hour] < FLOOR_C ? 1 : 0;
        }
        return new Counts(below, 0, 0, 0, 0, 0, starts(solarW, from, to), starts(heaterW, from, to), 0);
    }

    private static int starts(double[] watts, int from, int to) {
        int starts = 0;
        for (int hour = from; hour < to; hour++) {
            starts += watts[hour] > 0 && (hour == 0 || watts[hour - 1] == 0) ? 1 : 0;
        }
        return starts;
    }

    private static int running(double[] watts, int from, int to) {
        int hours = 0;
        for (int hour = from; hour < to; hour++) {
            hours += watts[hour] > 0 ? 1 : 0;
        }
        return hours;
    }

    private static double kWh(double[] watts, int from, int to) {
        return sum(watts, from, to) * HOUR_KWH_PER_W;
    }

    private static double sum(double[] values, int from, int to) {
        double sum = 0;
        for (int hour = from; hour < to; hour++) {
            sum += values[hour];
        }
        return sum;
    }
}
