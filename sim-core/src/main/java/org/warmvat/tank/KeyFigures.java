package org.warmvat.tank;

import java.util.List;
import java.util.Locale;
import org.warmvat.design.Design;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Control;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.gas.GasUsePart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Interval;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Sums;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;
import org.warmvat.season.InForce;

/** What a run keeps account of besides the parts: the slurry's mean temperature and its limits, the controls' electricity. */
public final class KeyFigures implements Part {

    /** Solar heat over solar and backup heat; not a number when neither gave any. */
    public static final Line SOLAR_SHARE = new Line("solar_share", "solar fraction", Unit.SHARE);

    /** Heat stored in the slurry. */
    public static final Line STORED = new Line("stored_kwh/slurry", "stored, slurry", Unit.KWH);

    /** Gas energy less energy bought for heat and electricity, each counted once. */
    public static final Line NET = new Line("net_energy_kwh", "net energy", Unit.KWH);

    /** The same with all electricity weighted by the primary-energy factor. */
    public static final Line NET_WEIGHTED = new Line("net_energy_weighted_kwh", "net, weighted", Unit.KWH);

    /** Lowest slurry temperature. */
    public static final Line LEAST_C = new Line("slurry_c/least", "slurry lowest", Unit.CELSIUS);

    /** Mean slurry temperature over time. */
    public static final Line MEAN_C = new Line("slurry_c/mean", "slurry mean", Unit.CELSIUS);

    /** Highest slurry temperature. */
    public static final Line MOST_C = new Line("slurry_c/most", "slurry highest", Unit.CELSIUS);

    /** Hours below the minimum temperature. */
    public static final Line BELOW_FLOOR_HOURS = new Line("hours_below_floor", "hours below minimum", Unit.HOURS);

    /** Hours below the minimum on days of grace. */
    public static final Line WARMING_UP_HOURS = new Line("hours_warming_up", "warming up", Unit.HOURS);

    /** Hours in which the slurry was near freezing. */
    public static final Line NEAR_FREEZING_HOURS = new Line("hours_near_freezing", "near freezing", Unit.HOURS);

    /** Net energy of which only gas put to use counts. */
    public static final Line USEFUL_NET = new Line("useful_net_energy_kwh", "useful net energy", Unit.KWH);

    /** Meter of the slurry's temperature, K s above 0 °C. */
    public static final String SLURRY_TEMPERATURE = "slurry_temperature";

    /** Meter of the shortfall below the minimum temperature, K s. */
    public static final String SHORTFALL = "shortfall";

    /** Watch: slurry below the minimum temperature. */
    public static final String BELOW_FLOOR = "below_floor";

    /** Watch: slurry below the minimum on a day of grace. */
    public static final String WARMING_UP = "warming_up";

    /** Watch: slurry near freezing. */
    public static final String NEAR_FREEZING = "near_freezing";

    /** Watch: slurry colder than the feedstocks' least temperature. */
    public static final String TOO_COLD = "too_cold_to_digest";

    /** Watch: slurry hotter than the feedstocks' most temperature. */
    public static final String TOO_HOT = "too_hot_to_digest";

    /** Watch: slurry below 0 °C, where the model is no longer valid. */
    public static final String FREEZING = "slurry_freezing";

    /** Watch: slurry above 100 °C, where the model is no longer valid. */
    public static final String BOILING = "slurry_boiling";

    private static final double S_PER_HOUR = 3600;
    private static final int DAY_H = 24;

    private final Source temperature;
    private final InForce season;
    private final Margin belowFloor = Margin.below(Network.SLURRY, 0);

