package org.warmvat.gas;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.gas.AirDosing;
import org.warmvat.design.gas.Gas;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Stock;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;
import org.warmvat.season.InForce;

/**
 * Biodegradable solids of every feedstock as a first-order reaction in a fully mixed tank, and what the gas carries off
 * (equations 3.4 and 7.1 to 7.4).
 */
public final class GasPart implements Part {

    /** Methane made. */
    public static final Line METHANE_MADE = new Line("methane_nm3", "methane", Unit.NM3);

    /** Dry biogas made. */
    public static final Line BIOGAS = new Line("biogas_nm3", "biogas", Unit.NM3);

    /** Net heating value of the gas made. */
    public static final Line GAS_ENERGY = new Line("gas_energy_kwh", "gas energy", Unit.KWH);

    /** Heat of the reaction. */
    public static final Line REACTION = new Line("reaction_heat_kwh", "reaction", Unit.KWH);

    /** Heat carried off by the gas. */
    public static final Line GAS_LOSS = new Line("gas_loss_kwh", "gas", Unit.KWH);

    /** Highest hourly share of dosed air in dry biogas. */
    public static final Line HIGHEST_AIR_SHARE = new Line("highest_air_share", "highest share of air", Unit.SHARE);

    /** Hours whose dosed air is above the limit. */
    public static final Line AIR_SHARE_HOURS =
            new Line("air_share_above_limit_hours", "air share above limit", Unit.TIMES);

    /** Meter of the methane, Nm3. */
    public static final String METHANE = "methane";

    /** Meter of the heat received from the gas leaving, J: a loss is negative. */
    public static final String GAS_HEAT = "gas_heat";

    /** Meter of the heat of the reaction, J. */
    public static final String REACTION_HEAT = "reaction_heat";

    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;
    private static final double PA_PER_HPA = 100;
    private static final double J_PER_KJ = 1000;

    private final Gas gas;
    private final Surroundings surroundings;
    private final BooleanSupplier feeding;
    private final double volumeM3;
    private final Design design;
    private final InForce season;
    private final double openSecondsPerDay;
    private final double contentsKg;
    private double dilutionPerSWhileOpen;
    private final double referenceRate;
    private final List<Solids> solids = new ArrayList<>();
    private final Source methane;
    private final Source heat;
    private final Source reaction;
    private double rateFactor;
    private double rateFactorPerK;
    private boolean open;
    private double pressurePa;

    /** The solids of one feedstock: gain of a usual day, kg VS/m3, and rate at the reference temperature, 1/s. */
    private record Solids(Stock stock, double gainPerDay, double ratePerS, double potentialNm3PerKg) {}

