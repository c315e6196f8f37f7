package org.warmvat.heating;

import java.util.function.BooleanSupplier;
import org.warmvat.design.Design;
import org.warmvat.design.PumpControl;
import org.warmvat.design.SolarCircuit;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;

/**
 * The solar circuit: one mean fluid temperature of collector and loop, a coil, a difference-controlled pump (equations 5.1 to
 * 5.4).
 */
public final class SolarPart implements Part {

    /** Name of the circuit's node. */
    public static final String NODE = "collector";

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
        heatMeter = assembly.meter(SOLAR_HEAT);
        absorbedMeter = assembly.meter(ABSORBED);
        airMeter = assembly.meter(COLLECTOR_AIR);
        pumpMeter = assembly.meter(SOLAR_PUMP_ELECTRICITY);
        planeMeter = assembly.meter(PLANE_IRRADIATION);
        pump = assembly.switchOf(SOLAR_PUMP, this::pumpMargin);
        assembly.watch(STAGNATION, (timeS, state) -> state.nodeC(node) - circuit.stagnationC());
        assembly.watch(
                SOLAR_CAKING,
                (timeS, state) -> state.isOn(pump)
                        ? flow.inletC(state.nodeC(node), coilW(state)) - circuit.cakingC()
                        : Double.NEGATIVE_INFINITY);
        assembly.watch(LOOP_FROZEN, (timeS, state) -> circuit.loop().freezesC() - state.nodeC(node));
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
