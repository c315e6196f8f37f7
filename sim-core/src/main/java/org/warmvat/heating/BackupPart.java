package org.warmvat.heating;

import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.BackupSource;
import org.warmvat.design.Contents;
import org.warmvat.design.Control;
import org.warmvat.design.Design;
import org.warmvat.design.Place;
import org.warmvat.network.Balance;
import org.warmvat.network.Energy;
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
 * The backup heater: its thermostat, and either a water circuit with pump and coil or an element in the slurry (equations 6.1
 * to 6.4).
 */
public final class BackupPart implements Part {

    /** Name of the circuit's node. */
    public static final String NODE = "backup_circuit";

    /** The backup circuit's balance. */
    public static final Balance BACKUP = new Balance("backup", "Backup circuit", Unit.KWH);

    /** Heat given to the slurry. */
    public static final Line HEAT = new Line("backup_heat_kwh", "backup", Unit.KWH);

    /** Heat put into the circuit's water, or into the slurry by an immersed element. */
    public static final Line POWER = new Line("backup_power_kwh", "put in", Unit.KWH);

    /** Heat lost by the circuit. */
    public static final Line LOSS = new Line("backup_circuit_loss_kwh", "lost", Unit.KWH);

    /** Energy bought, or own gas burnt. */
    public static final Line BOUGHT = new Line("backup_bought_kwh", "bought for the backup", Unit.KWH);

    /** Heat stored in the circuit's water. */
    public static final Line STORED = new Line("stored_kwh/backup_circuit", "stored", Unit.KWH);

    /** Starts of the pump, or of the immersed element. */
    public static final Line STARTS = new Line("backup_starts", "backup starts", Unit.TIMES);

    /** Hours with the coil inlet above the caking mark. */
    public static final Line CAKING_HOURS =
            new Line("backup_coil_caking_hours", "caking on the backup coil", Unit.HOURS);

    private static final Meter PUMP = Meter.electricity("backup_pump", "backup pump");

    /** Meter of the heat given to the slurry, J. */
    public static final String BACKUP_HEAT = "backup_heat";

    /** Meter of the heater's power into its water, or into the slurry when immersed, J. */
    public static final String BACKUP_POWER = "backup_power";

    /** Meter of the heat received from around by the circuit, J: losses are negative. */
    public static final String BACKUP_AROUND = "backup_around";

    /** Meter of the pump's electricity, J. */
    public static final String BACKUP_PUMP_ELECTRICITY = "backup_pump_electricity";

    /** Switch of the thermostat. */
    public static final String DEMAND = "backup_demand";

    /** Switch of the pump. */
    public static final String BACKUP_PUMP = "backup_pump";

    /** Watch: coil inlet above the caking mark with the pump on. */
    public static final String BACKUP_CAKING = "backup_caking";

    private final BackupCircuit backup;
    private final Control control;
    private final Surroundings surroundings;
    private final int slurry;
    private final int demand;
    private final int heatMeter;
    private final int powerMeter;
    private final Heater heater;
    private boolean permitted;

    /** What carries the heater's power. */
    private interface Heater {
        default void enter() {}

        void contribute(double timeS, State state, Flows flows);
    }

    /**
     * Adds the backup to a network.
     *
     * @param design a design with a backup
     * @param surroundings what is outside
     * @param mixing whether the mixer turns in the present interval
     * @param assembly the network being gathered
     * @param slurry the slurry's node
     */
    public BackupPart(
            Design design, Surroundings surroundings, BooleanSupplier mixing, Network.Assembly assembly, int slurry) {
        backup = design.backup().orElseThrow();
        control = design.control();
        this.surroundings = surroundings;
        this.slurry = slurry;
        heatMeter = assembly.meter(Meter.of(BACKUP_HEAT)
                .told(HEAT)
                .hourly("backup_heat_w")
                .posted(BACKUP, -1)
                .posted(Balance.SLURRY, 1));
        powerMeter = assembly.meter(Meter.of(BACKUP_POWER)
                .told(POWER)
                .told(1 / backup.efficiency(), BOUGHT)
                .entering(BACKUP, 1)
                .counted(side(backup.source()), 1 / backup.efficiency()));
        demand = assembly.switchOf(DEMAND, this::demandMargin);
        heater = backup.through() instanceof BackupCircuit.Circuit circuit
                ? new WaterCircuit(circuit, design, mixing, assembly)
                : immersed(assembly);
    }

    private Heater immersed(Network.Assembly assembly) {
        assembly.declare().starts(demand, STARTS);
        assembly.declare().none(LOSS, STORED, CAKING_HOURS, PUMP.told().get(0).line());
        return this::contributeImmersed;
    }

    private static Energy side(BackupSource source) {
        return switch (source) {
            case ELECTRIC -> Energy.HEATING_ELECTRICITY;
            case FUEL -> Energy.FUEL;
            case OWN_GAS -> Energy.OWN_GAS;
        };
    }

    /** The water circuit's node; none for an immersed element. */
    public OptionalInt node() {
        return heater instanceof WaterCircuit circuit ? OptionalInt.of(circuit.node) : OptionalInt.empty();
    }

