package org.warmvat.heating;

import java.util.function.BooleanSupplier;
import org.warmvat.design.Design;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.network.Circuit;
import org.warmvat.network.Exchange;
import org.warmvat.network.Gate;
import org.warmvat.network.Interval;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Switch;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;
import org.warmvat.season.InForce;

/**
 * The solar circuit: one mean fluid temperature of collector and loop, a coil, a difference-controlled pump (equations 5.1 to
 * 5.4).
 */
public final class SolarPart implements Part {

    /** Name of the circuit's node. */
    public static final String NODE = "collector";

    /** The solar circuit's balance. */
    public static final Balance COLLECTOR = new Balance("collector", "Solar circuit", Unit.KWH);

    /** Heat given to the slurry. */
    public static final Line HEAT = new Line("solar_heat_kwh", "sun", Unit.KWH);

    /** Sun absorbed by the collector. */
    public static final Line ABSORBED_SUN = new Line("collector_absorbed_kwh", "absorbed", Unit.KWH);

    /** Heat lost by collector and pipes. */
    public static final Line LOSS = new Line("collector_loss_kwh", "lost", Unit.KWH);

    /** Heat stored in collector and loop. */
    public static final Line STORED = new Line("stored_kwh/collector", "stored", Unit.KWH);

    /** Starts of the pump. */
    public static final Line STARTS = new Line("solar_pump_starts", "solar pump starts", Unit.TIMES);

    /** Hours above the stagnation mark. */
    public static final Line STAGNATION_HOURS = new Line("stagnation_hours", "stagnation", Unit.HOURS);

    /** Hours with the coil inlet above the caking mark. */
    public static final Line CAKING_HOURS = new Line("solar_coil_caking_hours", "caking on the solar coil", Unit.HOURS);

    /** Hours with the loop's fluid below its freezing point. */
    public static final Line FROZEN_HOURS = new Line("loop_frozen_hours", "frozen loop", Unit.HOURS);

    /** Meter of the heat given to the slurry, J. */
    public static final String SOLAR_HEAT = "solar_heat";

    /** Meter of the sun absorbed by the collector, J. */
    public static final String ABSORBED = "collector_absorbed";

    /** Meter of the heat received from the air by collector and pipes, J: losses are negative. */
    public static final String COLLECTOR_AIR = "collector_air";

    /** Meter of the sun on the collector's plane, J/m2. */
    public static final String PLANE_IRRADIATION = "plane_irradiation";

    /** Switch of the pump. */
    public static final String SOLAR_PUMP = "solar_pump";

    /** Meter of the heat that the circuit would have delivered but for its high limit and start bar, J: an estimate. */
    public static final String NOT_USED = "sun_not_used";

    /** That heat. */
    public static final Line SUN_NOT_USED = new Line("sun_not_used_kwh", "sun not used", Unit.KWH);

    /** A collector that cools below the start bar by this is no longer barred, K: apart enough for a switch not to chatter. */
    private static final double APART_K = 1e-3;

    /** Watch: the collector stands above its stagnation mark. */
    public static final String STAGNATION = "stagnation";

    /** Watch: coil inlet above the caking mark with the pump on. */
    public static final String SOLAR_CAKING = "solar_caking";

    /** Watch: loop fluid below its freezing point. */
    public static final String LOOP_FROZEN = "loop_frozen";

    private final SolarCircuit circuit;
    private final double adjustCollector;
    private final CollectorSun sun;
    private final BooleanSupplier mixing;
    private final Circuit loop;
    private final double mixedWPerK;
    private final double stillWPerK;
    private final Source absorbed;
    private final CollectorHeat collector;
    private final Surroundings surroundings;
    private final InForce season;
    private final Exchange loss;
    private final Source sky;
    private final Source notUsed;
    private final Margin belowLimit;
    private final Margin aboveLimit;
    private final Source plane;
    private int hour;
    private double fromSunW;