    /** Adds it to a network. */
    public KeyFigures(Design design, Surroundings surroundings, InForce season, Network.Assembly assembly) {
        this.season = season;
        int slurry = Network.SLURRY;
        int temperatureMeter = assembly.meter(SLURRY_TEMPERATURE);
        temperature = assembly.source(Network.NOWHERE, temperatureMeter);
        assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("electronics", "controls")))
                .set(design.control().electronicsW());
        watch(design, assembly);
        Declarations declare = assembly.declare();
        declare.store(slurry, design.contentsHeatCapacityJPerK(), STORED, Balance.SLURRY);
        declare.hourlyC(slurry, "slurry_c");
        declare.hourlyC("air_c", surroundings::airC);
        declare.figure(Lines.HOURS, Sums::hours);
        declare.figure(LEAST_C, Sums::slurryLeastC);
        declare.figure(MEAN_C, sums -> sums.meter(temperatureMeter) / (sums.hours() * S_PER_HOUR));
        declare.figure(MOST_C, Sums::slurryMostC);
        declare.figure(SOLAR_SHARE, KeyFigures::solarShare);
        declareNet(design.prices().primaryEnergyFactor(), declare);
        declareUsefulNet(design, declare);
        if (season.changes()) {
            // a step before the hour's end: a midnight's is that of the day that ends
            declare.hourlyC("setpoint_c", timeS -> season.setpointC(timeS - 1));
        }
        judgeDays(design, declare);
        assembly.part(this);
    }

    private static double solarShare(Sums sums) {
        double solarKWh = sums.of(SolarPart.HEAT);
        double both = solarKWh + sums.of(BackupPart.HEAT);
        return both == 0 ? Double.NaN : solarKWh / both;
    }

    /** Net energy (equation 7.5). */
    private static void declareNet(double primaryEnergyFactor, Declarations declare) {
        declare.figure(
                NET,
                sums -> sums.kWh(Energy.GAS_MADE)
                        - sums.kWh(Energy.OWN_GAS)
                        - sums.kWh(Energy.FUEL)
                        - sums.kWh(Energy.HEATING_ELECTRICITY)
                        - sums.kWh(Energy.MACHINERY));
        declare.figure(
                NET_WEIGHTED,
                sums -> sums.kWh(Energy.GAS_MADE)
                        - sums.kWh(Energy.OWN_GAS)
                        - sums.kWh(Energy.FUEL)
                        - primaryEnergyFactor * sums.kWh(Energy.HEATING_ELECTRICITY)
                        - primaryEnergyFactor * sums.kWh(Energy.MACHINERY));
    }

    /** What met uses give less everything bought (equation 14.2). */
    private static void declareUsefulNet(Design design, Declarations declare) {
        List<GasUse> uses = design.gas().map(Gas::uses).orElse(List.of());
        if (!uses.isEmpty()) {
            declare.figure(
                    USEFUL_NET,
                    sums -> uses.stream()
                                    .mapToDouble(use -> use.efficiency() * sums.of(GasUsePart.met(use)))
                                    .sum()
                            - sums.kWh(Energy.FUEL)
                            - sums.kWh(Energy.HEATING_ELECTRICITY)
                            - sums.kWh(Energy.MACHINERY)
                            - sums.of(FeedPart.HYGIENISATION_SHORT));
        }
    }

    private void watch(Design design, Network.Assembly assembly) {
        double floorC = design.control().minimumC();
        assembly.watch(
                Watched.of(BELOW_FLOOR)
                        .told(BELOW_FLOOR_HOURS)
                        .warns(
                                floorC,
                                -1,
                                "The slurry stood below the minimum temperature of " + Watched.degrees(floorC)
                                        + " for %s; the lowest was %.1f °C."),
                state -> hasMinimum() && !season.isGrace(),
                belowFloor,
                assembly.meter(SHORTFALL));
        if (season.changes()) {
            int warming = assembly.watch(
                    Watched.of(WARMING_UP).told(WARMING_UP_HOURS),
                    state -> hasMinimum() && season.isGrace(),
                    belowFloor::at);
            assembly.declare().hourlyWatch(warming, "warming_up_s");
        }
        SlurryWatches.water(assembly);
        design.gas().map(Gas::temperatures).ifPresent(limits -> SlurryWatches.digestion(limits, assembly));
    }

    private static void judgeDays(Design design, Declarations declare) {
        Control.DailyChange change = design.control().dailyChange();
        declare.judgeDays(
                "daily_change",
                day -> day.hours() == DAY_H ? Math.abs(day.riseK(Network.SLURRY)) : 0,
                List.of(change.noticeK(), change.warningK()),
                (days, worst) -> String.format(
                        Locale.ROOT,
                        "On %d days the slurry stood more than %s K, and on %d of them more than %s K, from 24 h before;"
                                + " the largest change was %.1f K (guidance from 0.5 K to 3 K a day is in use: common"
                                + " practice, no single source).",
                        days[0],
                        Watched.number(change.noticeK()),
                        days[1],
                        Watched.number(change.warningK()),
                        worst));
        boolean burnsOwnGas = design.backup()
                .map(BackupCircuit::source)
                .filter(BackupSource.OWN_GAS::equals)
                .isPresent();
        boolean stores = design.gas().flatMap(Gas::holder).isPresent();
        if (burnsOwnGas && !stores) {
            declare.judgeDays(
                    "own_gas_short",
                    day -> day.of(BackupPart.BOUGHT) - day.of(GasPart.GAS_ENERGY),
                    List.of(0.0),
                    (days, worst) -> String.format(
                            Locale.ROOT,
                            "On %d days the backup burnt more of the tank's own gas than the tank made; the worst day was"
                                    + " short of %.1f kWh. Stored gas or another fuel must fill the gap.",
                            days[0],
                            worst));
        }
    }

    private boolean hasMinimum() {
        return season.today().minimumC() != Double.NEGATIVE_INFINITY;
    }

    @Override
    public void enter(Interval interval) {
        if (hasMinimum()) {
            belowFloor.setConstant(season.today().minimumC());
        }
    }

    @Override
    public void ask(double timeS, State state) {
        temperature.set(state.nodeC(Network.SLURRY), 1);
    }
}
