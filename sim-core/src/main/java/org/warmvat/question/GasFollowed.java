package org.warmvat.question;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.gas.Gas;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.Hours;
import org.warmvat.gas.GasAlong;
import org.warmvat.gas.GasEnergy;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.TankRun;

/** Follows a run with low and with high gas: sums up gas anew along its temperatures (equation 19.4). For one thread. */
public final class GasFollowed {

    private static final double J_PER_KWH = 3.6e6;
    private static final double DAY_S = 86_400;
    private static final double NS_PER_S = 1e9;

    private final GasAlong gas;
    /** Methane of each month, low and high, Nm3. */
    private final Map<YearMonth, double[]> months = new LinkedHashMap<>();

    private double[] month = new double[2];
    private int monthOfYear;
    private int nextHour = -1;
    private LocalDate date;
    private double secondOfDay;
    private final LocalDateTime fileStart;
    private final int temperature;

    private GasFollowed(Design design, TankRun run) {
        fileStart = run.fileStart();
        temperature = run.meter(KeyFigures.SLURRY_TEMPERATURE);
        gas = new GasAlong(design, Estimate.LOW, Estimate.HIGH);
    }

    /**
     * Follows a run from its very beginning; empty where there is no gas, or where low and high have to be run for themselves.
     *
     * @param design what runs
     * @param run the run, which has just started
     */
    public static Optional<GasFollowed> of(Design design, TankRun run) {
        return design.gas().isPresent() && !needsOwnRuns(design)
                ? Optional.of(new GasFollowed(design, run))
                : Optional.empty();
    }

    /** Whether the gas made decides on heat or on gas put to use, so that low and high gas take runs of their own. */
    public static boolean needsOwnRuns(Design design) {
        return design.burnsOwnGas() || design.gas().flatMap(Gas::holder).isPresent();
    }

    /** The run starts without biodegradable solids. */
    public GasFollowed fromEmpty() {
        gas.empty();
        return this;
    }

    /** Takes an hour; always goes on. */
    public boolean hour(HourRecord hour) {
        tellTime(hour.hour());
        double slurryC = hour.meter(temperature) / Hours.HOUR_S;
        if (date.getMonthValue() != monthOfYear) {
            monthOfYear = date.getMonthValue();
            month = months.computeIfAbsent(YearMonth.from(date), label -> new double[2]);
        }
        add(gas.ofHour(date, secondOfDay, slurryC), month);
        return true;
    }

    private static void add(double[] methaneNm3, double[] sum) {
        sum[0] += methaneNm3[0];
        sum[1] += methaneNm3[1];
    }

    /** Hours mostly follow each other: a calendar is asked at midnights only. */
    private void tellTime(int hour) {
        secondOfDay += Hours.HOUR_S;
        if (hour != nextHour || secondOfDay >= DAY_S) {
            LocalDateTime start = fileStart.plusHours(hour);
            date = start.toLocalDate();
            secondOfDay = start.toLocalTime().toNanoOfDay() / NS_PER_S;
        }
        nextHour = hour + 1;
    }

    /** Forgets what was summed up so far, as at the end of a run-in. */
    public void forget() {
        months.clear();
        monthOfYear = 0;
    }

    /** What the run that was followed gives with low and with high gas. */
    public GasRange range(Account account) {
        List<GasRange.Ends> ends = new ArrayList<>();
        for (Period period : account.months()) {
            ends.add(ends(period, months.get(YearMonth.parse(period.label()))));
        }
        double[] whole = new double[2];
        months.values().forEach(one -> add(one, whole));
        return new GasRange(ends(account.whole(), whole), ends, false);
    }

    private static GasRange.Ends ends(Period period, double[] methaneNm3) {
        return new GasRange.Ends(
                GasRange.Yield.withGas(period, kWh(methaneNm3[0])), GasRange.Yield.withGas(period, kWh(methaneNm3[1])));
    }

    private static double kWh(double methaneNm3) {
        return methaneNm3 * GasEnergy.METHANE_J_PER_NM3 / J_PER_KWH;
    }

    /** The range of a design whose low and high gas were run for themselves. */
    public static GasRange ofRuns(Account low, Account high) {
        List<GasRange.Ends> months = new ArrayList<>();
        for (int i = 0; i < low.months().size(); i++) {
            months.add(ends(low.months().get(i), high.months().get(i)));
        }
        return new GasRange(ends(low.whole(), high.whole()), months, true);
    }

    private static GasRange.Ends ends(Period low, Period high) {
        return new GasRange.Ends(GasRange.Yield.of(low), GasRange.Yield.of(high));
    }
}
