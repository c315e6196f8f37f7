package org.warmvat.question.spring;

import java.time.LocalDateTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.Hours;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Warning;
import org.warmvat.question.CyclicWeather;
import org.warmvat.question.GasFollowed;
import org.warmvat.question.GasRange;
import org.warmvat.question.Parallel;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;

/**
 * When to start a cold tank (equation 12.6): on each date it begins as cold as the ground, without solids, and is followed for a year
 * of 365 days round the file, once heated by the sun alone and once with everything that the design has.
 */
public final class SpringStudy {

    private static final int DAY_H = 24;
    private static final int YEAR_H = 365 * DAY_H;

    private final Design design;
    private final Runner runner;
    private final Weather file;
    private final SeasonTable season;

    /**
     * A start.
     *
     * @param date when
     * @param daysSun days until the set-point is reached by the sun alone; empty where it is not within 365 days
     * @param daysBackup the same with everything the design has
     * @param heatKWh heat of sun and backup until then; empty where it is not reached
     * @param boughtKWh energy bought for the backup until then
     * @param netKWh net energy of the 365 days from the start, useful net energy where uses of gas are given
     * @param gas the same with low and high gas; empty where no gas is computed
     * @param warnings of the year with everything
     */
    public record Start(
            MonthDay date,
            OptionalDouble daysSun,
            OptionalDouble daysBackup,
            OptionalDouble heatKWh,
            OptionalDouble boughtKWh,
            double netKWh,
            Optional<GasRange.Ends> gas,
            List<Warning> warnings) {

        /** Whether the year gives more than it takes, the heat to start included. */
        public boolean paysBack() {
            return netKWh > 0;
        }
    }

    /**
     * What becomes of a cold tank by the date of its start.
     *
     * @param starts in the order asked
     */
    public record Result(List<Start> starts) {

        /** Takes the list as it is. */
        public Result {
            starts = List.copyOf(starts);
        }

        /** The first start of the list that pays back within its year. */
        public Optional<Start> earliestThatPays() {
            return starts.stream().filter(Start::paysBack).findFirst();
        }
    }

    private SpringStudy(Design design, Weather file, Engine engine) {
        this.design = CyclicWeather.design(design, file);
        this.file = file;
        runner = new Runner(CyclicWeather.weather(file, YEAR_H), engine);
        season = design.season();
    }

    /** The 1st and 15th of each month. */
    public static List<MonthDay> usualDates() {
        List<MonthDay> dates = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            dates.add(MonthDay.of(month, 1));
            dates.add(MonthDay.of(month, 15));
        }
        return List.copyOf(dates);
    }

    /**
     * Answers the question.
     *
     * @param design the design
     * @param file a whole year or more
     * @param engine what integrates
     * @param dates dates to start on, in the order of the answer
     * @param parallel the threads
     * @throws StudyRefused when the file is shorter than a year or the design does not go with it
     */
    public static Result run(Design design, Weather file, Engine engine, List<MonthDay> dates, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(design, file);
        if (!file.isWholeYear()) {
            throw new StudyRefused("weather: goes from " + file.start() + " to " + file.end()
                    + ", expected a whole year: a tank is followed for 365 days from its start");
        }
        SpringStudy study = new SpringStudy(design, file, engine);
        return new Result(parallel.map(dates, study::start));
    }

    private Start start(MonthDay date) {
        int first = hourOf(date);
        Reached alone = new Reached(first);
        run(runner.startCold(design.without(BackupCircuit.class), first), first, alone, false, Optional.empty());
        Reached heated = new Reached(first);
        TankRun cold = runner.startCold(design, first);
        Optional<GasFollowed> followed = GasFollowed.of(design, cold).map(GasFollowed::fromEmpty);
        Account account = run(cold, first, heated, true, followed);
        Period year = account.whole();
        return new Start(
                date,
                alone.days(),
                heated.days(),
                heated.heatKWh(),
                heated.boughtKWh(),
                year.of(Lines.leading(year.books())),
                followed.map(gas -> gas.range(account)).or(() -> ownRuns(first)).map(GasRange::whole),
                account.warnings());
    }

    /** Low and high gas where they take runs of their own; empty without gas. */
    private Optional<GasRange> ownRuns(int first) {
        return design.gas().map(gas -> GasFollowed.ofRuns(alone(Estimate.LOW, first), alone(Estimate.HIGH, first)));
    }

    private Account alone(Estimate estimate, int first) {
        TankRun cold = runner.startCold(design.at(estimate), first);
        return run(cold, first, new Reached(first), true, Optional.empty());
    }

    private Account run(TankRun run, int first, Reached reached, boolean wholeYear, Optional<GasFollowed> followed) {
        reached.begin(run.slurryC());
        return run.account(new Hours(first, first + YEAR_H), Account.Keep.SUMS, (account, hour) -> {
            reached.hour(account, hour, run.slurryC());
            followed.ifPresent(gas -> gas.hour(hour));
            return wholeYear || !reached.isReached();
        });
    }

    /** Index of the hour at which a date begins for the first time. */
    private int hourOf(MonthDay date) {
        LocalDateTime start = date.atYear(file.start().getYear()).atStartOfDay();
        if (start.isBefore(file.start())) {
            start = date.atYear(file.start().getYear() + 1).atStartOfDay();
        }
        return (int) java.time.Duration.between(file.start(), start).toHours();
    }

    /** Waits for the set-point in force, straight between the ends of the hours. */
    private final class Reached {
        private final int first;
        private double beforeC;
        private double heatBeforeKWh;
        private double boughtBeforeKWh;
        private OptionalDouble days = OptionalDouble.empty();
        private OptionalDouble heatKWh = OptionalDouble.empty();
        private OptionalDouble boughtKWh = OptionalDouble.empty();

        Reached(int first) {
            this.first = first;
        }

        void begin(double slurryC) {
            beforeC = slurryC;
        }

        void hour(Account account, HourRecord hour, double slurryC) {
            if (isReached()) {
                return;
            }
            double heat = account.soFar(SolarPart.HEAT) + account.soFar(BackupPart.HEAT);
            double bought = account.soFar(BackupPart.BOUGHT);
            double setpointC = season.on(SeasonTable.dayOf(
                            file.start().plusHours(hour.hour()).toLocalDate()))
                    .setpointC();
            if (slurryC >= setpointC) {
                double share = beforeC >= setpointC ? 0 : (setpointC - beforeC) / (slurryC - beforeC);
                days = OptionalDouble.of((hour.hour() - first + share) / DAY_H);
                heatKWh = OptionalDouble.of(heatBeforeKWh + share * (heat - heatBeforeKWh));
                boughtKWh = OptionalDouble.of(boughtBeforeKWh + share * (bought - boughtBeforeKWh));
            }
            beforeC = slurryC;
            heatBeforeKWh = heat;
            boughtBeforeKWh = bought;
        }

        boolean isReached() {
            return days.isPresent();
        }

        OptionalDouble days() {
            return days;
        }

        OptionalDouble heatKWh() {
            return heatKWh;
        }

        OptionalDouble boughtKWh() {
            return boughtKWh;
        }
    }
}
