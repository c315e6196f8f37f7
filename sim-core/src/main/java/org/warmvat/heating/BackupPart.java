package org.warmvat.heating;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.tank.Contents;
import org.warmvat.network.Circuit;
import org.warmvat.network.Gate;
import org.warmvat.network.Interval;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.Supply;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Switch;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Energy;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;
import org.warmvat.season.InForce;

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

    /** Switch of the thermostat. */
    public static final String DEMAND = "backup_demand";

    /** Switch of the pump. */
    public static final String BACKUP_PUMP = "backup_pump";

    /** Hours in which heat was wanted and allowed and the holder was empty. */
    public static final Line SHORT_OF_OWN_GAS_HOURS =
            new Line("hours_short_of_own_gas", "short of own gas", Unit.HOURS);

    /** Watch: heat is wanted in a permitted hour and the holder is empty. */
    public static final String SHORT_OF_OWN_GAS = "short_of_own_gas";

    /** Watch: coil inlet above the caking mark with the pump on. */
    public static final String BACKUP_CAKING = "backup_caking";

    private final BackupCircuit backup;
    private final double adjust;
    private final Surroundings surroundings;
    private final InForce season;
    private final Margin below;
    private final Margin above;
    private final BooleanSupplier mixing;
    private final Gate calling;
    private final OptionalInt node;
    private Runnable whenMixing = () -> {};
    private boolean permitted;
    private Optional<KnownRate> measured = Optional.empty();
    private Optional<Source> measuredPower = Optional.empty();

    /**
     * Adds the backup to a network.
     *
     * @param design a design with a backup
     * @param surroundings the clock
     * @param around what is around the tank, to which the circuit loses heat
     * @param season what the calendar puts in force
     * @param supply what it burns
     * @param mixing whether the mixer turns in the present interval
     * @param assembly the network being gathered
     */
    public BackupPart(
            Design design,
            Surroundings surroundings,
            Around around,
            InForce season,
            Supply supply,
            BooleanSupplier mixing,
            Network.Assembly assembly) {
        backup = design.backup().orElseThrow();
        adjust = design.adjust().backupCoil();
        this.season = season;
        this.surroundings = surroundings;
        this.mixing = mixing;
        below = Margin.below(Network.SLURRY, design.control().setpointC());
        above = Margin.above(Network.SLURRY, design.control().setpointC());
        // remembers its demand through barred hours (equation 6.2)
        Switch demand = assembly.switchOf(DEMAND).startsWhen(Gate.OPEN, below).stopsWhen(Gate.OPEN, above);
        Gate wanting = state -> permitted && (measured.isPresent() || state.isOn(demand.number()));
        Gate there = supply.isThere();
        calling = state -> wanting.isOpen(state) && there.isOpen(state);
        if (supply.isLimited()) {
            assembly.watch(
                    Watched.of(SHORT_OF_OWN_GAS).told(SHORT_OF_OWN_GAS_HOURS),
                    state -> wanting.isOpen(state) && !there.isOpen(state),
                    state -> 1);
        }
        int heatMeter = assembly.meter(Meter.of(BACKUP_HEAT)
                .told(HEAT)
                .hourly("backup_heat_w")
                .posted(BACKUP, -1)
                .posted(Balance.SLURRY, 1));
        int powerMeter = supply.meter(
                assembly,
                Meter.of(BACKUP_POWER)
                        .told(POWER)
                        .told(1 / backup.efficiency(), BOUGHT)
                        .entering(BACKUP, 1)
                        .counted(side(backup.source()), 1 / backup.efficiency()),
                1 / backup.efficiency());
        if (backup.through() instanceof BackupCircuit.Circuit circuit) {
            node = OptionalInt.of(
                    water(circuit, design.control().setpointC(), around, assembly, new Meters(heatMeter, powerMeter)));
        } else {
            node = OptionalInt.empty();
            immersed(assembly, new Meters(heatMeter, powerMeter), demand);
        }
        assembly.part(this);
    }

    /** An element in the slurry itself: what it is given goes there at once (equation 6.4). */
    private void immersed(Network.Assembly assembly, Meters meters, Switch demand) {
        assembly.source(Network.SLURRY, meters.heat(), calling).set(backup.ratedW());
        assembly.source(Network.NOWHERE, meters.power(), calling).set(backup.ratedW());
        assembly.declare().starts(demand.number(), STARTS);
        assembly.declare().none(LOSS, STORED, CAKING_HOURS, PUMP.told().get(0).line());
    }

    /** Meters of the heat given and of the power put in. */
    private record Meters(int heat, int power) {}

    private static Energy side(BackupSource source) {
        return switch (source) {
            case ELECTRIC -> Energy.HEATING_ELECTRICITY;
            case FUEL -> Energy.FUEL;
            case OWN_GAS -> Energy.OWN_GAS;
        };
    }

    /** Water heated by the source and pumped through the coil (equations 6.1 and 6.2). */
    private int water(
            BackupCircuit.Circuit circuit, double startC, Around around, Network.Assembly assembly, Meters meters) {
        CoilFlow flow = new CoilFlow(circuit.coil(), adjust, circuit.loop().flowKgPerS() * Contents.WATER_J_PER_KG_K);
        double mixedWPerK = flow.conductanceWPerK(true);
        double stillWPerK = flow.conductanceWPerK(false);
        double capacityJPerK = circuit.waterKg() * Contents.WATER_J_PER_KG_K;
        int water = assembly.body(NODE, capacityJPerK, startC);
        Switch pump = pump(circuit, water, assembly);
        Gate pumping = state -> state.isOn(pump.number());
        Circuit loop = assembly.circuit(
                water,
                new Circuit.Coil(pump.number(), meters.heat()),
                Circuit.Quadratic.NONE,
                new Circuit.Heater(
                        backup.ratedW(),
                        circuit.flow().limitC(),
                        circuit.flow().bandK(),
                        state -> measured.isEmpty() && calling.isOpen(state),
                        meters.power()));
        whenMixing = () -> loop.setCoil(mixing.getAsBoolean() ? mixedWPerK : stillWPerK);
        assembly.exchange(
                water,
                around.node(),
                circuit.lossUaWPerK(),
                assembly.meter(around.met(Meter.of(BACKUP_AROUND).told(-1, LOSS).leaving(BACKUP, 1))));
        assembly.source(Network.NOWHERE, assembly.meter(PUMP), pumping)
                .set(circuit.loop().pumpW());
        assembly.declare().starts(pump.number(), STARTS);
        assembly.declare().store(water, capacityJPerK, STORED, BACKUP);
        assembly.declare().hourlyC(water, "backup_circuit_c");
        assembly.watch(caking(circuit), pumping, state -> {
            double coilW = loop.coilWPerK() * (state.nodeC(water) - state.nodeC(Network.SLURRY));
            double powerW = calling.isOpen(state) ? loop.heater().powerW(state.nodeC(water)) : 0;
            return flow.inletC(state.nodeC(water), coilW, powerW) - circuit.cakingC();
        });
        return water;
    }

    private static Watched caking(BackupCircuit.Circuit circuit) {
        return Watched.of(BACKUP_CAKING)
                .told(CAKING_HOURS)
                .warns(
                        circuit.cakingC(),
                        1,
                        "Water entered the backup coil above " + Watched.degrees(circuit.cakingC())
                                + ", where slurry may cake on it, for %s; the hottest was %.1f °C.");
    }

    /** Heats its water as measured, in place of its thermostat, and calls while it does; only with a water circuit. */
    public void heatAs(KnownRate watts, Network.Assembly assembly) {
        measured = Optional.of(watts);
        measuredPower = Optional.of(assembly.source(node.orElseThrow(), Network.UNMETERED));
    }

    /** Starts when calling with water no colder than the slurry; overruns after the call until the water is used up. */
    private Switch pump(BackupCircuit.Circuit circuit, int water, Network.Assembly assembly) {
        return assembly.switchOf(BACKUP_PUMP)
                .startsWhen(calling, Margin.above(water, 0).plus(-1, Network.SLURRY))
                .stopsWhen(
                        state -> !calling.isOpen(state),
                        Margin.below(water, circuit.flow().overrunDifferenceK()).plus(1, Network.SLURRY));
    }

    /** The water circuit's node; none for an immersed element. */
    public OptionalInt node() {
        return node;
    }

    @Override
    public double nextJumpS(double timeS) {
        return measured.isPresent()
                ? measured.get().nextJumpS(timeS)
                : timeS + backup.allowedHours().untilNextEdgeS(surroundings.secondOfDay(timeS));
    }

    @Override
    public void enter(Interval interval) {
        whenMixing.run();
        if (measured.isPresent()) {
            double watts = measured.get().at(interval.middleS());
            measuredPower.orElseThrow().set(watts);
            permitted = watts > 0;
        } else {
            permitted = season.today().isBackupOn()
                    && backup.allowedHours().isOpenAt(surroundings.secondOfDay(interval.middleS()));
        }
        double half = season.today().bandK() / 2;
        below.setConstant(season.today().setpointC() - half);
        above.setConstant(-(season.today().setpointC() + half));
    }
}
