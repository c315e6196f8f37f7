package org.warmvat.gas;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.warmvat.design.Design;
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

    private final Design design;
    private final Gas gas;
    private final SeasonTable season;
    private final DailySchedule windows;
    private final double[] solidsKgPerM3;

    /**
     * Begins at the solids of the steady state at set-point and mean feed (equation 7.1).
     *
     * @param design a design with gas
     */
    public GasAlong(Design design) {
        this.design = design;
        gas = design.gas().orElseThrow();
        season = design.season();
        windows = design.feed().schedule();
        double washoutPerDay = design.feed().totalKgPerDay() / design.contentsKg();
        solidsKgPerM3 = design.feed().feedstocks().stream()
                .mapToDouble(stock -> steady(stock, washoutPerDay))
                .toArray();
    }

    private double steady(Feedstock stock, double washoutPerDay) {
        double lossPerDay = washoutPerDay
                + stock.ratePerDay() * gas.rateFactor(design.control().setpointC());
        return lossPerDay == 0 ? 0 : gainPerDay(stock) / lossPerDay;
    }

    private double gainPerDay(Feedstock stock) {
        return stock.volatileSolidsKgPerDay() / design.tank().liquidVolumeM3();
    }

    /** Begins without biodegradable solids. */
    public GasAlong empty() {
        Arrays.fill(solidsKgPerM3, 0);
        return this;
    }

    /**
     * Methane of the next hour, Nm3.
     *
     * @param start when the hour starts, by the file's clock
     * @param slurryC mean slurry temperature of the hour, °C
     */
    public double ofHour(LocalDateTime start, double slurryC) {
        double rateFactor = gas.rateFactor(slurryC);
        LocalDateTime at = start;
        double leftS = HOUR_S;
        double methane = 0;
        while (leftS > 0) {
            double secondOfDay = at.toLocalTime().toNanoOfDay() / 1e9;
            double stretchS = Math.min(leftS, Math.min(windows.untilNextEdgeS(secondOfDay), DAY_S - secondOfDay));
            methane += ofStretch(
                    SeasonTable.dayOf(at.toLocalDate()), windows.isOpenAt(secondOfDay), stretchS / DAY_S, rateFactor);
            leftS -= stretchS;
            at = at.plusNanos(Math.round(stretchS * 1e9));
        }
        return methane;
    }

    private double ofStretch(int day, boolean open, double days, double rateFactor) {
        List<Feedstock> stocks = design.feed().feedstocks();
        double perOpenDay = open ? DAY_S / windows.openSecondsPerDay() : 0;
        double washout = perOpenDay * kgOn(day) / design.contentsKg();
        double methane = 0;
        for (int i = 0; i < stocks.size(); i++) {
            Feedstock stock = stocks.get(i);
            double gain = perOpenDay * season.feedstockFactor(day, i) * gainPerDay(stock);
            double rate = stock.ratePerDay() * rateFactor;
            methane += stock.methaneNm3PerKgVs() * rate * solidDays(i, gain, rate + washout, days);
        }
        return methane * design.tank().liquidVolumeM3();
    }

    /** Takes the solids {@code dS/dt = gain - loss S} through a stretch; their integral over it, kg d/m3. */
    private double solidDays(int stock, double gain, double loss, double days) {
        double before = solidsKgPerM3[stock];
        if (loss == 0) {
            solidsKgPerM3[stock] = before + gain * days;
            return (before + gain * days / 2) * days;
        }
        double steady = gain / loss;
        double fallen = -Math.expm1(-loss * days);
        solidsKgPerM3[stock] = before + (steady - before) * fallen;
        return steady * days + (before - steady) * fallen / loss;
    }

    private double kgOn(int day) {
        double kg = design.feed().waterKgPerDay() * season.waterFactor(day);
        List<Feedstock> stocks = design.feed().feedstocks();
        for (int i = 0; i < stocks.size(); i++) {
            kg += stocks.get(i).kgPerDay() * season.feedstockFactor(day, i);
        }
        return kg;
    }
}