    /**
     * Adds the circuit to a network.
     *
     * @param design a design with a solar circuit
     * @param sun the sun on the collector's plane, prepared once for a weather file
     * @param surroundings what is outside
     * @param season what the calendar puts in force
     * @param mixing whether the mixer turns in the present interval
     * @param assembly the network being gathered
     */
    public SolarPart(
            Design design,
            CollectorSun sun,
            Surroundings surroundings,
            InForce season,
            BooleanSupplier mixing,
            Network.Assembly assembly) {
        this.surroundings = surroundings;
        this.season = season;
        circuit = design.solar().orElseThrow();
        adjustCollector = design.adjust().collector();
        this.sun = sun;
        this.mixing = mixing;
        collector = new CollectorHeat(circuit.collector());
        CoilFlow flow = new CoilFlow(
                circuit.coil(), design.adjust().solarCoil(), circuit.loop().capacityRateWPerK());
        mixedWPerK = flow.conductanceWPerK(true);
        stillWPerK = flow.conductanceWPerK(false);
        int air = surroundings.air();
        double limitC = design.highLimitC();
        belowLimit = Margin.below(Network.SLURRY, limitC);
        aboveLimit = Margin.above(Network.SLURRY, limitC);
        int node = assembly.body(NODE, circuit.capacityJPerK(), 0);
        Gate held = held(assembly, node);
        Switch pump = pump(assembly, node);
        Gate pumping = state -> state.isOn(pump.number());
        notUsed = notUsed(assembly, held, pumping);
        int airMeter = assembly.meter(Meter.of(COLLECTOR_AIR).told(-1, LOSS).leaving(COLLECTOR, 1));
        loop = assembly.circuit(
                node,
                new Circuit.Coil(pump.number(), heatMeter(assembly)),
                new Circuit.Quadratic(collector.quadraticWPerK2(), air, airMeter),
                Circuit.Heater.NONE);
        absorbed = assembly.source(
                node, assembly.meter(Meter.of(ABSORBED).told(ABSORBED_SUN).entering(COLLECTOR, 1)));
        double lossWPerK = collector.linearWPerK() + circuit.loop().pipeUaWPerK();
        loss = assembly.exchange(node, air, lossWPerK, airMeter);
        sky = assembly.source(node, airMeter);
        assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("solar_pump", "solar pump")), pumping)
                .set(circuit.loop().pumpW());
        plane = assembly.source(
                Network.NOWHERE, assembly.meter(Meter.of(PLANE_IRRADIATION).hourly("collector_irradiance_w_m2")));
        declare(assembly, node, pump, flow);
        assembly.part(this);
    }

    private Source notUsed(Network.Assembly assembly, Gate held, Gate pumping) {
        return assembly.source(
                Network.NOWHERE,
                assembly.meter(Meter.of(NOT_USED).told(SUN_NOT_USED).hourly("sun_not_used_w")),
                state -> held.isOpen(state) && season.today().isSolarOn() && !pumping.isOpen(state));
    }

    private static int heatMeter(Network.Assembly assembly) {
        return assembly.meter(Meter.of(SOLAR_HEAT)
                .told(HEAT)
                .hourly("solar_heat_w")
                .posted(COLLECTOR, -1)
                .posted(Balance.SLURRY, 1));
    }

    /** What is told of the circuit: starts, heat held, temperatures, and what it stood above or below for how long. */
    private void declare(Network.Assembly assembly, int node, Switch pump, CoilFlow flow) {
        Gate pumping = state -> state.isOn(pump.number());
        assembly.declare().starts(pump.number(), STARTS);
        assembly.declare().store(node, circuit.capacityJPerK(), STORED, COLLECTOR);
        assembly.declare().hourlyC(node, "collector_c");
        assembly.watch(stagnation(), Margin.above(node, circuit.stagnationC()));
        assembly.watch(caking(), pumping, state -> {
            double coilW = loop.coilWPerK() * (state.nodeC(node) - state.nodeC(Network.SLURRY));
            return flow.inletC(state.nodeC(node), coilW, netW(state)) - circuit.cakingC();
        });
        assembly.watch(frozen(), Margin.below(node, circuit.loop().freezesC()));
    }

    private Watched stagnation() {
        return Watched.of(STAGNATION)
                .told(STAGNATION_HOURS)
                .warns(
                        circuit.stagnationC(),
                        1,
                        "The collector stood above " + Watched.degrees(circuit.stagnationC())
                                + " for %s; the hottest was %.1f °C. Such a loop needs a relief valve and fluid that bears"
                                + " the heat.");
    }

    private Watched caking() {
        return Watched.of(SOLAR_CAKING)
                .told(CAKING_HOURS)
                .warns(
                        circuit.cakingC(),
                        1,
                        "Water entered the solar coil above " + Watched.degrees(circuit.cakingC())
                                + ", where slurry may cake on it, for %s; the hottest was %.1f °C.");
    }

    private Watched frozen() {
        return Watched.of(LOOP_FROZEN)
                .told(FROZEN_HOURS)
                .warns(
                        circuit.loop().freezesC(),
                        -1,
                        "The solar loop stood below its fluid's freezing point of "
                                + Watched.degrees(circuit.loop().freezesC()) + " for %s; the coldest was %.1f °C.");
    }

    /** Pump control (equation 5.3). */
    private Switch pump(Network.Assembly assembly, int node) {
        PumpControl control = circuit.pumpControl();
        return assembly.switchOf(SOLAR_PUMP)
                .startsWhen(
                        Gate.OPEN,
                        Margin.above(node, control.startDifferenceK()).plus(-1, Network.SLURRY),
                        belowLimit,
                        Margin.below(node, control.startBarC()))
                .stopsWhen(
                        Gate.OPEN, Margin.below(node, control.stopDifferenceK()).plus(1, Network.SLURRY), aboveLimit)
                .offWhile(state -> !season.today().isSolarOn());
    }

    /** Whether a start is barred by the high limit, once reached, or by a collector that is too hot. */
    private Gate held(Network.Assembly assembly, int node) {
        double barC = circuit.pumpControl().startBarC();
        int full = assembly.switchOf("solar_limit")
                .startsWhen(Gate.OPEN, aboveLimit)
                .stopsWhen(Gate.OPEN, belowLimit)
                .number();
        int hot = assembly.switchOf("solar_start_bar")
                .startsWhen(Gate.OPEN, Margin.above(node, barC))
                .stopsWhen(Gate.OPEN, Margin.below(node, barC - APART_K))
                .number();
        return state -> state.isOn(full) || state.isOn(hot);
    }

    /** What the collector absorbs less what collector and pipes lose, W. */
    private double netW(State state) {
        double aboveAirK = state.nodeC(loop.node()) - state.nodeC(loss.other());
        return absorbed.rate()
                + sky.rate()
                - (loss.wPerK() + loop.quadratic().wPerK2() * Math.abs(aboveAirK)) * aboveAirK;
    }

    /**
     * Heat that the circuit would deliver with its pump running, the collector standing at its steady mean, and the slope by the slurry's
     * temperature (equation 19.2): {@code q x|x| + (k + g) x = absorbed + g (T_s - T_a)} for x above the air.
     */
    @Override
    public void ask(double timeS, State state) {
        double slurryC = state.nodeC(Network.SLURRY);
        double airC = state.nodeC(loss.other());
        double g = loop.coilWPerK();
        double linear = loss.wPerK() + g;
        double drive = absorbed.rate() + sky.rate() + g * (slurryC - airC);
        double quadratic = loop.quadratic().wPerK2();
        double root = Math.sqrt(linear * linear + 4 * quadratic * Math.abs(drive));
        double overSlurryK = airC + 2 * drive / (linear + root) - slurryC;
        if (overSlurryK > circuit.pumpControl().stopDifferenceK()) {
            notUsed.set(g * overSlurryK, g * (g / root - 1));
        } else {
            notUsed.set(0);
        }
    }

    /** The circuit's node. */
    public int node() {
        return loop.node();
    }

    @Override
    public void look(double timeS, State state) {
        if (!circuit.collector().windAndSky().isNone()) {
            windAndSky(timeS);
        }
    }

    @Override
    public void enter(Interval interval) {
        loop.setCoil(mixing.getAsBoolean() ? mixedWPerK : stillWPerK);
        PumpControl control = circuit.pumpControl();
        double limitC = control.highLimit().celsius(season.today().setpointC());
        belowLimit.setConstant(limitC - control.restartBelowLimitK());
        aboveLimit.setConstant(-limitC);
        hour = interval.hour();
        fromSunW =
                adjustCollector * sun.absorbedWPerM2(hour) * circuit.collector().areaM2();
        plane.set(sun.totalWPerM2(hour));
        if (circuit.collector().windAndSky().isNone()) {
            absorbed.set(fromSunW);
        } else {
            windAndSky(interval.middleS());
        }
    }

    /** Wind and sky at an instant: both run on within the hour (equation 13.4). */
    private void windAndSky(double timeS) {
        double windMPerS = surroundings.windMPerS(timeS);
        loss.set(collector.linearWPerK(windMPerS) + circuit.loop().pipeUaWPerK());
        absorbed.set(fromSunW + collector.takenByWindW(windMPerS, sun.totalWPerM2(hour)));
        sky.set(collector.skyW(
                sun.skyFactor(),
                surroundings.airC(timeS),
                surroundings.weather().skyC(hour, timeS)));
    }
}