    /** Thermostat on the slurry (equation 6.2); remembers its demand through barred hours. */
    private double demandMargin(double timeS, State state, boolean on) {
        double slurryC = state.nodeC(slurry);
        double half = control.bandK() / 2;
        return on ? slurryC - (control.setpointC() + half) : control.setpointC() - half - slurryC;
    }

    private boolean isCalling(State state) {
        return permitted && state.isOn(demand);
    }

    @Override
    public double nextJumpS(double timeS) {
        return timeS + backup.allowedHours().untilNextEdgeS(surroundings.secondOfDay(timeS));
    }

    @Override
    public void enter(Interval interval) {
        heater.enter();
        permitted = backup.allowedHours().isOpenAt(surroundings.secondOfDay(interval.middleS()));
    }

    @Override
    public void contribute(double timeS, State state, Flows flows) {
        heater.contribute(timeS, state, flows);
    }

    /** An element in the slurry: rated power while calling (equation 6.4). */
    private void contributeImmersed(double timeS, State state, Flows flows) {
        if (isCalling(state)) {
            flows.heat(slurry, backup.ratedW(), heatMeter);
            flows.meter(powerMeter, backup.ratedW());
        }
    }

    /** Water heated by the source and pumped through the coil (equations 6.1 and 6.2). */
    private final class WaterCircuit implements Heater {
        private final BackupCircuit.Circuit circuit;
        private final BooleanSupplier mixing;
        private final Place place;
        private final double mixedWPerK;
        private final double stillWPerK;
        private final int node;
        private final int pump;
        private final int aroundMeter;
        private final int pumpMeter;
        private double coilWPerK;

        WaterCircuit(BackupCircuit.Circuit circuit, Design design, BooleanSupplier mixing, Network.Assembly assembly) {
            this.circuit = circuit;
            this.mixing = mixing;
            place = design.tank().place();
            CoilFlow flow = new CoilFlow(circuit.coil(), circuit.loop().flowKgPerS() * Contents.WATER_J_PER_KG_K);
            mixedWPerK = flow.conductanceWPerK(true);
            stillWPerK = flow.conductanceWPerK(false);
            double capacityJPerK = circuit.waterKg() * Contents.WATER_J_PER_KG_K;
            node = assembly.node(new Network.Node(NODE, capacityJPerK, slurry, control.setpointC(), false));
            aroundMeter = assembly.meter(Meter.of(BACKUP_AROUND).told(-1, LOSS).leaving(BACKUP, 1));
            pumpMeter = assembly.meter(PUMP);
            pump = assembly.switchOf(BACKUP_PUMP, this::pumpMargin);
            assembly.declare().starts(pump, STARTS);
            assembly.declare().store(node, capacityJPerK, STORED, BACKUP);
            assembly.declare().hourlyC(node, "backup_circuit_c");
            assembly.watch(
                    caking(),
                    (timeS, state) -> state.isOn(pump)
                            ? flow.inletC(state.nodeC(node), coilWPerK * differenceK(state)) - circuit.cakingC()
                            : Double.NEGATIVE_INFINITY);
        }

        private Watched caking() {
            return Watched.of(BACKUP_CAKING)
                    .told(CAKING_HOURS)
                    .warns(
                            circuit.cakingC(),
                            1,
                            "Water entered the backup coil above " + Watched.degrees(circuit.cakingC())
                                    + ", where slurry may cake on it, for %s; the hottest was %.1f °C.");
        }

        private double aroundC(double timeS) {
            return place instanceof Place.Indoors indoors ? indoors.roomC() : surroundings.airC(timeS);
        }

        private double differenceK(State state) {
            return state.nodeC(node) - state.nodeC(slurry);
        }

        @Override
        public void enter() {
            coilWPerK = mixing.getAsBoolean() ? mixedWPerK : stillWPerK;
        }

        /** Starts when calling with water no colder than the slurry; overruns after the call until the water is used up. */
        private double pumpMargin(double timeS, State state, boolean on) {
            boolean calling = isCalling(state);
            if (on) {
                return calling ? -1 : circuit.flow().overrunDifferenceK() - differenceK(state);
            }
            return calling ? differenceK(state) : -1;
        }

        @Override
        public void contribute(double timeS, State state, Flows flows) {
            double waterC = state.nodeC(node);
            if (isCalling(state)) {
                double bandK = circuit.flow().bandK();
                double share = (circuit.flow().limitC() - waterC) / bandK;
                boolean inBand = share > 0 && share < 1;
                // the corners at both ends of the band: near them a slope must not be followed far
                boolean nearBand = share > -1 && share < 2;
                flows.heat(
                        node,
                        backup.ratedW() * Math.max(0, Math.min(1, share)),
                        inBand ? -backup.ratedW() / bandK : 0,
                        0,
                        powerMeter);
                flows.corner(node, nearBand ? backup.ratedW() / (bandK * bandK) : 0);
            }
            flows.exchange(node, circuit.lossUaWPerK(), aroundC(timeS), aroundMeter);
            if (state.isOn(pump)) {
                flows.link(node, coilWPerK, heatMeter);
                flows.meter(pumpMeter, circuit.loop().pumpW());
            }
        }
    }
}
