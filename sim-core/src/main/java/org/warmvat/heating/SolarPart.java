package org.warmvat.heating;

import java.util.function.BooleanSupplier;
import org.warmvat.design.Design;
import org.warmvat.design.PumpControl;
import org.warmvat.design.SolarCircuit;
import org.warmvat.network.Balance;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Line;
import org.warmvat.network.Meter;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Unit;
import org.warmvat.network.Watched;

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

    /** Meter of the pump's electricity, J. */
    public static final String SOLAR_PUMP_ELECTRICITY = "solar_pump_electricity";

    /** Meter of the sun on the collector's plane, J/m2. */
    public static final String PLANE_IRRADIATION = "plane_irradiation";

    /** Switch of the pump. */
    public static final String SOLAR_PUMP = "solar_pump";

    /** Watch: the collector stands above its stagnation mark. */
    public static final String STAGNATION = "stagnation";

    /** Watch: coil inlet above the caking mark with the pump on. */
    public static final String SOLAR_CAKING = "solar_caking";

    /** Watch: loop fluid below its freezing point. */
    public static final String LOOP_FROZEN = "loop_frozen";

    private final SolarCircuit circuit;
    private final CollectorHeat collector;
    private final CollectorSun sun;
    private final Surroundings surroundings;
    private final BooleanSupplier mixing;
    private final int slurry;
    private final int node;
    private final int pump;
    private final double mixedWPerK;
    private final double stillWPerK;
    private final int heatMeter;
    private final int absorbedMeter;
    private final int airMeter;
    private final int pumpMeter;
    private final int planeMeter;
    private double coilWPerK;
    private double absorbedW;
    private double planeWPerM2;

    /**
     * Adds the circuit to a network.
     *
     * @param design a design with a solar circuit
     * @param sun the sun on the collector's plane, prepared once for a weather file
     * @param surroundings what is outside
     * @param mixing whether the mixer turns in the present interval
     * @param assembly the network being gathered
     * @param slurry the slurry's node
     */
    public SolarPart(
            Design design,
            CollectorSun sun,
            Surroundings surroundings,
            BooleanSupplier mixing,
            Network.Assembly assembly,
            int slurry) {
        this.circuit = design.solar().orElseThrow();
        this.sun = sun;
        this.surroundings = surroundings;
        this.mixing = mixing;
        this.slurry = slurry;
        collector = new CollectorHeat(circuit.collector());
        CoilFlow flow = new CoilFlow(circuit.coil(), circuit.loop().capacityRateWPerK());
        mixedWPerK = flow.conductanceWPerK(true);
        stillWPerK = flow.conductanceWPerK(false);
        node = assembly.node(new Network.Node(NODE, circuit.capacityJPerK(), slurry, 0, false));
        heatMeter = assembly.meter(Meter.of(SOLAR_HEAT)
                .told(HEAT)
                .hourly("solar_heat_w")
                .posted(COLLECTOR, -1)
                .posted(Balance.SLURRY, 1));
        absorbedMeter = assembly.meter(Meter.of(ABSORBED).told(ABSORBED_SUN).entering(COLLECTOR, 1));
        airMeter = assembly.meter(Meter.of(COLLECTOR_AIR).told(-1, LOSS).leaving(COLLECTOR, 1));
        pumpMeter = assembly.meter(Meter.electricity("solar_pump", "solar pump"));
        planeMeter = assembly.meter(Meter.of(PLANE_IRRADIATION).hourly("collector_irradiance_w_m2"));
        pump = assembly.switchOf(SOLAR_PUMP, this::pumpMargin);
        assembly.declare().starts(pump, STARTS);
        assembly.declare().store(node, circuit.capacityJPerK(), STORED, COLLECTOR);
        assembly.declare().hourlyC(node, "collector_c");
        assembly.watch(stagnation(), (timeS, state) -> state.nodeC(node) - circuit.stagnationC());
        assembly.watch(
                caking(),
                (timeS, state) -> state.isOn(pump)
                        ? flow.inletC(state.nodeC(node), coilW(state)) - circuit.cakingC()
                        : Double.NEGATIVE_INFINITY);
        assembly.watch(frozen(), (timeS, state) -> circuit.loop().freezesC() - state.nodeC(node));
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

    /** The circuit's node. */
    public int node() {
        return node;
    }

    /** Pump control (equation 5.3). */
    private double pumpMargin(double timeS, State state, boolean on) {
        PumpControl control = circuit.pumpControl();
        double slurryC = state.nodeC(slurry);
        double differenceK = state.nodeC(node) - slurryC;
        if (on) {
            return Math.max(control.stopDifferenceK() - differenceK, slurryC - control.tankHighLimitC());
        }
        return Math.min(
                Math.min(
                        differenceK - control.startDifferenceK(),
                        control.tankHighLimitC() - control.restartBelowLimitK() - slurryC),
                control.startBarC() - state.nodeC(node));
    }

    private double coilW(State state) {
        return coilWPerK * (state.nodeC(node) - state.nodeC(slurry));
    }

    @Override
    public void enter(Interval interval) {
        coilWPerK = mixing.getAsBoolean() ? mixedWPerK : stillWPerK;
        absorbedW = sun.absorbedWPerM2(interval.hour()) * circuit.collector().areaM2();
        planeWPerM2 = sun.totalWPerM2(interval.hour());
    }

    @Override
    public void contribute(double timeS, State state, Flows flows) {
        double airC = surroundings.airC(timeS);
        double differenceK = state.nodeC(node) - airC;
        flows.heat(node, absorbedW, absorbedMeter);
        flows.exchange(node, collector.linearWPerK() + circuit.loop().pipeUaWPerK(), airC, airMeter);
        flows.heat(
                node,
                collector.quadraticW(differenceK),
                collector.quadraticSlopeWPerK(differenceK),
                collector.quadraticBendWPerK2(differenceK),
                airMeter);
        flows.meter(planeMeter, planeWPerM2);
        if (state.isOn(pump)) {
            flows.link(node, coilWPerK, heatMeter);
            flows.meter(pumpMeter, circuit.loop().pumpW());
        }
    }
}
