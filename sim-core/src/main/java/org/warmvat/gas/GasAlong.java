package org.warmvat.gas;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.SeasonTable;

/**
 * Methane of a design's feedstocks along slurry temperatures that are known, hour by hour (equations 7.1 to 7.4): what a run's
 * temperatures would have made of feedstocks with another potential or rate. Within an hour the temperature is its mean; feed
 * windows and midnights are kept to the second, so that each stretch between them has a closed form. For one thread.
 */
public final class GasAlong {

    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;

    private static final double NS_PER_S = 1e9;

    /** Below this the Padé approximant of {@code 1 - exp(-z)} of order 4 is exact to the last digit, where the closed form cancels. */
    private static final double SMALL = 0.1;

    private final Gas gas;
    private final SeasonTable season;
    private final DailySchedule windows;
    private final Solids[][] solids;
    private final double[] methaneNm3;
    private final Feed feed;
    private final double contentsKg;
    private final double volumeM3;
    private final double perOpenDay;
    private final double referenceRate;
    private LocalDate today = LocalDate.MIN;
    private double washoutPerDay;

    /** What comes of a feedstock on a usual day and, while open, today, how it falls apart, and what the tank holds of it. */
    private static final class Solids {
        private final double gainPerDay;
        private final double ratePerDay;
        private final double methaneNm3PerKg;
        private double gainToday;
        private double kgPerM3;

        Solids(Feedstock stock, double volumeM3) {
            gainPerDay = stock.volatileSolidsKgPerDay() / volumeM3;
            ratePerDay = stock.ratePerDay();
            methaneNm3PerKg = stock.methaneNm3PerKgVs();
        }
    }

    /**
     * Begins at the solids of the steady state at set-point and mean feed (equation 7.1).
     *
     * @param design a design with gas
     * @param estimates how its feedstocks' potential and rate are taken: each for itself, along the same temperatures
     */
    public GasAlong(Design design, Estimate... estimates) {
        gas = design.gas().orElseThrow();
        season = design.season();
        windows = design.feed().schedule();
        feed = design.feed();
        contentsKg = design.contentsKg();
        volumeM3 = design.tank().liquidVolumeM3();
        perOpenDay = DAY_S / windows.openSecondsPerDay();
        referenceRate = gas.temperatures().relativeRate(gas.referenceC());
        methaneNm3 = new double[estimates.length];
        double meanWashoutPerDay = design.feed().totalKgPerDay() / contentsKg;
        double factor = gas.rateFactor(design.control().setpointC());
        solids = Arrays.stream(estimates)
                .map(estimate -> steady(estimate, meanWashoutPerDay, factor))
                .toArray(Solids[][]::new);
    }

    private Solids[] steady(Estimate estimate, double meanWashoutPerDay, double rateFactor) {
        Solids[] steady = feed.feedstocks().stream()
                .map(stock -> new Solids(stock.at(estimate), volumeM3))
                .toArray(Solids[]::new);
        for (Solids one : steady) {
            double lossPerDay = meanWashoutPerDay + one.ratePerDay * rateFactor;
            one.kgPerM3 = lossPerDay == 0 ? 0 : one.gainPerDay / lossPerDay;
        }
        return steady;
    }

    /** Begins without biodegradable solids. */
    public GasAlong empty() {
        for (Solids[] all : solids) {
            for (Solids one : all) {
                one.kgPerM3 = 0;
            }
        }
        return this;
    }

    /**
     * Methane of the next hour by the estimates in their order, Nm3; the array is filled anew each hour.
     *
     * @param start when the hour starts, by the file's clock
     * @param slurryC mean slurry temperature of the hour, °C
     */
    public double[] ofHour(LocalDateTime start, double slurryC) {
        return ofHour(start.toLocalDate(), start.toLocalTime().toNanoOfDay() / NS_PER_S, slurryC);
    }

    /** The same of an hour that starts on a date at a second of the day. */
    public double[] ofHour(LocalDate onDate, double startSecond, double slurryC) {
        double rateFactor = gas.temperatures().relativeRate(slurryC) / referenceRate;
        LocalDate date = onDate;
        double secondOfDay = startSecond;
        double leftS = HOUR_S;
        Arrays.fill(methaneNm3, 0);
        while (leftS > 0) {
            double stretchS = Math.min(leftS, Math.min(windows.untilNextEdgeS(secondOfDay), DAY_S - secondOfDay));
            enter(date);
            addStretch(windows.isOpenAt(secondOfDay), stretchS / DAY_S, rateFactor);
            leftS -= stretchS;
            secondOfDay += stretchS;
            if (secondOfDay >= DAY_S) {
                secondOfDay = 0;
                date = date.plusDays(1);
            }
        }
        return methaneNm3;
    }

    /** Works out anew what a day brings; every hour asks. */
    private void enter(LocalDate date) {
        if (date.equals(today)) {
            return;
        }
        today = date;
        SeasonTable.Day day = season.on(SeasonTable.dayOf(date));
        washoutPerDay = perOpenDay * feed.totalKgOn(day) / contentsKg;
        for (Solids[] all : solids) {
            for (int i = 0; i < all.length; i++) {
                all[i].gainToday = perOpenDay * day.feedstockFactor(i) * all[i].gainPerDay;
            }
        }
    }

    private void addStretch(boolean open, double days, double rateFactor) {
        double washout = open ? washoutPerDay : 0;
        for (int i = 0; i < solids.length; i++) {
            double methane = 0;
            for (Solids one : solids[i]) {
                double rate = one.ratePerDay * rateFactor;
                methane += one.methaneNm3PerKg * rate * solidDays(one, open ? one.gainToday : 0, rate + washout, days);
            }
            methaneNm3[i] += methane * volumeM3;
        }
    }

    /** Takes the solids {@code dS/dt = gain - loss S} through a stretch; their integral over it, kg d/m3. */
    private static double solidDays(Solids one, double gain, double loss, double days) {
        double before = one.kgPerM3;
        if (loss == 0) {
            one.kgPerM3 = before + gain * days;
            return (before + gain * days / 2) * days;
        }
        double steady = gain / loss;
        double fallen = fallen(loss * days);
        one.kgPerM3 = before + (steady - before) * fallen;
        return steady * days + (before - steady) * fallen / loss;
    }

    /** {@code 1 - exp(-z)}; not by {@code expm1}, which leaves compiled code: every hour asks, and what cancels is few of the last digit. */
    private static double fallen(double z) {
        if (z > SMALL) {
            return 1 - Math.exp(-z);
        }
        // exp(-z) = (even - odd) / (even + odd)
        double square = z * z;
        double even = 1680 + square * (180 + square);
        double odd = z * (840 + 20 * square);
        return 2 * odd / (even + odd);
    }
}