    /**
     * Adds the gas side to a network.
     *
     * @param design a design with gas
     * @param surroundings what is outside
     * @param season what the calendar puts in force
     * @param feeding whether feed enters in the present interval
     * @param assembly the network being gathered
     */
    public GasPart(
            Design design,
            Surroundings surroundings,
            InForce season,
            BooleanSupplier feeding,
            Network.Assembly assembly) {
        this.design = design;
        this.season = season;
        gas = design.gas().orElseThrow();
        this.surroundings = surroundings;
        this.feeding = feeding;
        referenceRate = gas.temperatures().relativeRate(gas.referenceC());
        volumeM3 = design.tank().liquidVolumeM3();
        openSecondsPerDay = design.feed().schedule().openSecondsPerDay();
        contentsKg = design.contentsKg();
        dilutionPerSWhileOpen = dilutionPerSWhileOpen();
        addSolids(assembly);
        int methaneMeter = assembly.meter(Meter.of(METHANE)
                .told(METHANE_MADE)
                .told(1 / gas.methaneFraction(), BIOGAS)
                .told(GasEnergy.METHANE_J_PER_NM3, GAS_ENERGY)
                .hourly(HOUR_S, "methane_nm3_h")
                .counted(Energy.GAS_MADE, GasEnergy.METHANE_J_PER_NM3));
        methane = assembly.source(Network.NOWHERE, methaneMeter);
        heat = assembly.source(
                Network.SLURRY,
                assembly.meter(Meter.of(GAS_HEAT)
                        .told(-1, GAS_LOSS)
                        .hourly(-1, "loss_w")
                        .leaving(Balance.SLURRY, 1)));
        reaction = assembly.source(
                Network.SLURRY,
                assembly.meter(Meter.of(REACTION_HEAT).told(REACTION).posted(Balance.SLURRY, 1)));
        assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("air_pump", "air pump")))
                .set(gas.airDosing().map(air -> air.pumpW() * air.duty()).orElse(0.0));
        gas.airDosing()
                .filter(dosing -> dosedAirNm3PerH(dosing) > 0)
                .ifPresentOrElse(
                        dosing -> judgeAir(dosing, methaneMeter, assembly.declare()),
                        () -> assembly.declare().none(AIR_SHARE_HOURS));
        assembly.part(this);
    }

    /** The solids of each feedstock, at their steady state for set-point and mean feed (equation 7.1). */
    private void addSolids(Network.Assembly assembly) {
        double dilutionPerDay = design.feed().totalKgPerDay() / design.contentsKg();
        for (Feedstock feedstock : design.feed().feedstocks()) {
            double perDay = feedstock.volatileSolidsKgPerDay() / volumeM3;
            double lossPerDay = dilutionPerDay
                    + feedstock.ratePerDay() * gas.rateFactor(design.control().setpointC());
            double steady = perDay == 0 || lossPerDay == 0 ? 0 : perDay / lossPerDay;
            Stock stock = assembly.stock(feedstock.name(), steady);
            solids.add(new Solids(stock, perDay, feedstock.ratePerDay() / DAY_S, feedstock.methaneNm3PerKgVs()));
        }
    }

    /** Share of dosed air, air over dry biogas in Nm3, hour by hour (equation 7.4); infinite in an hour without gas. */
    private void judgeAir(AirDosing dosing, int methaneMeter, Declarations declare) {
        double airNm3 = dosedAirNm3PerH(dosing);
        double limit = dosing.warningShare();
        declare.judgeHours(
                "air_share",
                hour -> {
                    double biogasNm3 = hour.meter(methaneMeter) / gas.methaneFraction();
                    return biogasNm3 > 0 ? airNm3 / biogasNm3 : Double.POSITIVE_INFINITY;
                },
                limit,
                (hours, worst) -> airSentence(limit, hours[0], worst),
                HIGHEST_AIR_SHARE,
                AIR_SHARE_HOURS);
    }

    private static String airSentence(double limit, int hours, double highest) {
        String worst = Double.isInfinite(highest)
                ? "in some hours no gas was made at all"
                : String.format(Locale.ROOT, "the highest share was %.1f %%", 100 * highest);
        return String.format(
                Locale.ROOT,
                "The dosed air was above %s %% of the dry biogas for %d h; %s. Air and biogas can form an explosive"
                        + " mixture: stop dosing when the gas stops.",
                Watched.number(100 * limit),
                hours,
                worst);
    }

    /** Air dosed, Nm3/h: the stated flow times its duty. */
    public static double dosedAirNm3PerH(AirDosing dosing) {
        return dosing.litresPerHour() * dosing.duty() / 1000;
    }

    @Override
    public void enter(Interval interval) {
        open = feeding.getAsBoolean();
        if (season.changes()) {
            dilutionPerSWhileOpen = dilutionPerSWhileOpen();
        }
        pressurePa = surroundings.weather().pressureHPa(interval.hour()) * PA_PER_HPA;
    }

    /** By what is fed today, water included. */
    private double dilutionPerSWhileOpen() {
        return design.feed().totalKgOn(season.today()) / openSecondsPerDay / contentsKg;
    }

    /** Methane made at the state last asked about, Nm3/s. */
    double madeNm3PerS() {
        return methane.rate();
    }

    /** Its derivative by the slurry's temperature, Nm3/(s K). */
    double madeNm3PerSPerK() {
        return methane.slopePerK();
    }

    @Override
    public void decay(State state) {
        double slurryC = state.nodeC(Network.SLURRY);
        rateFactor = gas.temperatures().relativeRate(slurryC) / referenceRate;
        rateFactorPerK = gas.temperatures().relativeRateSlopePerK(slurryC) / referenceRate;
        for (int i = 0; i < solids.size(); i++) {
            Solids one = solids.get(i);
            one.stock()
                    .set(
                            open ? one.gainPerDay() * season.today().feedstockFactor(i) / openSecondsPerDay : 0,
                            one.ratePerS() * rateFactor + (open ? dilutionPerSWhileOpen : 0),
                            one.ratePerS() * rateFactorPerK);
        }
    }

    @Override
    public void ask(double timeS, State state) {
        double slurryC = state.nodeC(Network.SLURRY);
        double airC = state.nodeC(surroundings.air());
        double made = 0;
        for (int i = 0; i < solids.size(); i++) {
            Solids one = solids.get(i);
            double rate = one.ratePerS() * rateFactor;
            made += one.potentialNm3PerKg() * rate * state.stock(one.stock().number()) * volumeM3;
        }
        double madePerK = rateFactor == 0 ? 0 : made * rateFactorPerK / rateFactor;
        methane.set(made, madePerK);
        double reactionJPerNm3 = gas.reactionHeatKJPerNm3Methane() * J_PER_KJ;
        reaction.set(made * reactionJPerNm3, madePerK * reactionJPerNm3);
        double c = gas.heatCapacityJPerM3K();
        double saturationPa = GasVapour.saturationPa(slurryC);
        double heatJPerNm3 = GasVapour.heatJPerNm3(slurryC, airC, pressurePa, c, saturationPa);
        double slope = GasVapour.heatSlopeJPerNm3K(slurryC, airC, pressurePa, c, saturationPa);
        double biogas = made / gas.methaneFraction();
        heat.set(-biogas * heatJPerNm3, -(madePerK / gas.methaneFraction() * heatJPerNm3 + biogas * slope));
    }
}
