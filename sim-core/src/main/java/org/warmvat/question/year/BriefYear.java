package org.warmvat.question.year;

import java.util.List;
import java.util.Optional;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.network.Warning;
import org.warmvat.network.meter.Line;
import org.warmvat.question.GasRange;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;

/**
 * The sums of a run through a weather file, for runs by the thousand: the same run-in and the same hours as {@link YearStudy}, in
 * memory that does not grow with the number of runs.
 *
 * @param year the whole weather file
 * @param months its calendar months in order
 * @param warnings what the user must know of it
 * @param gas low and high gas, where gas is computed
 */
public record BriefYear(Period year, List<Period> months, List<Warning> warnings, Optional<GasRange> gas) {

    /**
     * Runs a design.
     *
     * @param design the design
     * @param runner starts it in its weather
     * @throws StudyRefused when design and weather do not go together
     * @throws org.warmvat.engine.EngineFailure when the run cannot be completed
     * @throws org.warmvat.account.LedgerOpen when a balance does not close
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public static BriefYear run(Design design, Runner runner) throws StudyRefused {
        StudyRefused.check(design, runner.file());
        return checked(design, runner);
    }

    /** The same for a design that is known to go with the weather. */
    public static BriefYear checked(Design design, Runner runner) {
        FileRun run = FileRun.of(design, runner, Account.Keep.MONTHS, HourSink.IGNORE);
        Account account = run.account();
        return new BriefYear(account.whole(), account.months(), account.warnings(), run.gas());
    }

    /** Integral of the shortfall below the minimum temperature, K h. */
    public double degreeHoursShort() {
        return year.counted(KeyFigures.SHORTFALL) / Hours.HOUR_S;
    }

    /** Net energy of the worst month, kWh. */
    public double worstMonthNetKWh() {
        return worstMonth(KeyFigures.NET);
    }

    /** Useful net energy of the worst month, kWh; where uses of gas are given. */
    public double worstMonthUsefulNetKWh() {
        return worstMonth(KeyFigures.USEFUL_NET);
    }

    private double worstMonth(Line line) {
        return months.stream().mapToDouble(month -> month.of(line)).min().orElseThrow();
    }
}
